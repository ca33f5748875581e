package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Which limits can be met, and the nearest that can. Clay comes first: the shrinkage limit gives
 * way to it.
 */
final class Reach {

  private static final double TOLERANCE = 1e-9;
  private static final double SOLVER_TOLERANCE = 1e-5;

  final double leastClay;
  final double greatestClay;
  final double greatestShrinkage;
  final List<String> unmet = new ArrayList<>();

  Reach(MixProblem problem, MixTarget target, List<MixComponent> components) {
    ClayBand band = target.band();
    int richest = extreme(problem.clay, 1);
    int leanest = extreme(problem.clay, -1);
    double most = problem.clay[richest];
    double least = problem.clay[leanest];
    String wanted = "clay of " + percent(band.least()) + " to " + percent(band.greatest());
    if (most < band.least()) {
      leastClay = most;
      greatestClay = most;
      unmet.add(
          wanted
              + " cannot be met: the richest component, "
              + components.get(richest).name()
              + ", has "
              + percent(most)
              + ", which is the nearest; add a richer clay soil");
    } else if (least > band.greatest()) {
      leastClay = least;
      greatestClay = least;
      unmet.add(
          wanted
              + " cannot be met: the leanest component, "
              + components.get(leanest).name()
              + ", has "
              + percent(least)
              + ", which is the nearest; add a clean sand");
    } else {
      leastClay = band.least();
      greatestClay = band.greatest();
    }
    greatestShrinkage = shrinkageLimit(problem, target);
  }

  private double shrinkageLimit(MixProblem problem, MixTarget target) {
    if (!problem.limitsShrinkage()) {
      return Double.POSITIVE_INFINITY;
    }
    double limit = target.greatestShrinkage().orElseThrow();
    double[] shares =
        LinearMix.least(
            problem.shrinkage, problem, leastClay, greatestClay, Double.POSITIVE_INFINITY);
    double lowest = MixProblem.dot(problem.shrinkage, shares);
    if (lowest <= limit + TOLERANCE) {
      return limit;
    }
    unmet.add(
        "linear shrinkage of at most "
            + percent(limit)
            + " cannot be met together with clay of "
            + percent(leastClay)
            + " to "
            + percent(greatestClay)
            + ": the least is "
            + percent(lowest)
            + "; add fibre, lower the clay, or take a less active soil");
    // The solvers keep a limit within their own tolerance only.
    return lowest + SOLVER_TOLERANCE;
  }

  private static int extreme(double[] values, int sign) {
    int best = 0;
    for (int i = 1; i < values.length; i++) {
      if (sign * values[i] > sign * values[best]) {
        best = i;
      }
    }
    return best;
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 3) + " %";
  }
}
