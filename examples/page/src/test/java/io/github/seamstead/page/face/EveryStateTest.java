package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the page shows only at times, such as faults, questions and a search under way: read and
 * touched in light and dark, at the size of a phone, and with text of twice the size. The levels
 * are those of WCAG 2.2: contrast 4.5:1 (1.4.3), targets of 44 pixels (2.5.5), text at 200 %
 * (1.4.4), motion (2.3.3).
 */
class EveryStateTest extends InBrowser {

  /** Links that lead to places; those within a sentence are as high as its line (2.5.5). */
  private static final String SMALL_LINKS =
      "[...document.querySelectorAll('nav a, .summary a, a.button, .skip:focus')].filter(a =>"
          + " a.checkVisibility() && (a.getBoundingClientRect().height < 44 ||"
          + " a.getBoundingClientRect().width < 44)).map(a => a.textContent)";

  private static final String MOVING =
      "[...document.querySelectorAll('*')].filter(e => { const s = getComputedStyle(e);"
          + " return [s.transitionDuration, s.animationDuration].some(d =>"
          + " d.split(',').some(t => parseFloat(t) > 0)) || s.scrollBehavior === 'smooth'; })"
          + ".map(e => e.outerHTML.slice(0, 100))";

  private static void look(Browser page, String state) {
    for (String scheme : List.of("light", "dark")) {
      page.call(
          "Emulation.setEmulatedMedia",
          Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
      page.run("hand.pause(50)");
      assertThat(page.texts("probe.contrast()")).as("contrast, %s, %s", state, scheme).isEmpty();
    }
    page.call("Emulation.setEmulatedMedia", Map.of("features", List.of()));
    assertThat(page.texts("probe.wide()")).as("width, %s", state).isEmpty();
    assertThat(page.texts("probe.targets(44)")).as("targets, %s", state).isEmpty();
    assertThat(page.texts(SMALL_LINKS)).as("links, %s", state).isEmpty();
    assertThat(page.texts("probe.ids()")).as("ids used twice, %s", state).isEmpty();
    page.run("document.documentElement.style.fontSize = '200%'; hand.pause(50)");
    assertThat(page.texts("probe.wide()")).as("width at 200 %%, %s", state).isEmpty();
    page.run("document.documentElement.style.fontSize = ''; hand.pause(50)");
  }

  private static Browser seedLoft() throws IOException {
    Browser page = face().openNew(360);
    face().choose(Face.JOBS.resolve("seed-loft.json"));
    page.run("hand.until(() => hand.text('title') === 'Seed-drying loft', 'the job')");
    return page;
  }

  @Test
  void faultsAreReadAndTouched() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.press('Plan the book')");
    page.run("hand.until(() => document.querySelector('#summary .summary'), 'the summary')");
    look(page, "a summary of faults");
  }

  @Test
  void aRefusedFileIsReadAndTouched() throws IOException {
    Browser page = face().openNew(360);
    Path odd =
        Files.writeString(
            folder().resolve("a-name-that-is-much-longer-than-a-line-of-a-phone-is-wide.json"),
            "{\"seamstead\": 2, \"site\": {\"name\": \"Odd\"}, \"frame\": {\"sides\": 2}}");
    face().choose(odd);
    page.run("hand.until(() => document.querySelector('#refused .summary'), 'the refusal')");
    look(page, "a refused file");
  }

  @Test
  void questionsAndNotesAreReadAndTouched() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.type(hand.at('$.site.name'), 'Kept'); hand.pause(600)");
    page.run(
        "hand.until(() => Object.keys(localStorage).some(k => k.includes('-job-')), 'keeping')");
    page.run(
        "dispatchEvent(new StorageEvent('storage', {newValue: '{}',"
            + " key: Object.keys(localStorage).find(k => k.includes('-job-'))})); 0");
    look(page, "a note");
    page.run("hand.go('jobs').then(() => hand.press('Remove Kept'))");
    page.run("hand.until(() => document.querySelector('dialog'), 'the question')");
    look(page, "a question");
    page.run("hand.press('Keep it')");
  }

  @Test
  void aSearchAndItsBookAreReadAndTouched() throws IOException {
    Browser page = seedLoft();
    page.run("hand.go('book')");
    page.run(
        "(s => { s.value = '9'; s.dispatchEvent(new Event('change', {bubbles: true})); })"
            + "(document.getElementById('effort'))");
    page.run("hand.press('Plan the book')");
    page.run("hand.book()");
    look(page, "a search under way");
    page.run("hand.press('Stop here and keep this book')");
    look(page, "a stopped search");
  }

  @Test
  void aLongDiaryIsReadAndTouched() throws IOException {
    Browser page = seedLoft();
    face().choose(Face.JOBS.resolve("diaries/seed-loft-diary.json"));
    page.run("hand.until(() => location.hash === '#diary', 'the diary')");
    page.run("document.querySelectorAll('#diary-lines details').forEach(d => { d.open = true; })");
    page.run("hand.pause(200)");
    look(page, "a diary with its lines open");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-987654 m", "no number"})
  void anAnswerIsReadAndTouched(String answer) throws IOException {
    Browser page = face().openNew(360);
    page.run(
        "hand.go('lessons').then(() => hand.until(() =>"
            + " document.querySelector('#lesson-list a'), 'lessons'))");
    page.run("document.querySelector('#lesson-list a').click()");
    page.run("hand.until(() => document.querySelector('.exercises input'), 'exercises')");
    page.run(
        "hand.type(document.querySelector('.exercises input'), '"
            + answer
            + "'); hand.press('Check it', document.querySelector('.exercises'))");
    page.run(
        "hand.until(() => document.querySelector('.exercises [role=status] p'), 'the outcome')");
    page.run("document.querySelectorAll('.exercises details').forEach(d => { d.open = true; })");
    page.run("hand.pause(200)");
    look(page, "an answered exercise");
    page.run("hand.press('Large, for a projector'); hand.pause(100)");
    assertThat(page.texts("probe.wide()")).as("width for a projector").isEmpty();
    page.run("hand.press('Large, for a projector')");
  }

  @Test
  void nothingMovesWhereLessMotionIsWanted() throws IOException {
    Browser page = seedLoft();
    page.call(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-reduced-motion", "value", "no-preference"))));
    assertThat(page.texts(MOVING)).as("the question finds what moves").isNotEmpty();
    page.call(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    for (String place : List.of("job", "book", "diary", "lessons", "jobs")) {
      page.run("hand.go('" + place + "')");
      assertThat(page.texts(MOVING)).as("what moves in %s", place).isEmpty();
    }
    page.call("Emulation.setEmulatedMedia", Map.of("features", List.of()));
  }
}
