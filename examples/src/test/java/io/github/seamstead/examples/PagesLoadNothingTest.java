package io.github.seamstead.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.examples.lessons.LessonFiles;
import io.github.seamstead.examples.lessons.LessonPage;
import io.github.seamstead.examples.lessons.Paper;
import io.github.seamstead.examples.reference.CheckedValue;
import io.github.seamstead.examples.reference.ReferencePage;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** No page loads anything: no network, nothing beside the file itself, no script but its own. */
class PagesLoadNothingTest {

  /** Whatever makes a browser fetch or run something; a namespace is a name and fetches nothing. */
  private static final Pattern LOADS =
      Pattern.compile(
          "<(?:script|link|iframe|object|embed|img|audio|video|source|base)\\b[^>]*>"
              + "|\\b(?:src|srcset|data|action|poster|background|(?:xlink:)?href)\\s*=\\s*[\"'](?!#)[^\"']*"
              + "|url\\(\\s*[\"']?(?!#)[^)]*|@import[^;]*|\\bon[a-z]+\\s*=\\s*[\"'][^\"']*"
              + "|http-equiv(?!=\"Content-Security-Policy\")[^>]*|javascript:[^\"']*",
          Pattern.CASE_INSENSITIVE);

  @TestFactory
  List<DynamicTest> booksLoadNothing() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    try (DirectoryStream<Path> jobs = Files.newDirectoryStream(Path.of("jobs"), "*.json")) {
      for (Path job : jobs) {
        tests.add(
            DynamicTest.dynamicTest(
                job.getFileName().toString(),
                () -> {
                  Book book =
                      Book.of(
                          JobPlanner.plan(
                              JobReader.read(job), PlanOptions.defaults().withWorkedSteps()));
                  // The one script stands in the page and is let in by its hash alone.
                  assertThat(loads(book.html())).containsExactly("<script>");
                  assertThat(book.html()).contains("script-src 'sha256-");
                  book.drawings().forEach((name, svg) -> assertThat(loads(svg)).as(name).isEmpty());
                }));
      }
    }
    return tests;
  }

  @Test
  void lessonsAndReferenceLoadNothing() {
    assertThat(loads(LessonPage.html(1, Paper.A4))).isEmpty();
    LessonFiles.of(1, 1, Paper.LETTER)
        .forEach((file, page) -> assertThat(loads(page)).as(file).isEmpty());
    CheckedValue value =
        CheckedValue.parse("a.b\tcase\tsource [found]\tfound\t1.5\t1.49\t0.02\tATest");
    assertThat(loads(ReferencePage.html(List.of(value), Map.of("a.b", "A"), (test, type) -> true)))
        .isEmpty();
  }

  @Test
  void whatLoadsIsSeen() {
    assertThat(loads("<a href=\"#top\">up</a><svg fill=\"url(#hatch)\"></svg>")).isEmpty();
    assertThat(loads("<svg xmlns=\"http://www.w3.org/2000/svg\"></svg>")).isEmpty();
    for (String planted :
        List.of(
            "<script>1</script>",
            "<link rel=\"stylesheet\" href=\"https://fonts.example/a.css\"/>",
            "<a href=\"https://example.org\">out</a>",
            "<p style=\"background:url(//example.org/a.png)\">",
            "<style>@import 'a.css';</style>",
            "<image xlink:href=\"a.png\"/>",
            "<p onclick=\"go()\">")) {
      assertThat(loads(planted)).as(planted).isNotEmpty();
    }
  }

  private static List<String> loads(String page) {
    List<String> found = new ArrayList<>();
    Matcher matcher = LOADS.matcher(page);
    while (matcher.find()) {
      found.add(matcher.group());
    }
    return found;
  }
}
