package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of mutants that no test notices: its sums, its names, and a reason for each. */
class MutantsLeftTest {

  /** Of the mutants that are neither words nor the edge of a range, nine of ten must die. */
  private static final double LEAST_KILLED = 0.9;

  private static final Pattern HEADING =
      Pattern.compile(
          "(\\w+)\\.([\\w.]+): (\\d+) mutants, (\\d+) killed, (\\d+) alive"
              + "(?:, of them (\\d+) words and (\\d+) edges)?");

  private record Measured(
      String module, String room, int all, int killed, int alive, int harmless, List<String> left) {

    double score() {
      return (double) killed / (all - harmless);
    }
  }

  private static int number(Matcher heading, int group) {
    String text = heading.group(group);
    return text == null ? 0 : Integer.parseInt(text);
  }

  private static List<Measured> measured() throws IOException {
    List<Measured> list = new ArrayList<>();
    Path file = Path.of("src/test/resources/house/mutants-left.txt");
    for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
      Matcher heading = HEADING.matcher(line);
      if (heading.matches()) {
        list.add(
            new Measured(
                heading.group(1),
                heading.group(2),
                number(heading, 3),
                number(heading, 4),
                number(heading, 5),
                number(heading, 6) + number(heading, 7),
                new ArrayList<>()));
      } else if (!list.isEmpty() && line.startsWith("  ")) {
        list.get(list.size() - 1).left().add(line.substring(2));
      }
    }
    return list;
  }

  @Test
  void theSumsOfTheListAreRight() throws IOException {
    assertThat(measured()).hasSizeGreaterThan(3);
    for (Measured one : measured()) {
      String name = one.module() + "." + one.room();
      assertThat(one.killed() + one.alive()).as(name).isEqualTo(one.all());
      assertThat(one.harmless()).as(name).isLessThanOrEqualTo(one.alive());
      assertThat(one.score()).as(name).isGreaterThanOrEqualTo(LEAST_KILLED);
    }
  }

  @Test
  void whatIsLeftHasAReasonAndAClassThatIsThere() throws IOException {
    for (Measured one : measured()) {
      Path room =
          Path.of(
              "..",
              one.module(),
              "src/main/java/io/github/seamstead",
              one.module(),
              one.room().replace('.', '/'));
      assertThat(room).isDirectory();
      String sources;
      try (Stream<Path> files = Files.list(room)) {
        sources = String.join(" ", files.map(f -> f.getFileName().toString()).toList());
      }
      // A line that goes on is indented further; together they name a class and give the reason.
      String text = String.join("\n", one.left());
      assertThat(one.left()).as(one.room()).isNotEmpty();
      Matcher names = Pattern.compile("(?m)^([A-Z]\\w+)(?:\\.\\w+)? ").matcher(text);
      while (names.find()) {
        assertThat(sources).as(one.room()).contains(names.group(1) + ".java");
      }
      assertThat(text.split(": ").length).as(one.room()).isGreaterThan(1);
    }
  }
}
