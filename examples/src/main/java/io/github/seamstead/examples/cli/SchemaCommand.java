package io.github.seamstead.examples.cli;

import io.github.seamstead.api.job.DiarySchema;
import io.github.seamstead.api.job.JobSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the JSON Schema of the job document. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema of the job document, for editors that check as you type.")
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  @Option(names = "--diary", description = "Print the schema of the diary instead.")
  private boolean diary;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.out().print(diary ? DiarySchema.text() : JobSchema.text());
    return 0;
  }
}
