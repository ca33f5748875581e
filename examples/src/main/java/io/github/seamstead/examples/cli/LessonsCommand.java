package io.github.seamstead.examples.cli;

import io.github.seamstead.examples.lessons.LessonFiles;
import io.github.seamstead.examples.lessons.LessonPage;
import io.github.seamstead.examples.lessons.Paper;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the lessons as one page, or as sheets for pupils with a teacher's book. */
@Command(
    name = "lessons",
    mixinStandardHelpOptions = true,
    description = "Writes the lessons as one page, or as pupils' sheets with a teacher's book.")
final class LessonsCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The HTML file to write, or the folder for --worksheets; must not exist yet.")
  private Path out = Path.of("");

  @Option(
      names = "--worksheets",
      description =
          "Writes a folder: sheets for each lesson without answers, and the teacher's book.")
  private boolean worksheets;

  @Option(
      names = "--pupils",
      paramLabel = "COUNT",
      defaultValue = "4",
      description = "Sheets for each lesson, 1 to 40 (default: ${DEFAULT-VALUE}).")
  private int pupils = 4;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "Draws the numbers, 0 to 1000000 (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      defaultValue = "A4",
      description = "A4 or letter (default: ${DEFAULT-VALUE}).")
  private String paper = "A4";

  LessonsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require("--pupils", pupils, 1, LessonFiles.MOST_PUPILS);
    require("--seed", seed, 0, LessonFiles.GREATEST_SEED);
    Paper.of(paper);
    Outputs.fresh(out);
    Path folder = out.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder) || !Files.isWritable(folder)) {
      throw ArgumentFault.of(
          "--out",
          out.toString(),
          "must lie in a folder that exists and can be written to",
          "",
          "");
    }
    Outputs.written("the lessons", out, this::write);
    console.out().println("The lessons are in " + Escapes.terminal(out.toString()));
    return 0;
  }

  private void write() throws IOException {
    if (!worksheets) {
      Files.writeString(out, LessonPage.html(seed, Paper.of(paper)));
      return;
    }
    Files.createDirectory(out);
    for (Map.Entry<String, String> file :
        LessonFiles.of(seed, pupils, Paper.of(paper)).entrySet()) {
      Files.writeString(out.resolve(file.getKey()), file.getValue());
    }
  }

  private static void require(String option, long given, long least, long greatest) {
    if (given < least || given > greatest) {
      throw ArgumentFault.of(
          option, String.valueOf(given), "must be from " + least + " to " + greatest, "", "");
    }
  }
}
