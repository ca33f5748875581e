package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.examples.book.Browser;
import io.github.seamstead.examples.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/**
 * The way of a job on a phone: filled from an empty form, planned, printed, ticked, left, gone on
 * with, saved, and opened by the command.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FillPlanTickTest extends InBrowser {

  private static final int PHONE = 360;

  @BeforeAll
  static void prepare() throws IOException {
    face().openNew(PHONE);
  }

  private static Job seedLoft() {
    return JobReader.read(Face.JOBS.resolve("seed-loft.json"));
  }

  private static Path savedJob() throws IOException {
    return face().saved("seed-drying-loft.json");
  }

  @Test
  @Order(1)
  void theFormIsFilledByItsOwnControlsAndSavedAsTheSameJob() throws IOException {
    Browser page = face().browser();
    page.run("hand.fillJob(JSON.parse(" + face().quoted(JobWriter.text(seedLoft())) + "))");
    page.run(Face.SOUND_JOB);
    assertThat(page.run("hand.text('saved')").asText()).contains("Job not yet saved to a file");
    page.run("hand.press('Save')");
    Job saved = JobReader.read(savedJob());
    assertThat(saved.document()).isEqualTo(seedLoft().document());
    assertThat(saved.assumptions()).isEqualTo(seedLoft().assumptions());
    page.run(
        "hand.until(() => /Job last saved to a file at \\d\\d:\\d\\d\\./"
            + ".test(hand.text('saved')), 'the time of saving')");
    assertThat(face().complaints()).isEmpty();
  }

  @Test
  @Order(2)
  void theBookIsThatOfTheCommand() throws IOException {
    Browser page = face().browser();
    page.run("hand.press('Plan the book')");
    Job saved = JobReader.read(savedJob());
    String own = Book.of(JobPlanner.plan(saved, PlanOptions.defaults())).html();
    // Where a script runs, the front counts ticks.
    page.run(
        "globalThis.words = page => { const copy = page.body.cloneNode(true);"
            + " copy.querySelectorAll('script, .count').forEach(e => e.remove());"
            + " return copy.textContent; }; 0");
    JsonNode shown = page.run("hand.book().then(words)");
    JsonNode expected =
        page.run("words(new DOMParser().parseFromString(" + face().quoted(own) + ", 'text/html'))");
    assertThat(shown.asText()).isNotBlank().isEqualTo(expected.asText());
    assertThat(face().complaints()).isEmpty();
  }

  @Test
  @Order(3)
  void printingPrintsTheWholeBook() {
    Browser page = face().browser();
    page.run(
        "hand.frame().contentWindow.print = () => { globalThis.printed = "
            + "hand.frame().contentDocument.querySelectorAll('details:not([open])').length; }");
    page.run("hand.press('Print')");
    assertThat(page.run("globalThis.printed").asInt(-1)).isZero();
  }

  @Test
  @Order(4)
  void ticksAndBookAreThereAfterReloading() throws IOException {
    Browser page = face().browser();
    page.run(
        "hand.book().then(book => { [...book.querySelectorAll('[data-diary]')].slice(0,"
            + " 3).forEach(box => box.click()); const line = book.querySelector('.blank');"
            + " line.value = '9:15 AB'; line.dispatchEvent(new Event('change', {bubbles: true}));"
            + " })");
    page.run("hand.pause(600)");
    face().open(PHONE);
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Seed-drying loft");
    page.run("hand.go('book')");
    assertThat(
            page.run(
                    "hand.book().then(book =>"
                        + " book.querySelectorAll('[data-diary]:checked').length)")
                .asInt())
        .isEqualTo(3);
    assertThat(page.run("hand.frame().contentDocument.querySelector('.blank').value").asText())
        .isEqualTo("9:15 AB");
  }

  @Test
  @Order(5)
  void theTicksBecomeADiaryThatTheNextPlanAndTheCommandGoOnFrom() throws IOException {
    Browser page = face().browser();
    page.run("hand.go('diary')");
    assertThat(page.run("hand.text('fresh')").asText()).isEqualTo("3 new ticks wait in the book.");
    page.run("hand.press('Take the ticks over')");
    assertThat(page.run("hand.text('fresh')").asText()).isEqualTo("No new ticks wait in the book.");
    page.run("hand.press('Save the diary')");
    Path diary = face().saved("seed-drying-loft-diary.json");
    assertThat(DiaryReader.read(diary).lines()).hasSize(3);
    page.run("globalThis.before = hand.frame(); hand.press('Plan on')");
    page.run("hand.until(() => hand.frame() !== globalThis.before, 'the next book')");
    assertThat(page.run("hand.book().then(book => book.body.textContent)").asText())
        .contains("The job so far");

    StringWriter err = new StringWriter();
    Path book = folder().resolve("book");
    String[] command = {
      "plan", savedJob().toString(), "--diary", diary.toString(), "--out", book.toString()
    };
    assertThat(Main.run(command, new PrintWriter(new StringWriter()), new PrintWriter(err)))
        .as(err.toString())
        .isZero();
    assertThat(Files.readString(book.resolve("book.html"))).contains("The job so far");
    assertThat(face().complaints()).isEmpty();
  }
}
