package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** A long search shows what the shorter ones before it found, and keeps it when it is stopped. */
class StopTest extends InBrowser {

  private static final String WORDS =
      "globalThis.words = page => { const copy = page.body.cloneNode(true);"
          + " copy.querySelectorAll('script, .count').forEach(e => e.remove());"
          + " return copy.textContent; }; 0";

  @Test
  void aStoppedSearchKeepsTheBestSoFar() throws IOException {
    Browser page = face().openNew(360);
    face().choose(Face.JOBS.resolve("seed-loft.json"));
    page.run("hand.until(() => hand.text('title') === 'Seed-drying loft', 'the job')");
    page.run("hand.go('book')");
    page.run(
        "(s => { s.value = '9'; s.dispatchEvent(new Event('change', {bubbles: true})); })"
            + "(document.getElementById('effort'))");
    page.run("hand.press('Plan the book')");
    page.run("hand.book()");
    assertThat(page.run("hand.text('book-state')").asText())
        .contains("this is the best so far, a longer search goes on");
    assertThat(page.run("document.getElementById('running').checkVisibility()").asBoolean())
        .isTrue();
    page.run("hand.press('Stop here and keep this book')");
    assertThat(page.run("hand.text('book-state')").asText())
        .contains("the longer search was stopped: this is the best so far, found by ");
    assertThat(page.run("document.getElementById('running').checkVisibility()").asBoolean())
        .isFalse();
    assertThat(page.run("hand.text('said')").asText())
        .isEqualTo("Stopped. The book is the best so far.");

    // It is the plan that the command makes at that effort, and the diary begun from it says so.
    page.run(WORDS);
    String shown = page.run("hand.book().then(words)").asText();
    page.run("hand.book().then(book => book.querySelector('[data-diary]').click())");
    page.run("hand.go('diary').then(() => hand.press('Take the ticks over'))");
    page.run("hand.go('book')");
    int effort = page.run("Number(document.getElementById('effort').value)").asInt();
    assertThat(effort).isLessThan(9);
    assertThat(page.run("document.getElementById('effort').disabled").asBoolean()).isTrue();
    String own =
        Book.of(
                JobPlanner.plan(
                    JobReader.read(Face.JOBS.resolve("seed-loft.json")),
                    PlanOptions.defaults().withEffort(effort)))
            .html();
    String expected =
        page.run("words(new DOMParser().parseFromString(" + face().quoted(own) + ", 'text/html'))")
            .asText();
    assertThat(shown).isNotBlank().isEqualTo(expected);
    assertThat(face().complaints()).isEmpty();
  }

  @Test
  void aSearchStoppedBeforeItsFirstBookLeavesNone() throws IOException {
    Browser page = face().openNew(360);
    face().choose(Face.JOBS.resolve("seed-loft.json"));
    page.run("hand.until(() => hand.text('title') === 'Seed-drying loft', 'the job')");
    page.run("hand.go('book').then(() => hand.press('Plan the book'))");
    page.run(
        "hand.until(() => document.getElementById('running').checkVisibility(), 'planning')"
            + ".then(() => hand.press('Stop'))");
    assertThat(page.run("hand.text('said')").asText()).isEqualTo("Stopped. No new book was made.");
    assertThat(page.run("hand.text('book-state')").asText()).isEqualTo("No book is planned yet.");
    assertThat(page.run("document.activeElement.id").asText()).isEqualTo("plan");
    page.run("hand.press('Plan the book')");
    page.run("hand.book()");
    assertThat(face().complaints()).isEmpty();
  }
}
