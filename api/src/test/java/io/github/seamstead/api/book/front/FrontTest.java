package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.Paper;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of the front as a whole. */
class FrontTest {

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model", "clay-bank"})
  void speaksToBuildersAlone(String job) {
    for (Sheet sheet : Sheets.of(job).sheets()) {
      assertThat(Sheets.text(sheet))
          .as(sheet.title())
          .doesNotContain("$.")
          .doesNotContain("null")
          .doesNotContain("Optional")
          .doesNotContain("objective")
          .doesNotContain("lower bound")
          .doesNotContainPattern("\\d\\.\\d{5}")
          .doesNotContain("the the ");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model", "clay-bank"})
  void everyFieldHasANameOfItsOwn(String job) {
    StringBuilder all = new StringBuilder();
    Sheets.of(job).sheets().forEach(s -> all.append(s.body()));
    List<String> keys = Sheets.find(all.toString(), "data-k=\"([^\"]+)\"");
    assertThat(keys).hasSizeGreaterThan(10).doesNotHaveDuplicates();
  }

  @Test
  void sheetsNameTheJobTheirPlaceAndTheirResults() {
    Book book = Book.of(DemoJobs.plan("class-model"));
    List<String> tags =
        Sheets.find(book.html(), "class=\"tag\">(.+?)<span").stream()
            .map(tag -> tag.replaceAll("<[^>]+>", ""))
            .toList();
    assertThat(tags).hasSizeGreaterThan(5);
    assertThat(tags.get(0))
        .matches("Classroom model, one to ten · Start · sheet 1 of \\d+ · job [0-9a-f]{6} · date ");
    assertThat(tags.get(tags.size() - 1)).contains("sheet " + tags.size() + " of " + tags.size());
    String digest = tags.get(0).replaceAll(".*job ([0-9a-f]{6}).*", "$1");
    assertThat(Book.of(DemoJobs.plan("class-model")).html()).contains("job " + digest);
    Book other = Book.of(DemoJobs.plan("class-model", PlanOptions.defaults().withSeed(7)));
    Book loft = Book.of(DemoJobs.plan("seed-loft"));
    assertThat(loft.html()).doesNotContain("job " + digest);
    assertThat(other.html()).isNotBlank();
  }

  @Test
  void theFootOfAPageCannotBreakOutOfTheStyle() {
    String css = FrontStyle.css("a\"}</style><b>", "0a1b2c", Paper.A4);
    assertThat(css).doesNotContain("</style>").contains("a\\22 \\7d \\3c \\2f style\\3e ");
  }

  @Test
  void aLongNameIsShortenedAtTheEdgeAndWholeInTheTitle() throws IOException {
    String name = "\u05d0\u05d1\u05d2 \u05d3\u05d4\u05d5 ".repeat(20).strip();
    String text =
        Files.readString(DemoJobs.FOLDER.resolve("clay-bank.json"))
            .replace("Clay bank, soils and mix alone", name);
    String html =
        Book.of(
                JobPlanner.plan(
                    JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), PlanOptions.defaults()))
            .html();
    assertThat(html.replaceAll("[\u2066-\u2069]", "")).contains(name);
    for (String tag : Sheets.find(html, "class=\"tag\"><bdi>(.+?)</bdi>")) {
      assertThat(tag.replaceAll("[\u2066-\u2069]", "")).hasSizeLessThan(40).endsWith("…");
    }
    assertThat(Front.shortened("Seed-drying loft")).isEqualTo("Seed-drying loft");
  }
}
