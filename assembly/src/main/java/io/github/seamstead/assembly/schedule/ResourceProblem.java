package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A network with durations and capacities as arrays. Only resources with a capacity count. */
final class ResourceProblem {

  final int size;
  final double[] duration;
  final int[][] need;
  final int[] capacity;
  final int[][] before;
  final double[][] lag;
  final int[][] after;
  final int[] order;

  /** Longest way from a task's end to the end of the work, waits included. */
  final double[] tail;

  /** Longest way from the start of the work to a task's start. */
  final double[] head;

  private ResourceProblem(
      double[] duration,
      int[][] need,
      int[] capacity,
      int[][] before,
      double[][] lag,
      int[] order) {
    this.size = duration.length;
    this.duration = duration;
    this.need = need;
    this.capacity = capacity;
    this.before = before;
    this.lag = lag;
    this.order = order;
    this.after = turned(before);
    this.tail = new double[size];
    this.head = new double[size];
    for (int i = size - 1; i >= 0; i--) {
      int task = order[i];
      for (int j = 0; j < before[task].length; j++) {
        int b = before[task][j];
        tail[b] = Math.max(tail[b], lag[task][j] + duration[task] + tail[task]);
      }
    }
    for (int task : order) {
      for (int j = 0; j < before[task].length; j++) {
        int b = before[task][j];
        head[task] = Math.max(head[task], head[b] + duration[b] + lag[task][j]);
      }
    }
  }

  static ResourceProblem of(Network network, double[] duration, Map<String, Integer> capacities) {
    int n = network.size();
    List<String> names = new ArrayList<>(new java.util.TreeMap<>(capacities).keySet());
    int[] capacity = new int[names.size()];
    int[][] need = new int[n][names.size()];
    for (int r = 0; r < names.size(); r++) {
      String name = names.get(r);
      capacity[r] =
          Args.within(
              "capacity of " + name, capacities.getOrDefault(name, 0), 0, Integer.MAX_VALUE);
      for (int i = 0; i < n; i++) {
        Task task = network.tasks().get(i);
        need[i][r] = task.needs().getOrDefault(name, 0);
        Args.require(
            need[i][r] <= capacity[r],
            "task "
                + task.id()
                + ": given a need of "
                + need[i][r]
                + " "
                + name
                + ", there are only "
                + capacity[r]);
      }
    }
    int[][] before = new int[n][];
    double[][] lag = new double[n][];
    for (int i = 0; i < n; i++) {
      before[i] = network.before(i);
      lag[i] = network.lag(i);
    }
    return new ResourceProblem(duration, need, capacity, before, lag, network.order());
  }

  /** Gives the same work with other durations. */
  ResourceProblem lasting(double[] durations) {
    return new ResourceProblem(durations, need, capacity, before, lag, order);
  }

  /** Gives the same work run backwards. */
  ResourceProblem reversed() {
    double[][] lagAfter = new double[size][];
    for (int i = 0; i < size; i++) {
      lagAfter[i] = new double[after[i].length];
      for (int j = 0; j < after[i].length; j++) {
        lagAfter[i][j] = lagBetween(i, after[i][j]);
      }
    }
    int[] backwards = new int[size];
    for (int i = 0; i < size; i++) {
      backwards[i] = order[size - 1 - i];
    }
    return new ResourceProblem(duration, need, capacity, after, lagAfter, backwards);
  }

  private double lagBetween(int first, int second) {
    double longest = 0;
    for (int j = 0; j < before[second].length; j++) {
      if (before[second][j] == first) {
        longest = Math.max(longest, lag[second][j]);
      }
    }
    return longest;
  }

  /** Tells whether a task never competes: it needs nothing limited, or holds it for no time. */
  boolean needsNothing(int task) {
    if (duration[task] <= 0) {
      return true;
    }
    for (int r = 0; r < capacity.length; r++) {
      if (need[task][r] > 0) {
        return false;
      }
    }
    return true;
  }

  /** Tells whether all durations and waits are whole, so that every makespan is. */
  boolean isWhole() {
    boolean whole = Arrays.stream(duration).allMatch(d -> d == Math.rint(d));
    for (double[] row : lag) {
      whole &= Arrays.stream(row).allMatch(l -> l == Math.rint(l));
    }
    return whole;
  }

  /** Gives the longer of the critical path and the work of the busiest resource. */
  double lowerBound() {
    double bound = 0;
    for (int i = 0; i < size; i++) {
      bound = Math.max(bound, head[i] + duration[i] + tail[i]);
    }
    for (int r = 0; r < capacity.length; r++) {
      double work = 0;
      double headLeast = Double.POSITIVE_INFINITY;
      double tailLeast = Double.POSITIVE_INFINITY;
      for (int i = 0; i < size; i++) {
        if (need[i][r] > 0) {
          work += need[i][r] * duration[i];
          headLeast = Math.min(headLeast, head[i]);
          tailLeast = Math.min(tailLeast, tail[i]);
        }
      }
      if (work > 0) {
        bound = Math.max(bound, headLeast + work / capacity[r] + tailLeast);
      }
    }
    return isWhole() ? Math.ceil(bound - 1e-9) : bound;
  }

  private static int[][] turned(int[][] before) {
    List<List<Integer>> after = new ArrayList<>();
    for (int i = 0; i < before.length; i++) {
      after.add(new ArrayList<>());
    }
    for (int i = 0; i < before.length; i++) {
      for (int b : before[i]) {
        if (!after.get(b).contains(i)) {
          after.get(b).add(i);
        }
      }
    }
    return after.stream()
        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }
}
