package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookWriterTest {

  @TempDir private Path folder = Path.of("");

  private static TreeMap<String, String> files(Path root) throws IOException {
    TreeMap<String, String> texts = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        texts.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return texts;
  }

  @Test
  void writesEveryFileOfTheBook() throws IOException {
    JobPlan plan = DemoJobs.plan("class-model");
    Path target = folder.resolve("book");
    BookWriter.write(plan, target);
    Book book = Book.of(plan);
    TreeMap<String, String> files = files(target);
    assertThat(files.get("book.html")).isEqualTo(book.html());
    assertThat(files.get("results.json")).isEqualTo(ResultsJson.text(plan));
    assertThat(files.get("print-sheets.html")).isEqualTo(book.printSheets().orElseThrow());
    book.drawings()
        .forEach((name, svg) -> assertThat(files).containsEntry("drawings/" + name + ".svg", svg));
    book.lists().forEach((name, text) -> assertThat(files).containsEntry("lists/" + name, text));
    assertThat(files).doesNotContainKeys("worked.md", "worked.tex");
  }

  @Test
  void workedStepsComeAsTwoTextsMore() throws IOException {
    Path target = folder.resolve("worked");
    BookWriter.write(DemoJobs.plan("clay-bank", PlanOptions.defaults().withWorkedSteps()), target);
    TreeMap<String, String> files = files(target);
    assertThat(files.get("worked.md")).startsWith("# The sums, worked");
    assertThat(files.get("worked.tex")).contains("\\begin{document}").endsWith("\\end{document}\n");
    assertThat(files).doesNotContainKey("print-sheets.html");
  }

  @Test
  void theSamePlanGivesTheSameFiles() throws IOException {
    BookWriter.write(DemoJobs.plan("clay-bank"), folder.resolve("one"));
    BookWriter.write(DemoJobs.plan("clay-bank"), folder.resolve("other"));
    assertThat(files(folder.resolve("one"))).isEqualTo(files(folder.resolve("other")));
  }

  @Test
  void leavesAFolderOfSomebodyElseAlone() throws IOException {
    Path target = Files.createDirectory(folder.resolve("mine"));
    Files.writeString(target.resolve("letter.txt"), "mine");
    JobPlan plan = DemoJobs.plan("clay-bank");
    assertThatThrownBy(() -> BookWriter.write(plan, target))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(files(target)).containsOnlyKeys("letter.txt");
    assertThat(folder).isDirectoryNotContaining(path -> !path.endsWith("mine"));
  }
}
