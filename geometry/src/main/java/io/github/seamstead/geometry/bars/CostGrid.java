package io.github.seamstead.geometry.bars;

import java.util.Arrays;

/** The total lengths that whole bars can add up to. */
final class CostGrid {

  private static final int MOST_CELLS = 1_000_000;

  private final long step;

  /** For each multiple of the step the least multiple from it on that whole bars add up to. */
  private final int[] next;

  /** Prepares totals up to a cost; O(c g / d) for c costs, the cost g and their divisor d. */
  CostGrid(long[] costs, long upTo) {
    long[] cost = Arrays.stream(costs).distinct().toArray();
    this.step = Arrays.stream(cost).reduce(0, CostGrid::gcd);
    long cells = (upTo + Arrays.stream(cost).max().orElse(0)) / step + 1;
    this.next = cost.length > 1 && cells <= MOST_CELLS ? table(cost, (int) cells) : new int[0];
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  private int[] table(long[] cost, int cells) {
    boolean[] reached = new boolean[cells];
    reached[0] = true;
    for (int t = 1; t < cells; t++) {
      for (long c : cost) {
        long back = t - c / step;
        reached[t] |= back >= 0 && reached[(int) back];
      }
    }
    int[] table = new int[cells];
    int least = cells;
    for (int t = cells - 1; t >= 0; t--) {
      least = reached[t] ? t : least;
      table[t] = least;
    }
    return table;
  }

  /** The least total of whole bars not below a bound, whose rounding is forgiven. */
  long roundUp(double bound) {
    long multiple = Math.max(0, (long) Math.ceil(bound * (1 - 1e-11) / step - 1e-7));
    return step * (multiple < next.length ? next[(int) multiple] : multiple);
  }
}
