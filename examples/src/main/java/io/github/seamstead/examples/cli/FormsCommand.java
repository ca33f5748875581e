package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.examples.forms.FieldForms;
import io.github.seamstead.shared.text.Escapes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the forms to take into the field. */
@Command(
    name = "forms",
    mixinStandardHelpOptions = true,
    description = {
      "Writes what to take into the field: a survey sheet in an order that needs the ladder least,",
      "a stock sheet and a peg test sheet, to print and as tables. `fill` puts them into the job."
    })
final class FormsCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description =
          "The folder for the forms; must not exist yet, filled forms are never replaced.")
  private Path out = Path.of("");

  FormsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Outputs.fresh(out);
    Job job = JobReader.read(file);
    JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults().only(Chapter.FRAME));
    Map<String, String> forms =
        FieldForms.of(
            plan,
            job.document().site().map(Site::name).orElse("Cover and floor"),
            job.document().units());
    Outputs.written(
        "the forms",
        out,
        () -> {
          Files.createDirectories(out);
          for (Map.Entry<String, String> form : forms.entrySet()) {
            Files.writeString(out.resolve(form.getKey()), form.getValue());
          }
        });
    console.out().println("The forms are in " + Escapes.terminal(out.toString()));
    return 0;
  }
}
