package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LessonsCommandTest {

  @TempDir private Path folder = Path.of("");

  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(args, new PrintWriter(new StringWriter()), new PrintWriter(err));
  }

  @Test
  void writesSheetsForEachLessonAndOneTeachersBook() throws IOException {
    Path out = folder.resolve("class");
    assertThat(
            run(
                "lessons",
                "--worksheets",
                "--pupils",
                "1",
                "--paper",
                "letter",
                "--out",
                text(out)))
        .isZero();
    try (Stream<Path> files = Files.list(out)) {
      List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
      assertThat(names).contains("teacher.html", "lesson-01-sheets.html", "lesson-15-sheets.html");
    }
    assertThat(Files.readString(out.resolve("teacher.html"))).contains("size:letter");
  }

  @Test
  void refusesWhatItCannotPrint() {
    Path out = folder.resolve("class");
    assertThat(run("lessons", "--worksheets", "--pupils", "41", "--out", text(out))).isEqualTo(2);
    assertThat(err.toString()).contains("--pupils: given 41, must be from 1 to 40");
    assertThat(run("lessons", "--paper", "A5", "--out", text(out))).isEqualTo(2);
    assertThat(err.toString()).contains("paper: given A5, must be A4 or letter");
    assertThat(out).doesNotExist();
  }

  @Test
  void otherSeedsDrawOtherNumbers() throws IOException {
    Path first = folder.resolve("one.html");
    Path second = folder.resolve("two.html");
    assertThat(run("lessons", "--out", text(first))).isZero();
    assertThat(run("lessons", "--seed", "2", "--out", text(second))).isZero();
    assertThat(Files.readString(first)).isNotEqualTo(Files.readString(second));
  }

  @Test
  void referencesSayWhatIsMissing() {
    Path out = folder.resolve("references.html");
    assertThat(run("references", "--project", text(folder), "--out", text(out))).isEqualTo(2);
    assertThat(err.toString()).contains("geometry").contains("mvn verify");
    assertThat(out).doesNotExist();
  }

  private static String text(Path path) {
    return path.toString();
  }
}
