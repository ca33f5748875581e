package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MainTest {

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out), new PrintWriter(err));
  }

  static List<String> commands() {
    return List.copyOf(Commands.names());
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandHasHelp(String command) {
    assertThat(run(command, "--help")).isZero();
    assertThat(out.toString()).contains("Usage:").contains(command);
  }

  @Test
  void withoutArgumentsTheCommandsAreListed() {
    assertThat(run()).isZero();
    commands().forEach(command -> assertThat(out.toString()).contains(command));
  }

  @Test
  void anUnknownCommandIsBadInput() {
    assertThat(run("plann")).isEqualTo(2);
    assertThat(err.toString()).contains("plan");
  }

  @Test
  void aPlanIsWrittenAndWrittenAgain() {
    Path book = folder.resolve("book");
    assertThat(run("plan", "jobs/class-model.json", "--out", book.toString())).isZero();
    assertThat(run("plan", "jobs/class-model.json", "--out", book.toString())).isZero();
    assertThat(book.resolve("results.json")).exists();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void badInputWritesNothing() throws IOException {
    Path job = Files.writeString(folder.resolve("job.json"), "{\"seamstead\": 1}");
    Path book = folder.resolve("book");
    assertThat(run("plan", job.toString(), "--out", book.toString())).isEqualTo(2);
    assertThat(err.toString()).startsWith("1 fault; nothing was written:").contains("$.frame");
    assertThat(book).doesNotExist();
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(job);
    }
  }

  @Test
  void aFolderThatNoRunMadeIsRefused() throws IOException {
    Files.writeString(folder.resolve("letter.txt"), "keep");
    assertThat(run("plan", "jobs/class-model.json", "--out", folder.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("no earlier run made");
    assertThat(folder.resolve("letter.txt")).hasContent("keep");
    assertThat(folder.resolve("results.json")).doesNotExist();
  }

  @Test
  void aJobThatCannotBeMetStillHasItsBook() {
    Path book = folder.resolve("book");
    assertThat(run("plan", "jobs/hill-hide-blunder.json", "--out", book.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("reading 9").contains("measure it again");
    assertThat(book.resolve("results.json")).exists();
  }

  @Test
  void checkWritesTheAssumptions() {
    assertThat(run("check", "jobs/seed-loft.json")).isZero();
    assertThat(out.toString()).startsWith("No faults.").contains("Assumed $.");
  }

  @Test
  void theJoinOrderIsPrinted() {
    assertThat(run("joins", "jobs/class-model.json", "--worked")).isZero();
    assertThat(out.toString())
        .contains("5 pieces: 5 joints, 10 edges to prepare")
        .contains("closes the ring")
        .contains("worked:");
  }

  @Test
  void aPlantedWrongSeamIsNamedWithTheOneToUndo() {
    assertThat(run("joins", "jobs/seed-loft.json", "--log", "jobs/logs/seed-loft-joins.json"))
        .isEqualTo(1);
    assertThat(out.toString())
        .contains("Entry 4, wrong edge: 1R was joined to 3L")
        .containsOnlyOnce("Undo entry")
        .contains("4 joints stand, 8 are open")
        .contains("Join in this order:");
  }

  @Test
  void aLogThatCannotBeReadIsBadInput() throws IOException {
    Path log = folder.resolve("log.json");
    Files.writeString(log, "{\"seamstead\": 1, \"log\": [{\"joint\": [\"1R\", \"2L\"]}]}");
    assertThat(run("joins", "jobs/class-model.json", "--log", log.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("did you mean \"join\"?");
  }
}
