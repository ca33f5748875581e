package io.github.seamstead.examples.cli;

import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.examples.forms.FilledForms;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts filled field forms into a job document. */
@Command(
    name = "fill",
    mixinStandardHelpOptions = true,
    description = "Puts the values of filled field forms into a new job document.")
final class FillCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "DIR", description = "The folder of the filled forms.")
  private Path forms = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "NEW.json",
      description = "The new job document; must not exist yet.")
  private Path out = Path.of("");

  FillCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Outputs.fresh(out);
    if (!Files.isDirectory(forms)) {
      throw ArgumentFault.of(
          "DIR", forms.toString(), "must be the folder that `forms` wrote", "", "");
    }
    JobReader.read(file);
    try {
      String filled = FilledForms.into(Files.readString(file), forms);
      JobReader.parse(filled.getBytes(StandardCharsets.UTF_8));
      Files.writeString(out, filled, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the forms cannot be put into " + out + ": " + IoReason.of(e), e);
    }
    console.out().println("The job with the forms' values is " + Escapes.terminal(out.toString()));
    return 0;
  }
}
