package io.github.seamstead.examples.book;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Opens the largest demo, the class model with its worked steps and the lessons in a browser; the
 * other demos and pages are {@link OtherPagesInBrowserTest}'s.
 */
class BookInBrowserTest extends PagesInBrowser {

  static final List<String> JOBS = List.of("class-model", "seed-loft");
  static final List<String> WORKED = List.of("class-model");
  static final List<String> ALONE = List.of("lessons");

  @Override
  List<String> jobs() {
    return JOBS;
  }

  @Override
  List<String> worked() {
    return WORKED;
  }

  @Override
  List<String> alone() {
    return ALONE;
  }

  @ParameterizedTest
  @ValueSource(strings = {"class-model-worked/book.html", "pages/lessons.html"})
  void showsSumsAsMathematics(String page) {
    Browser browser = open(page, 1280);
    JsonNode sums = browser.run("document.querySelectorAll('main math').length");
    assertThat(sums.asInt()).isGreaterThan(10);
  }

  /** The front of the largest demo: what a crew carries must stay little, on both papers. */
  @ParameterizedTest
  @EnumSource
  void theFrontIsShortOnPaper(Sheet sheet) throws IOException {
    List<PrintedPage> pages = printed("seed-loft/book.html", sheet);
    assertThat(front(pages)).hasSizeBetween(10, 18);
    assertThat(pages.get(1).text()).contains("page 2 of " + pages.size());
    assertThat(pages.stream().filter(PrintedPage::lies))
        .as("the join card lies across one page, with its last seam")
        .singleElement()
        .satisfies(page -> assertThat(page.text()).contains("Join card").contains("12 × lining"));
  }

  @Test
  void theFrontIsShortOnAPhone() {
    Browser browser = openFolded("seed-loft/book.html", 360);
    double top =
        browser.run("document.querySelector('.back').getBoundingClientRect().top").asDouble();
    assertThat(top).isBetween(1000.0, 16 * 800.0);
  }

  /** What is ticked as cut and joined comes out as lines of the diary, with the day. */
  @Test
  void theTicksComeOutAsADiary() throws IOException {
    Browser browser = openFolded("class-model/book.html", 360);
    browser.run("document.querySelectorAll('[data-diary]').forEach(f => f.click())");
    browser.run("document.querySelectorAll('.bar button')[1].click()");
    String text = browser.run("document.querySelector('.bar textarea').value").asText();
    JsonNode diary = new ObjectMapper().readTree(text);
    assertThat(diary.path("seamstead").asInt()).isEqualTo(1);
    assertThat(diary.path("job").asText()).isEqualTo("Classroom model, one to ten");
    List<String> pieces = new ArrayList<>();
    int seams = 0;
    for (JsonNode row : diary.path("diary")) {
      assertThat(row.path("date").asText()).matches("\\d{4}-\\d\\d-\\d\\d");
      row.path("cut").path("pieces").forEach(p -> pieces.add(p.asText()));
      seams += row.has("joined") ? 1 : 0;
    }
    assertThat(pieces).containsExactlyInAnyOrder("1", "2", "3", "4", "5");
    assertThat(seams).isEqualTo(5);
    browser.run("localStorage.clear()");
  }

  @Test
  void ticksAndReadingsAreStillThereTomorrow() {
    Browser browser = openFolded("seed-loft/book.html", 360);
    assertThat(browser.run("document.querySelector('.bar a').textContent").asText())
        .startsWith("Next: Day 1")
        .endsWith("step 1");
    browser.run("document.querySelector('[data-step]').click()");
    browser.run(
        "(f => { f.value = '9:15 AB'; f.dispatchEvent(new Event('change', {bubbles: true})); })"
            + "(document.querySelector('.step-line .blank'))");
    browser = openFolded("seed-loft/book.html", 360);
    assertThat(browser.run("document.querySelector('[data-step]').checked").asBoolean()).isTrue();
    assertThat(browser.run("document.querySelector('.step-line .blank').value").asText())
        .isEqualTo("9:15 AB");
    assertThat(browser.run("document.querySelector('.bar a').textContent").asText())
        .endsWith("step 2");
    browser.run("document.querySelector('.bar button').click()");
    assertThat(browser.run("document.querySelector('.bar textarea').value").asText())
        .contains("[x]")
        .contains("9:15 AB");
    browser = openFolded("class-model/book.html", 360);
    assertThat(browser.texts("[...document.querySelectorAll(':checked')].map(e => e.outerHTML)"))
        .as("another job's ticks")
        .isEmpty();
  }

  @Test
  void aBookIsWholeWithoutItsScript() {
    Browser browser = browser();
    browser.scripts(false);
    try {
      openFolded("class-model/book.html", 360);
      assertThat(browser.run("document.querySelectorAll('.bar').length").asInt()).isZero();
      assertThat(browser.run("document.querySelectorAll('.sheet:not([open])').length").asInt())
          .isZero();
      assertThat(
              browser
                  .run(
                      "(b => { b.click(); return b.checked; })(document.querySelector('.tk"
                          + " input'))")
                  .asBoolean())
          .isTrue();
      assertThat(faults(browser, "wide()")).isEmpty();
    } finally {
      browser.scripts(true);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "contrast() | <p style='color:#999'>pale</p>",
        "contrast() | <svg><rect width='9' height='9' fill='#222'/><text y='9'>dark</text></svg>",
        "wide() | <div style='width:5000px'>wide</div>",
        "links() | <a href='#nowhere'>lost</a>",
        "outside() | <img src='other.png' alt=''>",
        "headings() | <h1>one</h1><h3>three</h3>",
        "ids() | <p id='a'>a</p><p id='a'>b</p>",
        "alternatives() | <svg role='img'><title>t</title></svg>",
        "targets(24) | <nav><a href='#' style='font-size:9px'>small</a></nav>",
        "labels() | <svg role='img'><title>t</title><text y='9'>a</text><text y='9'>b</text></svg>",
        "labels() | <svg role='img'><title>t</title><text x='-20' y='20'>cut</text></svg>",
        "letters(11) | <svg role='img'><title>t</title><text y='9' font-size='9'>a</text></svg>",
        "collisions() | <div class='sheet'><p>one</p><p style='margin-top:-2em'>on it</p></div>",
        "targets(24) | <input type='checkbox' aria-label='small'>",
        "hidden() | <details><summary>s</summary>shut</details>",
        "sheets(900) | <figure>may be cut</figure>",
        "targets(44) | <details><summary style='display:block'>low</summary>x</details>",
        "small('p', 12) | <p style='font-size:11pt'>small</p>",
        "errors() | <math><merror><mi>x</mi></merror></math>"
      })
  void theProbeFindsWhatIsWrong(String question, String body) throws IOException {
    Path page = folder().resolve("pages/wrong.html");
    Files.writeString(page, "<!DOCTYPE html><html lang='en'><title>t</title><body>" + body);
    assertThat(faults(openFolded("pages/wrong.html", 360), question)).isNotEmpty();
  }

  @Test
  void noticesWhatAPageReports() throws IOException {
    Path page = folder().resolve("pages/loud.html");
    Files.writeString(page, "<!DOCTYPE html><script>console.warn('x')</script><img src='no.png'>");
    Browser browser = open("pages/loud.html", 360);
    assertThat(browser.events("Runtime.consoleAPICalled")).hasSize(1);
    assertThat(browser.events("Network.requestWillBeSent")).hasSize(2);
  }
}
