package io.github.seamstead.examples.cli;

import io.github.seamstead.api.compare.CompareJson;
import io.github.seamstead.api.doubt.MattersJson;
import io.github.seamstead.api.job.DiarySchema;
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
        "Prints the JSON Schema of the job, variants or diary document, for editors that check as"
            + " you type.")
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--of",
      paramLabel = "DOCUMENT",
      defaultValue = "job",
      description =
          "job, variants, diary; comparison, matters: what these commands write. Default:"
              + " ${DEFAULT-VALUE}.")
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
              case "diary" -> DiarySchema.text();
              case "variants" -> VariantsSchema.text();
              case "comparison" -> CompareJson.schemaText();
              case "matters" -> MattersJson.schemaText();
              default ->
                  throw ArgumentFault.of(
                      "--of", of, "must be job, variants, diary, comparison or matters", "", "");
            });
    return 0;
  }
}
