package io.github.seamstead.examples.golden;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the demo jobs' books, results and lists say is what a reviewer has read. A change that
 * alters them shows as a difference of the golden files, which is reviewed with it: {@code mvn -pl
 * examples -am test -Dtest=GoldenBooksTest -Dgolden.write=true} writes them anew.
 */
class GoldenBooksTest {

  private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");

  @TempDir private Path folder;

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("jobs"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void aDemoSaysWhatWasReviewed(Path demo) throws IOException {
    String name = demo.getFileName().toString().replace(".json", "");
    Path book = folder.resolve(name);
    BookWriter.write(JobPlanner.plan(JobReader.read(demo), PlanOptions.defaults()), book);
    Map<String, List<String>> read = new TreeMap<>();
    read.put("book.txt", Reading.page(book.resolve("book.html")));
    read.put("results.txt", Reading.results(book.resolve("results.json")));
    read.put("lists.txt", Reading.lists(book.resolve("lists")));
    for (Map.Entry<String, List<String>> one : read.entrySet()) {
      Path golden = GOLDEN.resolve(name).resolve(one.getKey());
      Path now = folder.resolve(one.getKey());
      List<String> lines = one.getValue().stream().map(GoldenBooksTest::ofAnyRelease).toList();
      Files.writeString(now, String.join("\n", lines) + "\n");
      if (Boolean.getBoolean("golden.write")) {
        Files.createDirectories(golden.getParent());
        Files.copy(now, golden, StandardCopyOption.REPLACE_EXISTING);
      }
      assertThat(now).as("%s of %s", one.getKey(), demo).hasSameTextualContentAs(golden);
    }
  }

  /** Without the version and the mark of a job that is made from it and from all numbers. */
  private static String ofAnyRelease(String line) {
    return line.replaceFirst("^(\\$\\.library = ).*", "$1any")
        .replaceAll("\\bjob [0-9a-f]{6}\\b", "job ......");
  }
}
