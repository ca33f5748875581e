package io.github.seamstead.api.plan;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;

/**
 * The terms on which a job is planned.
 *
 * @param effort how hard the layout search tries, 1 (least) to 9; each step up doubles its work
 * @param seed the seed of all searches and simulations; equal seeds and efforts give equal plans
 * @param worked whether the worked steps of each calculation are kept
 * @param progress who hears how far the run is
 * @param cancellation the switch that makes searches stop with their best so far
 */
public record PlanOptions(
    int effort, long seed, boolean worked, Progress progress, Cancellation cancellation) {

  /** The effort used when none is stated: the layout then takes about a second at most. */
  public static final int DEFAULT_EFFORT = 1;

  /**
   * Checks the effort.
   *
   * @param effort 1 to 9
   * @param seed any number
   * @param worked whether worked steps are kept
   * @param progress who hears how far the run is
   * @param cancellation the switch that stops searches
   * @throws IllegalArgumentException if the effort is out of range
   */
  public PlanOptions {
    Args.within("effort", effort, 1, 9);
  }

  /**
   * Gives the least effort, seed 1 and no worked steps, unheard.
   *
   * @return the options
   */
  public static PlanOptions defaults() {
    return new PlanOptions(DEFAULT_EFFORT, 1, false, Progress.NONE, new Cancellation());
  }

  /**
   * The same options with the worked steps kept.
   *
   * @return the new options
   */
  public PlanOptions withWorkedSteps() {
    return new PlanOptions(effort, seed, true, progress, cancellation);
  }

  /**
   * The same options with another effort.
   *
   * @param other 1 to 9
   * @return the new options
   * @throws IllegalArgumentException if the effort is out of range
   */
  public PlanOptions withEffort(int other) {
    return new PlanOptions(other, seed, worked, progress, cancellation);
  }

  /**
   * The same options with somebody who hears the progress.
   *
   * @param listener who hears how far the run is
   * @return the new options
   */
  public PlanOptions heardBy(Progress listener) {
    return new PlanOptions(effort, seed, worked, listener, cancellation);
  }
}
