package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Keyboard, screen reader, small and large screens, light and dark. */
class EveryReaderTest extends InBrowser {

  private static final String NAMELESS =
      "[...document.querySelectorAll('input:not([hidden]),select,button,textarea,iframe')].filter(e"
          + " => !((e.labels && [...e.labels].some(l => l.textContent.trim())) ||"
          + " e.getAttribute('aria-label') || e.textContent.trim() || e.title)).map(e =>"
          + " e.outerHTML)";

  static List<Arguments> views() {
    List<Arguments> views = new ArrayList<>();
    for (int width : new int[] {360, 1280, 1920}) {
      for (String scheme : List.of("light", "dark")) {
        views.add(Arguments.of(width, scheme));
      }
    }
    return views;
  }

  private static List<String> faults(Browser page, String question) {
    return page.texts("probe." + question);
  }

  private static List<String> places(Browser page) {
    List<String> places = new ArrayList<>();
    page.run("[...document.querySelectorAll('#sections a')].map(a => a.hash.slice(1))")
        .forEach(place -> places.add(place.asText()));
    places.addAll(List.of("book", "diary", "lessons", "jobs"));
    return places;
  }

  private static Browser seedLoft(int width) throws IOException {
    Browser page = face().openNew(width);
    face().choose(Face.JOBS.resolve("seed-loft.json"));
    page.run("hand.until(() => hand.text('title') === 'Seed-drying loft', 'the job')");
    page.run(Face.SOUND_JOB);
    // Pictures of the sketch.
    page.run(
        "hand.go('job/frame').then(() => hand.until(() => document.querySelector('#picture svg'),"
            + " 'a picture'))");
    return page;
  }

  @ParameterizedTest
  @MethodSource("views")
  void everyPlaceCanBeReadAndTouched(int width, String scheme) throws IOException {
    Browser page = seedLoft(width);
    page.call(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    for (String place : places(page)) {
      page.run("hand.go('" + place + "').then(() => hand.pause(100))");
      page.run("document.querySelectorAll('main details').forEach(d => { d.open = true; })");
      page.run("hand.pause(50)");
      assertThat(faults(page, "contrast()")).as("contrast of %s", place).isEmpty();
      assertThat(faults(page, "wide()")).as("width of %s", place).isEmpty();
      assertThat(faults(page, "targets(44)")).as("small targets of %s", place).isEmpty();
      assertThat(faults(page, "ids()")).as("ids used twice in %s", place).isEmpty();
      assertThat(page.texts(NAMELESS)).as("controls without a name in %s", place).isEmpty();
      assertThat(
              page.run(
                      "[...document.querySelectorAll('h1')].filter(h =>"
                          + " h.checkVisibility()).length")
                  .asInt())
          .as("titles of %s", place)
          .isEqualTo(1);
    }
    page.call("Emulation.setEmulatedMedia", Map.of("features", List.of()));
  }

  @Test
  void textOfTwiceTheSizeFits() throws IOException {
    Browser page = seedLoft(360);
    page.run("document.documentElement.style.fontSize = '200%'");
    for (String place : places(page)) {
      page.run("hand.go('" + place + "').then(() => hand.pause(100))");
      assertThat(faults(page, "wide()")).as("width of %s", place).isEmpty();
    }
  }

  @Test
  void aJobIsBegunCheckedAndMendedByKeyboardAlone() throws IOException {
    Browser page = face().openNew(1280);
    assertThat(face().tabTo("To the work")).isEmpty();
    face().tabTo("Name (needed)");
    face().write("By keys");
    face().tabTo("Frame →");
    face().key("Enter");
    page.run(
        "hand.until(() => document.querySelector('#section h1').textContent === 'Frame', 'frame')");
    face().tabTo("Add frame");
    face().key("Enter");
    face().write("2");
    assertThat(page.run("document.activeElement.id").asText()).isEqualTo("job$.frame.sides");
    face().tabTo("Add measures");
    face().key("Enter");
    page.run("hand.go('job/site')");
    page.run("document.getElementById('sections').querySelector('a').focus()");
    face().tabTo("Plan the book");
    face().key("Enter");
    page.run(
        "hand.until(() => document.activeElement.className === 'summary', 'focus on the summary')");
    assertThat(page.run("document.activeElement.innerText").asText())
        .contains("Frame, sides: Given: 2. It must be a whole number from 3 to 64");
    assertThat(page.run("document.title").asText()).startsWith("To mend: ");
    face().tabTo("Frame, sides");
    face().key("Enter");
    assertThat(page.run("document.activeElement.id").asText()).isEqualTo("job$.frame.sides");
    assertThat(page.run("document.activeElement.getAttribute('aria-invalid')").asText())
        .isEqualTo("true");
    assertThat(
            page.run(
                    "document.getElementById(document.activeElement.getAttribute('aria-describedby').split('"
                        + " ').pop()).textContent")
                .asText())
        .contains("from 3 to 64");
  }

  @Test
  void thePictureTurnsByButtonsToo() throws IOException {
    Browser page = seedLoft(360);
    String lines = "document.querySelector('#picture svg g').innerHTML";
    String before = page.run(lines).asText();
    page.run("hand.press('Turn right')");
    String after = page.run(lines).asText();
    assertThat(after).isNotEqualTo(before);
    page.run("hand.press('Turn left')");
    assertThat(page.run(lines).asText()).isEqualTo(before);
  }

  @Test
  void thePictureFollowsTheNumbers() throws IOException {
    Browser page = seedLoft(360);
    String edges = "document.querySelectorAll('#picture .edge.base').length";
    assertThat(page.run(edges).asInt()).isEqualTo(12);
    page.run("hand.type(hand.at('$.frame.sides'), '7'); 0");
    page.run("hand.until(() => " + edges + " === 7, 'seven sides')");
    page.run("hand.type(hand.at('$.frame.sides'), '1'); 0");
    page.run(
        "hand.until(() => /As before the last change/.test(hand.text('picture')), 'the note')");
    assertThat(page.run(edges).asInt()).isEqualTo(7);
  }

  @Test
  void listsAreFilledWithTheThumbAndFocusMoves() throws IOException {
    Browser page = seedLoft(360);
    page.run("hand.go('job/stock')");
    page.run("hand.press('Same again: copy the last sheet')");
    assertThat(page.run("document.activeElement.id").asText()).isEqualTo("job$.stock.sheets[2].id");
    assertThat(page.run("hand.at('$.stock.sheets[2].length').value").asText())
        .isEqualTo(page.run("hand.at('$.stock.sheets[1].length').value").asText());
    page.run("hand.press('Remove sheet 3')");
    assertThat(page.run("hand.at('$.stock.sheets[2]') === null").asBoolean()).isTrue();
    assertThat(page.run("document.activeElement.id").asText()).isEqualTo("job$.stock.sheets[1].id");
  }

  @Test
  void whatIsAssumedIsSaidAndStatedByOneTap() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.press('Add crew')");
    assertThat(page.run("document.querySelector('.assumed').innerText").asText())
        .contains("assumed");
    page.run("hand.press('State Teams')");
    assertThat(page.run("hand.at('$.site.crew.teams').value").asText()).isEqualTo("1");
  }

  @Test
  void theFormStandsBeforeThePlannerIsUnpacked() throws IOException {
    Browser page = face().openNew(360);
    page.run("globalThis.name = 'x'");
    face()
        .before(
            "globalThis.workersAtReady = null; (Own => { let made = 0; globalThis.Worker ="
                + " class extends Own { constructor(...a) { super(...a); made++; } };"
                + " new MutationObserver(() => { if (document.documentElement.dataset.ready"
                + " && globalThis.workersAtReady === null) globalThis.workersAtReady = made; })"
                + ".observe(document, {subtree: true, attributes: true}); })(Worker)");
    page = face().open(360);
    assertThat(
            page.run(
                    "hand.until(() => globalThis.workersAtReady !== null, 'ready')"
                        + ".then(() => globalThis.workersAtReady)")
                .asInt(-1))
        .isZero();
    assertThat(page.run("hand.at('$.site.name').checkVisibility()").asBoolean()).isTrue();
  }
}
