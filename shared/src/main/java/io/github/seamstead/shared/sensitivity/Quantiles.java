package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;

/** Quantiles of a sample. */
public final class Quantiles {

  private Quantiles() {}

  /**
   * Gives a quantile: between the two values that its place {@code p (n - 1)} falls between, in
   * proportion.
   *
   * @param sorted the sample from the least to the greatest; one value or more
   * @param level the part p of the sample that lies below, 0 to 1
   * @return the quantile, in the unit of the values
   * @throws IllegalArgumentException if the sample is empty or the level is out of range
   */
  public static double of(double[] sorted, double level) {
    Args.require(sorted.length > 0, "sample", "no values", "must have 1 or more");
    Args.within("level of a quantile", level, 0, 1, "");
    double place = level * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
