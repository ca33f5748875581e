package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
  void aJobComesThroughAPipe() throws IOException {
    InputStream before = System.in;
    try {
      for (List<String> options : List.of(List.<String>of(), List.of("--seed", "1"))) {
        System.setIn(Files.newInputStream(Path.of("jobs/class-model.json")));
        Path book = folder.resolve("book" + options.size());
        List<String> args = new ArrayList<>(List.of("plan", "-", "--out", book.toString()));
        args.addAll(options);
        assertThat(run(args.toArray(String[]::new))).as(err.toString()).isZero();
        assertThat(book.resolve("results.json")).exists();
      }
      System.setIn(Files.newInputStream(Path.of("jobs/class-model.json")));
      assertThat(run("check", "-")).isZero();
      System.setIn(InputStream.nullInputStream());
      assertThat(run("check", "-")).isEqualTo(2);
      assertThat(err.toString()).contains("an empty text");
    } finally {
      System.setIn(before);
    }
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
    // In feet and inches, as the job is and as its book tells it.
    assertThat(err.toString())
        .contains("reading 9 (B3-T3", "is wrong by about -3 ft 8 1/4 in", "measure it again")
        .doesNotContain(" mm");
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

  @Test
  void aJobInsideTheBooksFolderStaysAndStopsTheRun() throws IOException {
    Path book = folder.resolve("book");
    assertThat(run("plan", "jobs/class-model.json", "--out", book.toString())).isZero();
    Path job = Files.copy(Path.of("jobs/class-model.json"), book.resolve("my-job.json"));
    assertThat(run("plan", job.toString(), "--out", book.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("my-job.json lies");
    assertThat(job).exists();
  }

  @Test
  void noEmptyNameAndNotTheCurrentFolder() {
    for (String out : List.of("", ".")) {
      assertThat(run("plan", "jobs/class-model.json", "--out", out)).isEqualTo(2);
    }
    assertThat(err.toString()).contains("--out: given an empty name").contains("was started");
    assertThat(run("soil", "jobs/clay-bank.json", "--out", "")).isEqualTo(2);
  }

  @Test
  void aPathThatCannotBeIsToldInOneLine() {
    assertThat(run("plan", "jobs/class-model.json", "--out", "b\u0000x")).isEqualTo(2);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains("b\\u0000x").doesNotContain("Exception");
    assertThat(run("check", "b\u0000x")).isEqualTo(2);
  }

  @Test
  void aMissingJobIsToldWithItsPath() {
    assertThat(run("plan", folder + "/none.json", "--out", folder + "/book")).isEqualTo(2);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains("none.json cannot be read");
  }

  @Test
  void anOutputThatIsLostIsAnError() {
    StandardOutput full =
        new StandardOutput(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("No space left on device");
              }
            });
    PrintWriter print = new PrintWriter(full, true);
    int code = Main.run(new String[] {"schema"}, print, new PrintWriter(err));
    assertThat(full.outcome(code, new PrintWriter(err))).isEqualTo(2);
    assertThat(err.toString()).contains("no space left on device");
  }

  @Test
  void anOutputThatIsReadInPartIsNone() {
    StandardOutput closed =
        new StandardOutput(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("Broken pipe");
              }
            });
    PrintWriter print = new PrintWriter(closed, true);
    int code = Main.run(new String[] {"schema"}, print, new PrintWriter(err));
    assertThat(closed.outcome(code, new PrintWriter(err))).isZero();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aDefectIsNotBlamedOnTheInput() {
    int code = Failures.report(new IllegalArgumentException("x, must y"), new PrintWriter(err));
    assertThat(code).isEqualTo(1);
    assertThat(err.toString()).contains("defect of the program");
  }
}
