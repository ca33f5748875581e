package io.github.seamstead.examples.cli;

import io.github.seamstead.api.job.JobSchema;
import io.github.seamstead.api.job.VariantsSchema;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the JSON Schema of the job document. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the JSON Schema of the job or variants document, for editors that check as you"
            + " type.")
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--of",
      paramLabel = "DOCUMENT",
      defaultValue = "job",
      description = "job or variants. Default: ${DEFAULT-VALUE}.")
  private String of = "job";

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console
        .out()
        .print(
            switch (of) {
              case "job" -> JobSchema.text();
              case "variants" -> VariantsSchema.text();
              default -> throw ArgumentFault.of("--of: given " + of + ", must be job or variants");
            });
    return 0;
  }
}
