package io.github.seamstead.geometry.bars;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The most valuable pattern for one bar: a bounded knapsack by depth first search in falling order
 * of value for width, cut where the fractional filling cannot beat the best.
 */
final class Knapsack {

  private static final int MOST_NODES = 200_000;

  private final BarProblem problem;
  private final double[] value;
  private final int[] order;
  private final WorkMeter meter;
  private int[] best = new int[0];
  private int[] counts = new int[0];
  private double bestValue;
  private boolean exhausted;
  private int nodes;

  Knapsack(BarProblem problem, double[] value, WorkMeter meter) {
    this.problem = problem;
    this.value = value;
    this.meter = meter;
    this.order =
        IntStream.range(0, problem.types())
            .filter(i -> value[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -value[i] / problem.width[i]))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /**
   * The best pattern found.
   *
   * @param pattern the pattern
   * @param value its value
   * @param most no pattern has a greater value; equal to {@code value} if the search ended
   */
  record Best(BarPattern pattern, double value, double most) {}

  Best solve(int stock) {
    best = new int[problem.types()];
    counts = new int[problem.types()];
    bestValue = 0;
    exhausted = true;
    nodes = 0;
    search(0, problem.capacity[stock], 0);
    double most = exhausted ? bestValue : fraction(0, problem.capacity[stock]);
    return new Best(new BarPattern(stock, best), bestValue, most);
  }

  private void search(int place, long room, double sum) {
    if (sum > bestValue) {
      bestValue = sum;
      best = counts.clone();
    }
    if (place == order.length) {
      return;
    }
    if (sum + fraction(place, room) <= bestValue * (1 + 1e-12)) {
      return;
    }
    nodes++;
    if (nodes > MOST_NODES || !meter.tick()) {
      exhausted = false;
      return;
    }
    int type = order[place];
    int most = (int) Math.min(problem.demand[type], room / problem.width[type]);
    for (int c = most; c >= 0; c--) {
      counts[type] = c;
      search(place + 1, room - c * problem.width[type], sum + c * value[type]);
    }
    counts[type] = 0;
  }

  private double fraction(int place, long room) {
    double sum = 0;
    long left = room;
    for (int p = place; p < order.length && left > 0; p++) {
      int type = order[p];
      double take = Math.min(problem.demand[type], (double) left / problem.width[type]);
      sum += take * value[type];
      left -= (long) Math.ceil(take * problem.width[type]);
    }
    return sum;
  }
}
