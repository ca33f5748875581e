package io.github.seamstead.examples.cli;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.layout.ShortCloth;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** What the main command is asked to do. */
record PlanRequest(
    Path file, Path out, PlanOptions options, Optional<Path> diary, Optional<Path> was) {

  /**
   * Reads the plain form {@code plan JOB.json --out DIR}. It is the main job, and the classes of
   * the option parser are the larger part of its start-up; every other form goes through the
   * parser.
   */
  static Optional<PlanRequest> ofPlainForm(String[] args) {
    if (args.length == 4
        && args[0].equals("plan")
        && args[2].equals("--out")
        && (args[1].equals("-") || !args[1].startsWith("-"))
        && !args[3].startsWith("-")) {
      return Optional.of(
          new PlanRequest(
              Path.of(args[1]),
              Path.of(args[3]),
              PlanOptions.defaults(),
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
        Stream.of(Optional.of(file).filter(f -> !JobInput.isStandardInput(f)), diary, was)
            .flatMap(Optional::stream)
            .toArray(Path[]::new);
    Outputs.folder(out, read);
    Job job = JobInput.read(file);
    JobPlan plan;
    try (TerminalProgress progress = TerminalProgress.open(console.err())) {
      plan = plan(job, options.heardBy(progress));
      BookWriter.write(plan, out);
    }
    console.out().println("The book is in " + Escapes.terminal(out.toString()));
    Failures.print(plan, console.err());
    plan.layout()
        .ifPresent(
            layout ->
                ShortCloth.advice(layout, job.document().units())
                    .forEach(line -> console.err().println(Escapes.terminal(line))));
    return plan.unmet().isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }

  private JobPlan plan(Job job, PlanOptions terms) {
    if (diary.isEmpty()) {
      return JobPlanner.plan(job, terms);
    }
    Diary done = DiaryReader.read(diary.get());
    return was.isPresent()
        ? JobPlanner.plan(JobReader.read(was.get()), job, done, terms)
        : JobPlanner.plan(job, done, terms);
  }
}
