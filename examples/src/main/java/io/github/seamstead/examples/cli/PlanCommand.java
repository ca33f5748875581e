package io.github.seamstead.examples.cli;

import io.github.seamstead.api.book.BookFolder;
import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.plan.PlanOptions;
import io.github.seamstead.api.plan.Unmet;
import io.github.seamstead.shared.work.Cancellation;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a whole job and writes its book. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a whole job and writes its book into a folder.")
final class PlanCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for the book: new, empty, or made by an earlier run.")
  private Path out = Path.of("");

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "How hard the layout search tries, 1 to 9; each step doubles its work."
              + " Default: ${DEFAULT-VALUE}.")
  private int effort;

  @Option(
      names = "--seed",
      paramLabel = "K",
      defaultValue = "1",
      description = "Seed of searches and simulations. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @Option(names = "--worked", description = "Keep the worked steps of every calculation.")
  private boolean worked;

  PlanCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    PrintWriter print = console.out();
    BookFolder.refusal(out)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException("--out: " + why);
            });
    Job job = JobReader.read(file);
    JobPlan plan;
    try (TerminalProgress progress = TerminalProgress.open(console.err())) {
      plan =
          JobPlanner.plan(job, new PlanOptions(effort, seed, worked, progress, new Cancellation()));
      BookWriter.write(plan, out);
    }
    print.println("The book is in " + out);
    for (Unmet unmet : plan.unmet()) {
      console.err().println("Cannot be met: " + unmet.chapter().title() + ": " + unmet.what());
    }
    return plan.unmet().isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }
}
