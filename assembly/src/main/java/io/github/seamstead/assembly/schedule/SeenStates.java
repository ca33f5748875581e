package io.github.seamstead.assembly.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * States that the search has explored, by the set of tasks started. A new state is not worth a
 * visit if an explored one with the same tasks came no later, freed everything at least as early
 * and has no greater sum of finishes.
 */
final class SeenStates {

  private static final double EPS = 1e-9;
  private static final int MOST_KEPT = 400_000;
  private static final double EXPLORED = 1;

  private final double[] lastLag;
  private final int n;
  private final Map<Long, List<double[]>> seen = new HashMap<>();
  private int kept;

  /**
   * Starts with none.
   *
   * @param lastLag the longest wait behind each task
   */
  SeenStates(double[] lastLag) {
    this.lastLag = lastLag;
    this.n = lastLag.length;
  }

  /** Compares with branches that are explored to the end: one that only waits is still open. */
  boolean dominate(long started, double[] finish, double now) {
    double sum = Arrays.stream(finish).sum();
    for (double[] other : seen.getOrDefault(started, List.of())) {
      if (other[n + 2] == EXPLORED
          && other[n] <= now + EPS
          && other[n + 1] <= sum + EPS
          && freesEarlier(other, started, finish, now)) {
        return true;
      }
    }
    return false;
  }

  private boolean freesEarlier(double[] other, long started, double[] finish, double now) {
    for (int i = 0; i < n; i++) {
      if ((started >> i & 1) != 0
          && other[i] > finish[i] + EPS
          && other[i] + lastLag[i] > now + EPS) {
        return false;
      }
    }
    return true;
  }

  /** Keeps a state that is being explored; a task not started has the finish 0. */
  double[] open(long started, double[] finish, double now) {
    double[] record = Arrays.copyOf(finish, n + 3);
    record[n] = now;
    record[n + 1] = Arrays.stream(finish).sum();
    if (kept < MOST_KEPT) {
      seen.computeIfAbsent(started, key -> new ArrayList<>(2)).add(record);
      kept++;
    }
    return record;
  }

  /** Marks a state as explored to the end. */
  void close(double[] record) {
    record[n + 2] = EXPLORED;
  }
}
