package io.github.seamstead.geometry.bars;

import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Bound, rounding, completion and proof for one problem. */
final class BarSolver {

  private static final int ROUNDINGS = 60;

  /** The search goes one call deeper with every bar. */
  private static final int MOST_BARS_SEARCHED = 1000;

  private final BarProblem problem;
  private final WorkMeter meter;
  private final long seed;
  private final BarBound bound;
  private final CostGrid grid;
  private final BarSearch search;
  private List<BarPattern> best = List.of();
  private long bestCost = Long.MAX_VALUE;
  private long lowerBound;

  BarSolver(BarProblem problem, WorkMeter meter, long seed) {
    this.problem = problem;
    this.meter = meter;
    this.seed = seed;
    this.bound = new BarBound(problem, meter);
    keep(new BarGreedy(problem).plan());
    this.grid = new CostGrid(problem.cost, bestCost);
    this.search = new BarSearch(problem, bound, grid, meter);
  }

  List<BarPattern> solve() {
    meter.report(0.1, "first plan");
    bound.run();
    lowerBound = Math.min(bestCost, grid.roundUp(bound.bound()));
    meter.report(0.3, "bound found");
    round();
    if (!isProven() && !meter.isSpent() && best.size() <= MOST_BARS_SEARCHED) {
      meter.report(0.6, "searching for a better plan");
      List<BarPattern> better =
          search.run(problem.demand, problem.available, bestCost, lowerBound, Long.MAX_VALUE / 2);
      if (!better.isEmpty()) {
        keep(better);
      }
      if (search.wasExhaustive()) {
        lowerBound = bestCost;
      }
    }
    return best;
  }

  /** Takes whole bars as the linear programme does and searches for the rest. */
  private void round() {
    double[] amounts = bound.amounts();
    RandomGenerator random = Seeds.stream(seed, "bar rounding", 0);
    for (int t = 0; t < ROUNDINGS && amounts.length > 0 && !isProven() && !meter.isSpent(); t++) {
      int[] remaining = problem.demand.clone();
      int[] left = problem.available.clone();
      List<BarPattern> plan = new ArrayList<>();
      long spent = 0;
      for (int j = 0; j < amounts.length; j++) {
        int whole = (int) Math.floor(amounts[j] + 1e-6);
        // After the plain rounding, give back a bar of some patterns to leave the search more room.
        int times = t == 0 || whole == 0 ? whole : whole - random.nextInt(2);
        spent += take(bound.patterns().get(j), times, remaining, left, plan);
      }
      List<BarPattern> rest =
          search.run(remaining, left, bestCost - spent, lowerBound - spent, 2000L * (1 + t / 8));
      if (!rest.isEmpty()) {
        plan.addAll(rest);
        keep(plan);
      }
    }
  }

  private long take(
      BarPattern pattern, int times, int[] remaining, int[] left, List<BarPattern> plan) {
    long spent = 0;
    for (int k = 0; k < times && left[pattern.stock] > 0; k++) {
      BarPattern wanted = pattern.within(remaining);
      if (wanted.isEmpty()) {
        return spent;
      }
      wanted.take(remaining, 1);
      left[pattern.stock] -= problem.available[pattern.stock] == BarProblem.UNLIMITED ? 0 : 1;
      plan.add(wanted);
      spent += problem.cost[pattern.stock];
    }
    return spent;
  }

  private void keep(List<BarPattern> plan) {
    long cost = plan.stream().mapToLong(p -> problem.cost[p.stock]).sum();
    if (cost < bestCost) {
      bestCost = cost;
      best = List.copyOf(plan);
    }
  }

  long lowerBound() {
    return lowerBound;
  }

  boolean isProven() {
    return bestCost <= lowerBound;
  }
}
