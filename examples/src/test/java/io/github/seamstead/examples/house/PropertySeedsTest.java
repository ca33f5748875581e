package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * In the default build every property runs on a seed of its own: a commit passes always or never.
 */
class PropertySeedsTest {

  private static final Pattern PROPERTY = Pattern.compile("(?m)^ *@Property\\b(\\([^)]*\\))?");

  @Test
  void everyPropertyHasAFixedSeed() throws IOException {
    List<String> loose = new ArrayList<>();
    List<Path> tests;
    try (Stream<Path> files = Files.walk(Path.of(".."))) {
      tests =
          files
              .filter(file -> file.toString().contains("src/test/java"))
              .filter(file -> file.toString().endsWith(".java"))
              .sorted()
              .toList();
    }
    for (Path test : tests) {
      Matcher property = PROPERTY.matcher(Files.readString(test));
      while (property.find()) {
        String terms = property.group(1);
        if (terms == null || !terms.contains("seed")) {
          loose.add(test.getFileName().toString());
        }
      }
    }
    assertThat(loose).as("properties without a fixed seed").isEmpty();
  }
}
