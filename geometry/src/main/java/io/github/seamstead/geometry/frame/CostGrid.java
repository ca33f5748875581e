package io.github.seamstead.geometry.frame;

import java.util.Arrays;

/** The total lengths that whole bars can add up to. */
final class CostGrid {

  private static final int MOST_CELLS = 1_000_000;

  private final long[] cost;
  private final long step;

  CostGrid(long[] cost) {
    this.cost = Arrays.stream(cost).distinct().toArray();
    long divisor = 0;
    for (long c : cost) {
      divisor = gcd(c, divisor);
    }
    this.step = divisor;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** The next multiple of the common divisor, forgiving the rounding of a computed bound. */
  long multiple(double bound) {
    return (long) Math.ceil(bound * (1 - 1e-11) / step - 1e-7) * step;
  }

  /** The least total of whole bars that is not below the bound. */
  long roundUp(double bound) {
    long least = multiple(bound);
    long cells = (least + Arrays.stream(cost).max().orElse(0)) / step + 1;
    if (cost.length == 1 || cells > MOST_CELLS) {
      return least;
    }
    boolean[] reached = new boolean[(int) cells];
    reached[0] = true;
    for (int t = 1; t < reached.length; t++) {
      for (long c : cost) {
        int back = (int) (t - c / step);
        reached[t] |= back >= 0 && reached[back];
      }
    }
    for (int t = (int) (least / step); t < reached.length; t++) {
      if (reached[t]) {
        return t * step;
      }
    }
    return least;
  }
}
