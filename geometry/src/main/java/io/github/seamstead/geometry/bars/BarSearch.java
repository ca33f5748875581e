package io.github.seamstead.geometry.bars;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Depth first search over bars: each step cuts one bar that holds the longest piece left, filled so
 * that nothing more would fit. Branches that cannot beat the best plan by the linear bound, and
 * sets of remaining pieces seen before at no more cost, are cut off.
 */
final class BarSearch {

  private static final int MOST_SEEN = 200_000;

  private final BarProblem problem;
  private final BarBound bound;
  private final CostGrid grid;
  private final WorkMeter meter;
  private final Map<List<Integer>, Long> seen = new HashMap<>();
  private final List<BarPattern> current = new ArrayList<>();
  private List<BarPattern> best = List.of();
  private long bestCost;
  private long target;
  private long limit;
  private boolean exhaustive = true;

  BarSearch(BarProblem problem, BarBound bound, CostGrid grid, WorkMeter meter) {
    this.problem = problem;
    this.bound = bound;
    this.grid = grid;
    this.meter = meter;
  }

  /**
   * Looks for a plan of the remaining pieces that costs less than {@code below}, and stops at
   * {@code enough}.
   *
   * @return the plan, empty if there is none better or the work ran out
   */
  List<BarPattern> run(int[] remaining, int[] left, long below, long enough, long workUnits) {
    seen.clear();
    current.clear();
    best = List.of();
    bestCost = below;
    target = enough;
    limit = meter.used() + workUnits;
    exhaustive = true;
    descend(remaining.clone(), left.clone(), 0);
    return best;
  }

  /** Tells whether the last run saw all that could have been better. */
  boolean wasExhaustive() {
    return exhaustive;
  }

  private void descend(int[] remaining, int[] left, long spent) {
    int longest = first(remaining);
    if (longest < 0) {
      if (spent < bestCost) {
        bestCost = spent;
        best = List.copyOf(current);
      }
      return;
    }
    if (spent + grid.roundUp(bound.boundFor(remaining, left)) >= bestCost) {
      return;
    }
    if (meter.used() >= limit || !meter.tick()) {
      exhaustive = false;
      return;
    }
    if (!isNew(remaining, left, spent)) {
      return;
    }
    for (BarPattern pattern : fillings(remaining, left, longest)) {
      if (bestCost <= target || (!exhaustive && meter.used() >= limit)) {
        return;
      }
      pattern.take(remaining, 1);
      left[pattern.stock] -= problem.available[pattern.stock] == BarProblem.UNLIMITED ? 0 : 1;
      current.add(pattern);
      descend(remaining, left, spent + problem.cost[pattern.stock]);
      current.remove(current.size() - 1);
      left[pattern.stock] += problem.available[pattern.stock] == BarProblem.UNLIMITED ? 0 : 1;
      pattern.take(remaining, -1);
    }
  }

  private static int first(int[] remaining) {
    for (int i = 0; i < remaining.length; i++) {
      if (remaining[i] > 0) {
        return i;
      }
    }
    return -1;
  }

  private boolean isNew(int[] remaining, int[] left, long spent) {
    List<Integer> key = new ArrayList<>(remaining.length + left.length);
    for (int r : remaining) {
      key.add(r);
    }
    for (int l : left) {
      key.add(l);
    }
    Long before = seen.get(key);
    if (before != null && before <= spent) {
      return false;
    }
    if (before != null || seen.size() < MOST_SEEN) {
      seen.put(key, spent);
    }
    return true;
  }

  /** All full patterns with the longest piece left, the dearest per unit filled last. */
  private List<BarPattern> fillings(int[] remaining, int[] left, int longest) {
    List<BarPattern> found = new ArrayList<>();
    for (int s = 0; s < problem.stocks(); s++) {
      if (left[s] > 0 && problem.width[longest] <= problem.capacity[s]) {
        int[] counts = new int[remaining.length];
        fill(found, s, counts, longest, longest, problem.capacity[s], remaining);
      }
    }
    found.sort(
        Comparator.comparingDouble(
            p -> (double) problem.cost[p.stock] / Math.max(1, p.filled(problem))));
    return found;
  }

  private void fill(
      List<BarPattern> found,
      int stock,
      int[] counts,
      int type,
      int longest,
      long room,
      int[] remaining) {
    if (type == counts.length) {
      if (isFull(counts, room, remaining)) {
        found.add(new BarPattern(stock, counts));
      }
      return;
    }
    if (meter.used() >= limit || !meter.tick()) {
      exhaustive = false;
      return;
    }
    int most = (int) Math.min(remaining[type], room / problem.width[type]);
    int least = type == longest ? 1 : 0;
    for (int c = most; c >= least; c--) {
      counts[type] = c;
      fill(found, stock, counts, type + 1, longest, room - c * problem.width[type], remaining);
    }
    counts[type] = 0;
  }

  private boolean isFull(int[] counts, long room, int[] remaining) {
    for (int i = counts.length - 1; i >= 0; i--) {
      if (remaining[i] > counts[i]) {
        // The shortest type of which one is left; longer ones need more room still.
        return problem.width[i] > room;
      }
    }
    return true;
  }
}
