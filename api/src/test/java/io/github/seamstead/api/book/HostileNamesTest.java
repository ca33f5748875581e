package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book whose layers both have the same name, of whatever letters. */
class HostileNamesTest {

  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");

  private static Book plain;

  @BeforeAll
  static void writeOneWithAPlainName() throws IOException {
    plain = book("plain");
  }

  private static Book book(String name) throws IOException {
    String text =
        Files.readString(DemoJobs.FOLDER.resolve("seed-loft.json"))
            .replace("\"levelling coat\"", '"' + name + '"')
            .replace("\"dry pack\"", '"' + name + '"');
    return Book.of(
        JobPlanner.plan(
            JobReader.parse(text.getBytes(StandardCharsets.UTF_8)),
            PlanOptions.defaults().withWorkedSteps()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "coat",
        "\\u6C34",
        "...",
        "\\u202Ex\\uFFFE",
        "\\u05D0\\u05D1",
        "<script>x</script>\\\" onload=\\\"x",
        "-2+3"
      })
  void everyDrawingIsKeptUnderANameOfItsOwn(String name) throws IOException {
    Book book = book(name);
    assertThat(book.drawings()).hasSameSizeAs(plain.drawings());
    assertThat(book.drawings().keySet()).allMatch(n -> n.matches("[a-z0-9-]{1,60}"));
    List<String> ids = ID.matcher(book.html()).results().map(r -> r.group(1)).toList();
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    // One script, the book's own: none comes in by a name.
    assertThat(book.html().split("<script", -1)).hasSize(2);
    assertThat(book.html()).doesNotContain("\u202E");
    for (String drawing : book.drawings().values()) {
      assertThat(drawing).doesNotContain("\uFFFE").doesNotContain("<script");
    }
    assertThat(book.lists().get("drawings.csv").lines()).hasSize(book.drawings().size() + 1);
  }

  @Test
  void aNameOfFourHundredLettersIsWritten() throws IOException {
    assertThat(book("x".repeat(400)).drawings().keySet()).allMatch(n -> n.length() <= 60);
  }

  @Test
  void thePageLetsNothingRunOrLoad() throws IOException {
    assertThat(plain.html()).contains("Content-Security-Policy").contains("default-src 'none'");
  }
}
