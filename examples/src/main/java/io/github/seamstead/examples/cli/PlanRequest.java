package io.github.seamstead.examples.cli;

import io.github.seamstead.api.book.BookFolder;
import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.work.Progress;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** What the main command is asked to do. */
record PlanRequest(
    Path file,
    Path out,
    int effort,
    long seed,
    boolean worked,
    Optional<Path> diary,
    Optional<Path> was) {

  /**
   * Reads the plain form {@code plan JOB.json --out DIR}. It is the main job, and the classes of
   * the option parser are the larger part of its start-up; every other form goes through the
   * parser.
   */
  static Optional<PlanRequest> ofPlainForm(String[] args) {
    if (args.length == 4
        && args[0].equals("plan")
        && args[2].equals("--out")
        && !args[1].startsWith("-")
        && !args[3].startsWith("-")) {
      return Optional.of(
          new PlanRequest(
              Path.of(args[1]),
              Path.of(args[3]),
              PlanOptions.DEFAULT_EFFORT,
              1,
              false,
              Optional.empty(),
              Optional.empty()));
    }
    return Optional.empty();
  }

  /** Plans the job and writes its book; gives the exit code. */
  int run(Console console) {
    if (was.isPresent() && diary.isEmpty()) {
      throw ArgumentFault.finding("--was: given without --diary", "must stand beside it");
    }
    Path[] read =
        Stream.of(Optional.of(file), diary, was).flatMap(Optional::stream).toArray(Path[]::new);
    BookFolder.refusal(out, read)
        .ifPresent(
            why -> {
              throw ArgumentFault.finding("--out: " + why);
            });
    Job job = JobReader.read(file);
    JobPlan plan;
    try (TerminalProgress progress = TerminalProgress.open(console.err())) {
      plan = plan(job, options(progress));
      BookWriter.write(plan, out);
    }
    console.out().println("The book is in " + Escapes.terminal(out.toString()));
    Failures.print(plan.unmet(), console.err());
    return plan.unmet().isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }

  private JobPlan plan(Job job, PlanOptions options) {
    if (diary.isEmpty()) {
      return JobPlanner.plan(job, options);
    }
    Diary done = DiaryReader.read(diary.get());
    return was.isPresent()
        ? JobPlanner.plan(JobReader.read(was.get()), job, done, options)
        : JobPlanner.plan(job, done, options);
  }

  private PlanOptions options(Progress progress) {
    PlanOptions options =
        PlanOptions.defaults().withEffort(effort).withSeed(seed).heardBy(progress);
    return worked ? options.withWorkedSteps() : options;
  }
}
