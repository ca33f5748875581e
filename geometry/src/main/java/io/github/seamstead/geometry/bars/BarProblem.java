package io.github.seamstead.geometry.bars;

/**
 * Pieces and bars in whole hundredths of a millimetre, so that fitting is exact. A piece's width
 * has its saw cut added and so has a bar's capacity, because the last piece of a bar needs none.
 */
final class BarProblem {

  static final double UNIT = 1e-5;
  static final int UNLIMITED = Integer.MAX_VALUE;

  /** Widths of the piece types, falling. */
  final long[] width;

  final int[] demand;
  final long[] capacity;
  final long[] cost;
  final int[] available;

  BarProblem(long[] width, int[] demand, long[] capacity, long[] cost, int[] available) {
    this.width = width;
    this.demand = demand;
    this.capacity = capacity;
    this.cost = cost;
    this.available = available;
  }

  int types() {
    return width.length;
  }

  int stocks() {
    return capacity.length;
  }

  long filled(int[] counts) {
    long sum = 0;
    for (int i = 0; i < counts.length; i++) {
      sum += counts[i] * width[i];
    }
    return sum;
  }

  /** The least cost of a unit of width on any bar. */
  double cheapest() {
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < stocks(); s++) {
      least = Math.min(least, (double) cost[s] / capacity[s]);
    }
    return least;
  }
}
