package io.github.seamstead.examples.cli;

import io.github.seamstead.examples.reference.CheckedValue;
import io.github.seamstead.examples.reference.PublishedCalculations;
import io.github.seamstead.examples.reference.ReferenceFiles;
import io.github.seamstead.examples.reference.ReferencePage;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the reference page from what the tests of a build recorded. */
@Command(
    name = "references",
    mixinStandardHelpOptions = true,
    description = {
      "Writes what the tests compared with values from outside the project, as one page.",
      "The tests record it: run `mvn verify` first."
    })
final class ReferencesCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The HTML file to write; must not exist yet.")
  private Path out = Path.of("");

  @Option(
      names = "--project",
      paramLabel = "FOLDER",
      defaultValue = ".",
      description = "The project's top folder, where the tests ran (default: ${DEFAULT-VALUE}).")
  private Path project = Path.of(".");

  ReferencesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Outputs.fresh(out);
    List<String> missing = ReferenceFiles.missing(project);
    if (!missing.isEmpty()) {
      throw ArgumentFault.of(
          "--project",
          project.toString(),
          "must be a folder in which the tests of all modules ran",
          "",
          "nothing was recorded by "
              + String.join(", ", missing)
              + ". Run `mvn verify` there first");
    }
    String page = page();
    Outputs.written("the reference page", out, () -> Files.writeString(out, page));
    console.out().println("The reference page is in " + Escapes.terminal(out.toString()));
    return 0;
  }

  private String page() {
    try {
      List<CheckedValue> values = ReferenceFiles.read(project);
      return ReferencePage.html(
          values,
          PublishedCalculations.all(),
          (test, type) -> ReferenceFiles.uses(project, test, type));
    } catch (IOException e) {
      throw new UncheckedIOException(
          "what the tests recorded cannot be read: " + IoReason.of(e), e);
    }
  }
}
