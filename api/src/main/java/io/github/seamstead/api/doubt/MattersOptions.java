package io.github.seamstead.api.doubt;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;

/**
 * The terms on which doubts are weighed.
 *
 * @param points how many points each of the two samples has, 16 to 100000; standard errors fall
 *     with its root
 * @param seed the seed of the points; equal seeds give equal results
 * @param progress who hears how far the work is
 * @param cancellation the switch that ends it
 */
public record MattersOptions(int points, long seed, Progress progress, Cancellation cancellation) {

  /** What is not run anew for each point, for people. */
  public static final String LEFT_OUT =
      "The layout on the stock is not searched for each point: that is dear. Panels are whole"
          + " there, without splices, and what rolls cost is not in the money. Drying is marched"
          + " roughly, its days within 3 % of the book's, and looked at 730 days ahead. Readings of"
          + " the tape are not searched for blunders anew.";

  /** Points that tell the first doubts from the rest within a minute or so. */
  public static final int USUAL_POINTS = 96;

  public MattersOptions {
    Args.within("points", points, 16, 100_000);
  }

  /**
   * Gives the usual points and seed 1, unheard.
   *
   * @return the options
   */
  public static MattersOptions defaults() {
    return new MattersOptions(USUAL_POINTS, 1, Progress.NONE, new Cancellation());
  }
}
