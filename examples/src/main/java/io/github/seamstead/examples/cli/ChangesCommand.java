package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.text.Escapes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what differs between the plans of two job documents, and why. */
@Command(
    name = "changes",
    mixinStandardHelpOptions = true,
    description = {
      "Says what differs between the plans of two job documents, and which values it follows from.",
      "With a diary: what changes for pieces that were cut by the first document."
    })
final class ChangesCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB1.json", description = "The earlier job document.")
  private Path before = Path.of("");

  @Parameters(index = "1", paramLabel = "JOB2.json", description = "The later job document.")
  private Path after = Path.of("");

  @Option(
      names = "--diary",
      paramLabel = "DIARY.json",
      description = "What was done so far by the earlier document.")
  private Optional<Path> diary = Optional.empty();

  ChangesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Job was = JobReader.read(before);
    Job is = JobReader.read(after);
    PlanOptions options = PlanOptions.defaults();
    PlanChanges changes =
        diary
            .map(DiaryReader::read)
            .map(d -> JobPlanner.plan(was, is, d, options).changes().orElseThrow())
            .orElseGet(
                () ->
                    JobPlanner.changes(
                        JobPlanner.plan(was, options), JobPlanner.plan(is, options)));
    print(changes, console.out());
    return 0;
  }

  private static void print(PlanChanges changes, PrintWriter out) {
    if (changes.changes().isEmpty()) {
      out.println("Nothing changes by more than its tolerance.");
    }
    changes
        .changes()
        .forEach(
            c -> out.println(Escapes.terminal(c.text() + (c.done() ? " (done already)" : ""))));
    if (!changes.reasons().isEmpty()) {
      out.println("Because of:");
      changes.reasons().forEach(r -> out.println("  " + Escapes.terminal(r.text())));
    }
  }
}
