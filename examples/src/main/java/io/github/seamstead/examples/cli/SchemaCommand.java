package io.github.seamstead.examples.cli;

import io.github.seamstead.api.job.JobSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints the JSON Schema of the job document. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema of the job document, for editors that check as you type.")
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.out().print(JobSchema.text());
    return 0;
  }
}
