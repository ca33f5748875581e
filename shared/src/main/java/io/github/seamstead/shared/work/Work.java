package io.github.seamstead.shared.work;

/**
 * The terms on which a long calculation runs.
 *
 * @param budget how much it may spend
 * @param seed the seed of all its randomness; equal seeds and work budgets give equal results
 * @param progress who hears how far it is
 * @param cancellation the switch that stops it early
 */
public record Work(Budget budget, long seed, Progress progress, Cancellation cancellation) {

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
    return new Work(budget, seed, listener, cancellation);
  }
}
