package io.github.seamstead.examples.cookbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the cookbook shows is what the tests ran. */
class CookbookTest {

  private static final Path SOURCES =
      Path.of("src/test/java/io/github/seamstead/examples/cookbook");
  private static final Pattern SHOWN =
      Pattern.compile(
          "^## (\\d+)\\. [^\n]+\n(?:(?!^## ).)*?^```java\n(.*?)^```$",
          Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern RUN =
      Pattern.compile("^ *// recipe (\\d+)\n(.*?)^ *// end$", Pattern.DOTALL | Pattern.MULTILINE);

  @Nested
  class Jobs extends JobRecipes {}

  @Nested
  class Runs extends RunRecipes {}

  private static Map<Integer, String> blocks(Pattern pattern, String text) {
    Map<Integer, String> blocks = new TreeMap<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      String before = blocks.put(Integer.valueOf(matcher.group(1)), unindented(matcher.group(2)));
      assertThat(before).as("recipe %s a second time", matcher.group(1)).isNull();
    }
    return blocks;
  }

  private static String unindented(String block) {
    int indent =
        block
            .lines()
            .filter(line -> !line.isBlank())
            .mapToInt(line -> line.length() - line.stripLeading().length())
            .min()
            .orElse(0);
    return block
        .lines()
        .map(line -> line.substring(Math.min(indent, line.length())) + "\n")
        .collect(Collectors.joining());
  }

  @Test
  void theCookbookShowsWhatTheTestsRun() throws IOException {
    String run =
        Files.readString(SOURCES.resolve("JobRecipes.java"))
            + Files.readString(SOURCES.resolve("RunRecipes.java"));
    Map<Integer, String> shown = blocks(SHOWN, Files.readString(Path.of("cookbook.md")));
    assertThat(shown).isEqualTo(blocks(RUN, run)).hasSizeGreaterThanOrEqualTo(20);
  }
}
