package io.github.seamstead.assembly.schedule;

import java.util.Arrays;

/** What is in use over time: steps that hold from one time to the next. */
final class UsageProfile {

  private final int[] capacity;
  private double[] time;
  private int[][] used;
  private int steps;

  UsageProfile(int[] capacity) {
    this.capacity = capacity;
    this.time = new double[16];
    this.used = new int[16][];
    used[0] = new int[capacity.length];
    steps = 1;
  }

  /** Finds the earliest start from which a need fits for a duration. Costs O(steps). */
  double earliest(double ready, double duration, int[] need) {
    double start = ready;
    int at = stepAt(ready);
    for (int i = at; i < steps && (i == at || time[i] < start + duration); i++) {
      if (!fits(i, need)) {
        at = i + 1;
        start = time[at];
      }
    }
    return start;
  }

  private boolean fits(int step, int[] need) {
    for (int r = 0; r < need.length; r++) {
      if (used[step][r] + need[r] > capacity[r]) {
        return false;
      }
    }
    return true;
  }

  /** Takes a need from the start for a duration. */
  void reserve(double start, double duration, int[] need) {
    if (duration <= 0) {
      return;
    }
    int from = cutAt(start);
    int to = cutAt(start + duration);
    for (int i = from; i < to; i++) {
      for (int r = 0; r < need.length; r++) {
        used[i][r] += need[r];
      }
    }
  }

  private int stepAt(double when) {
    int at = Arrays.binarySearch(time, 0, steps, when);
    return at >= 0 ? at : -at - 2;
  }

  private int cutAt(double when) {
    int at = stepAt(when);
    if (time[at] == when) {
      return at;
    }
    if (steps == time.length) {
      time = Arrays.copyOf(time, 2 * steps);
      used = Arrays.copyOf(used, 2 * steps);
    }
    System.arraycopy(time, at + 1, time, at + 2, steps - at - 1);
    System.arraycopy(used, at + 1, used, at + 2, steps - at - 1);
    time[at + 1] = when;
    used[at + 1] = used[at].clone();
    steps++;
    return at + 1;
  }
}
