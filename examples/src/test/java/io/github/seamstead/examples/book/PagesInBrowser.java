package io.github.seamstead.examples.book;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every page is held to in a headless browser: on a desk, on a phone and on paper. A page is
 * opened once for each and printed once on each paper; a class that extends this names the pages.
 */
@Tag("browser")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PagesInBrowser {

  private static final Path JOBS = Path.of("jobs");

  private static final double MARGINS = 2 * 14 / 25.4;

  /** A book has an edge to bind it by. */
  private static final double BOOK_MARGINS = (20 + 10) / 25.4;

  /** What a book leaves free above and below, its foot included. */
  private static final double BOOK_ENDS = (10 + 14) / 25.4;

  private static final int PIXELS = 96;

  /** The least part of a sheet that is used: in the front, and anywhere in a book. */
  private static final double LEAST_OF_FRONT = 0.5;

  private static final double LEAST_OF_BACK = 1.0 / 3;

  /** What opens the sheet of safety, and what closes it where its rules have sources. */
  private static final String SAFETY = dense("One person is in charge of safety each day");

  private static final String END_OF_SAFETY = dense("Sources: 1 ");

  /** Width and height in inches. */
  enum Sheet {
    A4("A4", 210 / 25.4, 297 / 25.4),
    LETTER("letter", 8.5, 11);

    private final String css;
    private final double width;
    private final double height;

    Sheet(String css, double width, double height) {
      this.css = css;
      this.width = width;
      this.height = height;
    }
  }

  @TempDir private static Path folder = Path.of("");
  private @Nullable Browser started;
  private String probe = "";
  private final Map<String, List<PrintedPage>> prints = new HashMap<>();

  /** The demos whose books are looked at. */
  abstract List<String> jobs() throws IOException;

  /** Those of them that are looked at with their worked steps too. */
  abstract List<String> worked();

  /** The pages beside the books: lessons, teacher, reference. */
  abstract List<String> alone();

  @BeforeAll
  void start() throws IOException, InterruptedException {
    Path program = Browser.orSkip();
    try (InputStream in = PagesInBrowser.class.getResourceAsStream("probe.js")) {
      probe = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    for (String job : jobs()) {
      write(job, job, PlanOptions.defaults());
    }
    for (String job : worked()) {
      write(job, job + "-worked", PlanOptions.defaults().withWorkedSteps());
    }
    Files.createDirectory(folder.resolve("pages"));
    for (String page : alone()) {
      Files.writeString(folder.resolve("pages/" + page + ".html"), standing(page));
    }
    started = Browser.start(program, Files.createDirectory(folder.resolve("browser")));
  }

  private static void write(String job, String into, PlanOptions options) {
    BookWriter.write(
        JobPlanner.plan(JobReader.read(JOBS.resolve(job + ".json")), options),
        folder.resolve(into));
  }

  private static String standing(String page) {
    return switch (page) {
      case "lessons" -> LessonPage.html(1, Paper.A4);
      case "teacher" -> TeacherBook.html(1, 1, Paper.A4);
      case "reference" -> {
        CheckedValue value =
            CheckedValue.parse("a.b\tcase\tsource [found]\tfound\t1.5\t1.49\t0.02\tATest");
        yield ReferencePage.html(List.of(value), Map.of("a.b", "A"), (test, type) -> true);
      }
      default -> throw new IllegalArgumentException(page);
    };
  }

  @AfterAll
  void stop() {
    if (started != null) {
      started.close();
    }
  }

  /** All demos there are. */
  static List<String> demos() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - 5))
          .sorted()
          .toList();
    }
  }

  /** The pages: each demo, some with their worked steps, then the pages that stand alone. */
  List<String> pages() throws IOException {
    List<String> pages = new ArrayList<>();
    jobs().forEach(job -> pages.add(job + "/book.html"));
    worked().forEach(job -> pages.add(job + "-worked/book.html"));
    alone().forEach(page -> pages.add("pages/" + page + ".html"));
    return pages;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void isSoundOnADesk(String page) throws IOException {
    Browser browser = open(page, 1280);
    SoftAssertions all = new SoftAssertions();
    all.assertThat(browser.events("Runtime.consoleAPICalled")).isEmpty();
    all.assertThat(browser.events("Runtime.exceptionThrown")).isEmpty();
    all.assertThat(browser.events("Log.entryAdded")).isEmpty();
    all.assertThat(browser.events("Network.requestWillBeSent"))
        .extracting(event -> event.path("params").path("request").path("url").asText())
        .containsExactly(folder.resolve(page).toUri().toString());
    List<String> scripts = browser.texts("[...document.scripts].map(s => s.src + s.type)");
    all.assertThat(scripts).hasSize(isBook(page) ? 1 : 0).allMatch(String::isEmpty);
    none(all, "links to nowhere", browser, "links()");
    for (String link : faults(browser, "outside()")) {
      all.assertThat(link).doesNotContain(":").doesNotStartWith("/");
      all.assertThat(folder.resolve(page).resolveSibling(link)).exists();
    }
    none(all, "wider than the desk", browser, "wide()");
    none(all, "labels of drawings cut off or on another", browser, "labels()");
    none(all, "sums that are no mathematics", browser, "errors()");
    all.assertAll();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void isBuiltForEveryReaderOnAPhone(String page) {
    Browser browser = open(page, 360);
    SoftAssertions all = new SoftAssertions();
    all.assertThat(browser.run("document.documentElement.lang").asText()).isEqualTo("en");
    all.assertThat(browser.run("document.title").asText()).isNotBlank();
    none(all, "wider than the phone", browser, "wide()");
    none(all, "headings", browser, "headings()");
    none(all, "ids used twice", browser, "ids()");
    none(all, "drawings without alternative", browser, "alternatives()");
    none(all, "small touch targets", browser, isBook(page) ? "targets(44)" : "targets(24)");
    none(all, "contrast below AA", browser, "contrast()");
    if (isBook(page)) {
      none(all, "small letters of drawings", browser, "letters(11)");
    }
    all.assertAll();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void printsWholeOnA4AndLetter(String page) throws IOException {
    SoftAssertions all = new SoftAssertions();
    for (Sheet sheet : Sheet.values()) {
      double margins = isBook(page) ? BOOK_MARGINS : MARGINS;
      Browser browser = openFolded(page, (int) ((sheet.width - margins) * PIXELS));
      List<String> headings =
          browser.texts("[...document.querySelectorAll('h1,h2,h3')].map(h => h.textContent)");
      browser.media("print");
      try {
        none(all, "not shown on paper", browser, "hidden()");
        none(all, "wider than the paper", browser, "wide()");
        int height = (int) ((sheet.height - (isBook(page) ? BOOK_ENDS : MARGINS)) * PIXELS);
        none(all, "text on other text", browser, "collisions()");
        none(all, "cut by page ends", browser, "sheets(" + height + ")");
        none(all, "formulas under 7 pt", browser, "small('math *', 7)");
        none(all, "safety under 12 pt", browser, "small('.hazard,.hazard strong', 12)");
        none(all, "text of the front under 10 pt", browser, "small('.steps span,.pause span', 10)");
      } finally {
        browser.media("");
      }
      List<PrintedPage> pages = printed(page, sheet);
      String text = String.join("", pages.stream().map(p -> dense(p.text())).toList());
      all.assertThat(pages).isNotEmpty().allMatch(p -> !dense(p.text()).isEmpty());
      all.assertThat(text).contains(headings.stream().map(PagesInBrowser::dense).toList());
      if (isBook(page)) {
        all.assertThat(pages)
            .as("%s: pages with rules of safety", sheet)
            .filteredOn(p -> dense(p.text()).contains(SAFETY))
            .hasSize(1)
            .allMatch(
                p -> dense(p.text()).contains(END_OF_SAFETY) || !text.contains(END_OF_SAFETY));
        int front = front(pages).size();
        // The worked sums end where they end; nothing follows that could fill their last page.
        int judged = pages.size() - (page.contains("worked") ? 1 : 0);
        for (int i = 0; i < judged; i++) {
          all.assertThat(pages.get(i).filled())
              .as("%s: page %d: %s", sheet, i + 1, pages.get(i).text())
              .isGreaterThan(i < front ? LEAST_OF_FRONT : LEAST_OF_BACK);
        }
      }
    }
    all.assertAll();
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

  static List<PrintedPage> front(List<PrintedPage> pages) {
    return pages.stream().takeWhile(page -> !page.text().contains("The job at a glance")).toList();
  }

  /** Prints a page as a reader finds it, once for all tests. */
  List<PrintedPage> printed(String page, Sheet sheet) throws IOException {
    String key = sheet + page;
    List<PrintedPage> known = prints.get(key);
    if (known == null) {
      Browser browser = openFolded(isBook(page) ? forPaper(page, sheet) : page, 680);
      known = PrintedPage.of(browser.print(sheet.width, sheet.height, isBook(page)));
      prints.put(key, known);
    }
    return known;
  }

  /** The book as a job that states this paper gets it; the paper is all that differs. */
  private static String forPaper(String page, Sheet sheet) throws IOException {
    String html = Files.readString(folder.resolve(page));
    String sized = html.replaceAll("size:(A4|letter)", "size:" + sheet.css);
    Path other = folder.resolve(page).resolveSibling("book-" + sheet.css + ".html");
    Files.writeString(other, sized);
    return folder.relativize(other).toString().replace('\\', '/');
  }

  static Path folder() {
    return folder;
  }

  Browser browser() {
    if (started == null) {
      throw new IllegalStateException("no browser");
    }
    return started;
  }

  private static boolean isBook(String page) {
    return page.endsWith("/book.html");
  }

  /** Opens a page and all that is folded on it. */
  Browser open(String page, int width) {
    Browser browser = openFolded(page, width);
    browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
    return browser;
  }

  Browser openFolded(String page, int width) {
    Browser browser = browser();
    browser.size(width, 800);
    browser.open(folder.resolve(page));
    return browser;
  }

  List<String> faults(Browser browser, String question) {
    return browser.texts("(() => {" + probe + "\nreturn probe." + question + "})()");
  }

  private void none(SoftAssertions all, String what, Browser browser, String question) {
    all.assertThat(faults(browser, question)).as(what).isEmpty();
  }

  /** Leaves out the spaces, which a printed line break puts anywhere. */
  private static String dense(String text) {
    return text.replaceAll("[\\s\u00a0\u00ad]+", "");
  }
}
