package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads a job document and its diary, reports faults or assumptions, and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Reads a job document and reports its faults or what it leaves to be assumed.",
      "With a diary: also the diary's faults, and where it contradicts itself or the job."
    })
final class CheckCommand implements Callable<Integer> {

  private static final String JOB = "job document";
  private static final String DIARY = "diary";

  private final Console console;
  private int faults;

  @Parameters(
      index = "0",
      paramLabel = "JOB.json",
      description = "The job document; - for the standard input.")
  private Path file = Path.of("");

  @Option(names = "--diary", paramLabel = "DIARY.json", description = "What was done so far.")
  private Optional<Path> diary = Optional.empty();

  @Option(
      names = "--was",
      paramLabel = "JOB.json",
      description = "The job document by which pieces of the diary were cut, if it was changed.")
  private Optional<Path> was = Optional.empty();

  @Mixin private final SearchTerms terms = new SearchTerms();

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (was.isPresent() && diary.isEmpty()) {
      throw ArgumentFault.finding("--was: given without --diary", "must stand beside it");
    }
    Optional<Job> job = found(JOB, file, () -> JobInput.read(file));
    Optional<Job> cutBy =
        was.flatMap(f -> found("job document before", f, () -> JobReader.read(f)));
    Optional<Diary> done = diary.flatMap(f -> found(DIARY, f, () -> DiaryReader.read(f)));
    boolean allRead = done.isPresent() == diary.isPresent() && cutBy.isPresent() == was.isPresent();
    Optional<JobPlan> plan = job.flatMap(j -> found(JOB, file, () -> alone(j)));
    if (plan.isPresent() && done.isPresent() && allRead) {
      plan = found(DIARY, diary.orElseThrow(), () -> planOn(cutBy, job.orElseThrow(), done.get()));
    } else if (diary.isPresent() && faults > 0) {
      console
          .err()
          .println("The diary is held against the job once all of them can be read and planned.");
    }
    return faults > 0 ? Failures.BAD_INPUT : told(job.orElseThrow(), plan.orElseThrow());
  }

  /** What a document gives; its faults are printed under its name. */
  private <T> Optional<T> found(String what, Path document, Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (JobFaultsException e) {
      List<JobFault> all = e.faults();
      faults += all.size();
      console
          .err()
          .println(
              Escapes.terminal(
                  all.size()
                      + (all.size() == 1 ? " fault" : " faults")
                      + " of the "
                      + what
                      + " "
                      + document
                      + "; nothing was written"
                      + ":"));
      all.forEach(fault -> console.err().println("  " + fault.text()));
      return Optional.empty();
    }
  }

  private JobPlan alone(Job job) {
    // What else could be done is told by a plan; here it is asked for nothing but what is unmet.
    return JobPlanner.plan(
        job, terms.options(), new Series(Recall.none(), Supposed.NOTHING, true, false));
  }

  private JobPlan planOn(Optional<Job> cutBy, Job job, Diary done) {
    PlanOptions options = terms.options();
    Function<Job, JobPlan> changed = before -> JobPlanner.plan(before, job, done, options);
    return cutBy.map(changed).orElseGet(() -> JobPlanner.plan(job, done, options));
  }

  private int told(Job job, JobPlan plan) {
    var out = console.out();
    out.println(plan.unmet().isEmpty() ? "No faults." : "No faults, but not all of it can be met.");
    Failures.print(plan, console.err());
    job.assumptions()
        .forEach(
            a ->
                out.println(
                    Escapes.terminal(
                        "Assumed " + a.path() + " = " + a.value() + ": " + a.ground())));
    return plan.unmet().isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }
}
