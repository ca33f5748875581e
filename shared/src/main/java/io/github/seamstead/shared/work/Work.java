package io.github.seamstead.shared.work;

import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * The terms on which a long calculation runs.
 *
 * <pre>{@code
 * Work work = Work.of(Budget.ofWork(20_000), 1); // equal budget and seed, equal result
 * work.cancellation().cancel();
 * work.cancellation().isCancelled(); // true
 * }</pre>
 *
 * @param budget how much it may spend
 * @param seed the seed of all its randomness; equal seeds and work budgets give equal results
 * @param progress who hears how far it is
 * @param cancellation the switch that stops it early
 * @param executor where its parallel parts run beside the caller's own thread; empty for threads of
 *     its own. The result is the same with any, also with one that runs all on the caller's thread
 */
public record Work(
    Budget budget,
    long seed,
    Progress progress,
    Cancellation cancellation,
    Optional<Executor> executor) {

  /**
   * Terms whose parallel parts run on threads of their own.
   *
   * @param budget how much it may spend
   * @param seed the seed of all its randomness
   * @param progress who hears how far it is
   * @param cancellation the switch that stops it early
   */
  public Work(Budget budget, long seed, Progress progress, Cancellation cancellation) {
    this(budget, seed, progress, cancellation, Optional.empty());
  }

  /**
   * Runs to a budget with a seed, unheard and not cancellable.
   *
   * @param budget how much it may spend
   * @param seed the seed of all its randomness
   * @return the terms
   */
  public static Work of(Budget budget, long seed) {
    return new Work(budget, seed, Progress.NONE, new Cancellation());
  }

  /**
   * The same terms with somebody who hears the progress.
   *
   * @param listener who hears how far the work is
   * @return the new terms
   */
  public Work heardBy(Progress listener) {
    return new Work(budget, seed, listener, cancellation, executor);
  }

  /**
   * The same terms with another budget, as for a part of the work.
   *
   * @param limits how much it may spend
   * @return the new terms
   */
  public Work within(Budget limits) {
    return new Work(limits, seed, progress, cancellation, executor);
  }

  /**
   * The same terms with the caller's own threads for the parallel parts.
   *
   * @param threads where to run them; {@code Runnable::run} for no thread but the caller's
   * @return the new terms
   */
  public Work on(Executor threads) {
    return new Work(budget, seed, progress, cancellation, Optional.of(threads));
  }
}
