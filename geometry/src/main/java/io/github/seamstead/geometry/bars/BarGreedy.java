package io.github.seamstead.geometry.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A first plan: longest pieces first into the bar that they fill most cheaply. */
final class BarGreedy {

  private final BarProblem problem;

  BarGreedy(BarProblem problem) {
    this.problem = problem;
  }

  /** Cuts bars one after another, each as full as can be. */
  List<BarPattern> plan() {
    int[] remaining = problem.demand.clone();
    int[] left = problem.available.clone();
    List<BarPattern> plan = new ArrayList<>();
    while (Arrays.stream(remaining).anyMatch(r -> r > 0)) {
      BarPattern pick = fullest(remaining, left);
      while (left[pick.stock] > 0 && Arrays.equals(counts(pick), counts(pick.within(remaining)))) {
        plan.add(pick);
        pick.take(remaining, 1);
        left[pick.stock] -= problem.available[pick.stock] == BarProblem.UNLIMITED ? 0 : 1;
      }
    }
    return plan;
  }

  private int[] counts(BarPattern pattern) {
    int[] counts = new int[problem.types()];
    Arrays.setAll(counts, pattern::count);
    return counts;
  }

  /** The longest pieces first into each stock; of these the cheapest per unit filled. */
  private BarPattern fullest(int[] remaining, int[] left) {
    BarPattern best = new BarPattern(0, new int[problem.types()]);
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < problem.stocks(); s++) {
      if (left[s] == 0) {
        continue;
      }
      int[] counts = new int[problem.types()];
      long room = problem.capacity[s];
      for (int i = 0; i < counts.length; i++) {
        counts[i] = (int) Math.min(remaining[i], room / problem.width[i]);
        room -= counts[i] * problem.width[i];
      }
      double dear = (double) problem.cost[s] / (problem.capacity[s] - room);
      if (problem.capacity[s] > room && dear < least) {
        least = dear;
        best = new BarPattern(s, counts);
      }
    }
    return best;
  }
}
