package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.text.Escapes;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Reads a job document, reports its faults or its assumptions, and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads a job document and reports its faults or what it leaves to be assumed.")
final class CheckCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "JOB.json",
      description = "The job document; - for the standard input.")
  private Path file = Path.of("");

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Job job = JobInput.read(file);
    // What else could be done is told by a plan; here it is asked for nothing but what is unmet.
    Series brief = new Series(Recall.none(), Supposed.NOTHING, true);
    List<Unmet> unmet = JobPlanner.plan(job, PlanOptions.defaults(), brief).unmet();
    var out = console.out();
    out.println(unmet.isEmpty() ? "No faults." : "No faults, but not all of it can be met.");
    Failures.print(unmet, console.err());
    job.assumptions()
        .forEach(
            a ->
                out.println(
                    Escapes.terminal(
                        "Assumed " + a.path() + " = " + a.value() + ": " + a.ground())));
    return unmet.isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }
}
