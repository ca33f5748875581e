package io.github.seamstead.examples.readme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is true. */
class ReadmeTest {

  private static final Path README = Path.of("../README.md");

  @TempDir private Path folder;

  private static List<String> blocks(String language) throws IOException {
    Matcher matcher =
        Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(README));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }

  @Test
  void theFirstTwoCommandsAreThese() throws IOException {
    assertThat(blocks("sh"))
        .startsWith(
            "examples/seamstead plan examples/jobs/seed-loft.json --out book\n", "mvn verify\n");
  }

  @Test
  void theLinesOfJavaCompileAndRun() throws Exception {
    String source = blocks("java").get(0);
    assertThat(source.lines().filter(line -> !line.isBlank()).count()).isLessThanOrEqualTo(12);
    Path file = Files.writeString(folder.resolve("Plan.java"), source);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    int code =
        compiler.run(
            null,
            null,
            null,
            "-proc:none",
            "-cp",
            System.getProperty("java.class.path"),
            "-d",
            folder.toString(),
            file.toString());
    assertThat(code).as("the compiler's exit code").isZero();
    Path book = folder.resolve("book");
    try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
      String[] args = {"jobs/class-model.json", book.toString()};
      loader.loadClass("Plan").getMethod("main", String[].class).invoke(null, (Object) args);
    }
    assertThat(book.resolve("results.json")).exists();
    assertThat(book.resolve("book.html")).exists();
  }

  @Test
  void everyFileItLinksToIsThere() throws IOException {
    Matcher matcher = Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(README));
    int links = 0;
    while (matcher.find()) {
      assertThat(README.resolveSibling(matcher.group(1))).exists();
      links++;
    }
    assertThat(links).isPositive();
  }
}
