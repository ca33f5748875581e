package io.github.seamstead.api.chapter;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;

/**
 * The terms on which a job is planned.
 *
 * <pre>{@code
 * PlanOptions options =
 *     PlanOptions.defaults().withTimeLimit(Duration.ofSeconds(5)).only(Chapter.FRAME);
 * JobPlan plan = JobPlanner.plan(JobReader.read(Path.of("jobs/class-model.json")), options);
 * plan.cover().isPresent(); // false
 * }</pre>
 *
 * @param effort how hard the layout search tries, 1 (least) to 9; each step up doubles its work
 * @param seed the seed of all searches and simulations; equal seeds and efforts give equal plans
 * @param worked whether the worked steps of each calculation are kept
 * @param chapters the chapters asked for; those that they build on are planned with them; at least
 *     one
 * @param timeLimit how long each search may take at most, if there is a limit; a search that it
 *     ends gives its best so far, which then depends on the speed of the machine; positive
 * @param progress who hears how far the run is
 * @param cancellation the switch that makes searches stop with their best so far and leaves out the
 *     chapters that were not done; the copies that the {@code with} methods make share it
 * @param executor where the parallel parts run beside the caller's own thread; empty for threads of
 *     their own. The plan is the same with any
 */
public record PlanOptions(
    int effort,
    long seed,
    boolean worked,
    Set<Chapter> chapters,
    Optional<Duration> timeLimit,
    Progress progress,
    Cancellation cancellation,
    Optional<Executor> executor) {

  /** The effort used when none is stated: the layout then takes about a second at most. */
  public static final int DEFAULT_EFFORT = 1;

  public PlanOptions {
    Args.within("effort", effort, 1, 9);
    Args.require(!chapters.isEmpty(), "chapters", "none", "must be at least one");
    Args.require(
        timeLimit.isEmpty() || (!timeLimit.get().isNegative() && !timeLimit.get().isZero()),
        "timeLimit",
        "no time",
        "must be longer than zero");
    chapters = Set.copyOf(chapters);
  }

  /**
   * Terms whose parallel parts run on threads of their own.
   *
   * @param effort how hard the layout search tries, 1 (least) to 9
   * @param seed the seed of all searches and simulations
   * @param worked whether the worked steps of each calculation are kept
   * @param chapters the chapters asked for, at least one
   * @param timeLimit how long each search may take at most, if there is a limit
   * @param progress who hears how far the run is
   * @param cancellation the switch that makes searches stop
   * @throws IllegalArgumentException if a value is out of range
   */
  public PlanOptions(
      int effort,
      long seed,
      boolean worked,
      Set<Chapter> chapters,
      Optional<Duration> timeLimit,
      Progress progress,
      Cancellation cancellation) {
    this(effort, seed, worked, chapters, timeLimit, progress, cancellation, Optional.empty());
  }

  /**
   * Gives the least effort, seed 1, all chapters, no worked steps and no time limit, unheard, with
   * a switch of its own.
   *
   * @return the options
   */
  public static PlanOptions defaults() {
    return new PlanOptions(
        DEFAULT_EFFORT,
        1,
        false,
        EnumSet.allOf(Chapter.class),
        Optional.empty(),
        Progress.NONE,
        new Cancellation());
  }

  /**
   * Tells whether a chapter is asked for.
   *
   * @param chapter the chapter
   * @return whether it is
   */
  public boolean asksFor(Chapter chapter) {
    return chapters.contains(chapter);
  }

  /**
   * The same options with the worked steps kept.
   *
   * @return the new options
   */
  public PlanOptions withWorkedSteps() {
    return new PlanOptions(
        effort, seed, true, chapters, timeLimit, progress, cancellation, executor);
  }

  /**
   * The same options with another effort.
   *
   * @param other 1 to 9
   * @return the new options
   * @throws IllegalArgumentException if the effort is out of range
   */
  public PlanOptions withEffort(int other) {
    return new PlanOptions(
        other, seed, worked, chapters, timeLimit, progress, cancellation, executor);
  }

  /**
   * The same options with another seed.
   *
   * @param other any number
   * @return the new options
   */
  public PlanOptions withSeed(long other) {
    return new PlanOptions(
        effort, other, worked, chapters, timeLimit, progress, cancellation, executor);
  }

  /**
   * The same options for some chapters alone, and those that they build on.
   *
   * @param first a chapter
   * @param more further chapters
   * @return the new options
   */
  public PlanOptions only(Chapter first, Chapter... more) {
    return new PlanOptions(
        effort, seed, worked, EnumSet.of(first, more), timeLimit, progress, cancellation, executor);
  }

  /**
   * The same options with a limit on the time of each search.
   *
   * @param limit longer than zero
   * @return the new options
   * @throws IllegalArgumentException if the limit is not longer than zero
   */
  public PlanOptions withTimeLimit(Duration limit) {
    return new PlanOptions(
        effort, seed, worked, chapters, Optional.of(limit), progress, cancellation, executor);
  }

  /**
   * The same options with somebody who hears the progress.
   *
   * @param listener who hears how far the run is
   * @return the new options
   */
  public PlanOptions heardBy(Progress listener) {
    return new PlanOptions(
        effort, seed, worked, chapters, timeLimit, listener, cancellation, executor);
  }

  /**
   * The same options with another switch.
   *
   * @param other the switch that makes searches stop
   * @return the new options
   */
  public PlanOptions stoppedBy(Cancellation other) {
    return new PlanOptions(effort, seed, worked, chapters, timeLimit, progress, other, executor);
  }

  /**
   * The same options with the caller's own threads for the parallel parts.
   *
   * @param threads where to run them; {@code Runnable::run} for no thread but the caller's
   * @return the new options
   */
  public PlanOptions on(Executor threads) {
    return new PlanOptions(
        effort, seed, worked, chapters, timeLimit, progress, cancellation, Optional.of(threads));
  }
}
