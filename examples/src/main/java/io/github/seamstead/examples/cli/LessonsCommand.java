package io.github.seamstead.examples.cli;

import io.github.seamstead.examples.lessons.LessonPage;
import io.github.seamstead.examples.lessons.Lessons;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the lessons as one page. */
@Command(
    name = "lessons",
    mixinStandardHelpOptions = true,
    description = "Writes twelve lessons, from regular polygons to drying, as one page.")
final class LessonsCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The HTML file to write; must not exist yet.")
  private Path out = Path.of("");

  LessonsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (Files.exists(out)) {
      throw ArgumentFault.of(
          "--out: given " + out + ", which exists; name a new file or remove it first");
    }
    Path folder = out.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder) || !Files.isWritable(folder)) {
      throw ArgumentFault.of(
          "--out: given " + out + ", must lie in a folder that exists and can be written to");
    }
    try {
      Files.writeString(out, LessonPage.html(Lessons.all()), StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the lessons cannot be written to " + out + ": " + IoReason.of(e), e);
    }
    console.out().println("The lessons are in " + out);
    return 0;
  }
}
