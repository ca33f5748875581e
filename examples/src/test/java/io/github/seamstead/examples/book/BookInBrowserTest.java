package io.github.seamstead.examples.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.examples.lessons.LessonPage;
import io.github.seamstead.examples.lessons.Paper;
import io.github.seamstead.examples.lessons.TeacherBook;
import io.github.seamstead.examples.reference.CheckedValue;
import io.github.seamstead.examples.reference.ReferencePage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Opens every demo book, the lessons and the reference page in a headless browser. */
@Tag("browser")
class BookInBrowserTest {

  private static final Path JOBS = Path.of("jobs");

  /** Metric, imperial and a model: worked steps look alike in the others. */
  private static final List<String> WORKED = List.of("seed-loft", "hill-hide", "class-model");

  private static final double MARGINS = 2 * 14 / 25.4;

  /** A book has an edge to bind it by. */
  private static final double BOOK_MARGINS = (20 + 10) / 25.4;

  private static final int PIXELS = 96;

  @TempDir private static Path folder = Path.of("");
  private static @Nullable Browser started;
  private static String probe = "";

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    Optional<Path> program = Browser.find();
    if (program.isEmpty()) {
      String message = "skipped: no chromium or chrome on the path and SEAMSTEAD_BROWSER not set";
      if ("1".equals(System.getenv("SEAMSTEAD_REQUIRE_BROWSER"))) {
        fail("SEAMSTEAD_REQUIRE_BROWSER=1, but " + message);
      }
      abort(message);
    }
    try (InputStream in = BookInBrowserTest.class.getResourceAsStream("probe.js")) {
      probe = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    for (String job : jobs()) {
      PlanOptions options = PlanOptions.defaults();
      var read = JobReader.read(JOBS.resolve(job + ".json"));
      BookWriter.write(JobPlanner.plan(read, options), folder.resolve(job));
      BookWriter.write(
          JobPlanner.plan(read, options.withWorkedSteps()), folder.resolve(job + "-worked"));
    }
    Files.createDirectory(folder.resolve("pages"));
    Files.writeString(folder.resolve("pages/lessons.html"), LessonPage.html(1, Paper.A4));
    Files.writeString(folder.resolve("pages/teacher.html"), TeacherBook.html(1, 1, Paper.A4));
    CheckedValue value =
        CheckedValue.parse("a.b\tcase\tsource [found]\tfound\t1.5\t1.49\t0.02\tATest");
    Files.writeString(
        folder.resolve("pages/reference.html"),
        ReferencePage.html(List.of(value), Map.of("a.b", "A"), (test, type) -> true));
    started = Browser.start(program.get(), Files.createDirectory(folder.resolve("browser")));
  }

  @AfterAll
  static void stop() throws InterruptedException {
    if (started != null) {
      started.close();
    }
  }

  static List<String> jobs() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - 5))
          .sorted()
          .toList();
    }
  }

  /** The pages: each demo, three with their worked steps, then the pages that stand alone. */
  static List<String> pages() throws IOException {
    List<String> pages = new ArrayList<>();
    for (String job : jobs()) {
      pages.add(job + "/book.html");
    }
    for (String job : WORKED) {
      pages.add(job + "-worked/book.html");
    }
    pages.add("pages/lessons.html");
    pages.add("pages/teacher.html");
    pages.add("pages/reference.html");
    return pages;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void reportsNothingAndAsksForNothing(String page) throws IOException {
    Browser browser = open(page, 1280);
    assertThat(browser.events("Runtime.consoleAPICalled")).isEmpty();
    assertThat(browser.events("Runtime.exceptionThrown")).isEmpty();
    assertThat(browser.events("Log.entryAdded")).isEmpty();
    assertThat(browser.events("Network.requestWillBeSent"))
        .extracting(event -> event.path("params").path("request").path("url").asText())
        .containsExactly(folder.resolve(page).toUri().toString());
    List<String> scripts = browser.texts("[...document.scripts].map(s => s.src + s.type)");
    assertThat(scripts).hasSize(isBook(page) ? 1 : 0).allMatch(String::isEmpty);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void linksLeadSomewhereAndNeverOffTheFolder(String page) {
    Browser browser = open(page, 1280);
    assertThat(faults(browser, "links()")).isEmpty();
    for (String link : faults(browser, "outside()")) {
      assertThat(link).doesNotContain(":").doesNotStartWith("/");
      assertThat(folder.resolve(page).resolveSibling(link)).exists();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void fitsAPhoneAndADesk(String page) {
    for (int width : new int[] {360, 1280}) {
      assertThat(faults(open(page, width), "wide()")).as("%d px", width).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void isBuiltForEveryReader(String page) {
    Browser browser = open(page, 360);
    assertThat(browser.run("document.documentElement.lang").asText()).isEqualTo("en");
    assertThat(browser.run("document.title").asText()).isNotBlank();
    assertThat(faults(browser, "headings()")).as("headings").isEmpty();
    assertThat(faults(browser, "ids()")).as("ids used twice").isEmpty();
    assertThat(faults(browser, "alternatives()")).as("drawings without alternative").isEmpty();
    assertThat(faults(browser, isBook(page) ? "targets(44)" : "targets(24)"))
        .as("small touch targets")
        .isEmpty();
    assertThat(faults(browser, "contrast()")).as("contrast below AA").isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void labelsOfDrawingsAreWholeAndApart(String page) {
    assertThat(faults(open(page, 1280), "labels()")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void printsWholeOnA4AndLetter(String page) throws IOException {
    double[][] papers = {{210 / 25.4, 297 / 25.4}, {8.5, 11}};
    for (double[] paper : papers) {
      double margins = isBook(page) ? BOOK_MARGINS : MARGINS;
      Browser browser = openFolded(page, (int) ((paper[0] - margins) * PIXELS));
      List<String> headings =
          browser.texts("[...document.querySelectorAll('h1,h2,h3')].map(h => h.textContent)");
      browser.media("print");
      try {
        assertThat(faults(browser, "hidden()")).as("not shown on paper").isEmpty();
        assertThat(faults(browser, "wide()")).as("wider than the paper").isEmpty();
        int height = (int) ((paper[1] - MARGINS) * PIXELS);
        assertThat(faults(browser, "sheets(" + height + ")")).as("cut by page ends").isEmpty();
      } finally {
        browser.media("");
      }
      List<String> sheets = sheets(browser.print(paper[0], paper[1]));
      assertThat(sheets).isNotEmpty().allMatch(text -> !text.isEmpty());
      assertThat(String.join("", sheets))
          .contains(headings.stream().map(BookInBrowserTest::dense).toList());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft-worked/book.html", "pages/lessons.html"})
  void showsSumsAsMathematics(String page) {
    Browser browser = open(page, 1280);
    JsonNode sums = browser.run("document.querySelectorAll('main math').length");
    assertThat(sums.asInt()).isGreaterThan(10);
    assertThat(browser.texts("[...document.querySelectorAll('math merror')].map(e => e.innerHTML)"))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void drawingsOpenAlone(String job) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(job).resolve("drawings"))) {
      for (Path drawing : files.sorted().toList()) {
        Browser browser = browser();
        browser.open(drawing);
        assertThat(browser.run("document.documentElement.tagName").asText()).isEqualTo("svg");
        assertThat(browser.texts("[...document.querySelectorAll('parsererror')].map(String)"))
            .as("%s", drawing)
            .isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void lettersOfDrawingsCanBeReadOnAPhone(String job) {
    Browser browser = openFolded(job + "/book.html", 360);
    browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
    assertThat(faults(browser, "letters(11)")).isEmpty();
  }

  /** The front of the largest demo: what a crew carries must stay little, on both papers. */
  @ParameterizedTest
  @CsvSource({"8.268,11.693", "8.5,11"})
  void theFrontIsShortOnPaper(double width, double height) throws IOException {
    Browser browser = open("seed-loft/book.html", 680);
    List<PrintedPage> pages = PrintedPage.of(browser.print(width, height));
    List<PrintedPage> front = front(pages);
    assertThat(front).hasSizeBetween(10, 18);
    assertThat(pages.get(1).text()).contains("page 2 of " + pages.size());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noPageOfTheFrontIsWasted(String job) throws IOException {
    for (double[] paper : new double[][] {{210 / 25.4, 297 / 25.4}, {8.5, 11}}) {
      Browser browser = open(job + "/book.html", 680);
      for (PrintedPage page : front(PrintedPage.of(browser.print(paper[0], paper[1])))) {
        assertThat(page.filled()).as(page.text()).isGreaterThan(0.5);
      }
    }
  }

  private static List<PrintedPage> front(List<PrintedPage> pages) {
    return pages.stream().takeWhile(page -> !page.text().contains("The job at a glance")).toList();
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
    browser = openFolded("hill-hide/book.html", 360);
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
        "targets(24) | <input type='checkbox' aria-label='small'>",
        "hidden() | <details><summary>s</summary>shut</details>",
        "sheets(900) | <figure>may be cut</figure>"
      })
  void theProbeFindsWhatIsWrong(String question, String body) throws IOException {
    Path page = folder.resolve("pages/wrong.html");
    Files.writeString(page, "<!DOCTYPE html><html lang='en'><title>t</title><body>" + body);
    assertThat(faults(openFolded("pages/wrong.html", 360), question)).isNotEmpty();
  }

  @Test
  void noticesWhatAPageReports() throws IOException {
    Path page = folder.resolve("pages/loud.html");
    Files.writeString(page, "<!DOCTYPE html><script>console.warn('x')</script><img src='no.png'>");
    Browser browser = open("pages/loud.html", 360);
    assertThat(browser.events("Runtime.consoleAPICalled")).hasSize(1);
    assertThat(browser.events("Network.requestWillBeSent")).hasSize(2);
  }

  private static Browser browser() {
    if (started == null) {
      throw new IllegalStateException("no browser");
    }
    return started;
  }

  private static boolean isBook(String page) {
    return page.endsWith("/book.html");
  }

  /** Opens a page and all that is folded on it. */
  private static Browser open(String page, int width) {
    Browser browser = openFolded(page, width);
    browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
    return browser;
  }

  private static Browser openFolded(String page, int width) {
    Browser browser = browser();
    browser.size(width, 800);
    browser.open(folder.resolve(page));
    return browser;
  }

  private static List<String> faults(Browser browser, String question) {
    return browser.texts("(() => {" + probe + "\nreturn probe." + question + "})()");
  }

  private static List<String> sheets(byte[] pdf) throws IOException {
    List<String> sheets = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        sheets.add(dense(stripper.getText(document)));
      }
    }
    return sheets;
  }

  /** Leaves out the spaces, which a printed line break puts anywhere. */
  private static String dense(String text) {
    return text.replaceAll("[\\s\u00a0\u00ad]+", "");
  }
}
