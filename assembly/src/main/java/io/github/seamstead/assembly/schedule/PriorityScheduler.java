package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.work.Seeds;
import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * Good schedules quickly: tasks one after another by priority, each as early as it fits, then
 * pushed to the end and back to the start, which never makes a schedule longer. One schedule costs
 * O(n^2).
 */
final class PriorityScheduler {

  private final ResourceProblem problem;
  private final ResourceProblem backwards;

  PriorityScheduler(ResourceProblem problem) {
    this.problem = problem;
    this.backwards = problem.reversed();
  }

  /** Gives the best starts found with a number of random priorities beside the standing ones. */
  double[] best(int samples, long seed) {
    double[] best = improved(problem.tail);
    double bound = problem.lowerBound();
    for (int rule = 0; rule < 3 + samples && length(problem, best) > bound * (1 + 1e-12); rule++) {
      double[] starts = improved(priorities(rule, seed));
      if (length(problem, starts) < length(problem, best)) {
        best = starts;
      }
    }
    return best;
  }

  /** Greatest first: tail with duration, work behind it, fewest slack; then tails with noise. */
  private double[] priorities(int rule, long seed) {
    double[] priority = new double[problem.size];
    RandomGenerator random = Seeds.stream(seed, "schedule priorities", rule);
    double end = Math.max(1, length(problem, problem.head));
    for (int i = 0; i < problem.size; i++) {
      priority[i] =
          switch (rule) {
            case 0 -> problem.tail[i] + problem.duration[i];
            case 1 -> problem.tail[i] + problem.after[i].length * end;
            case 2 -> -problem.head[i];
            default ->
                problem.tail[i] + (random.nextDouble() - 0.5) * end * (0.1 + 0.1 * (rule % 7));
          };
    }
    return priority;
  }

  private double[] improved(double[] priority) {
    double[] starts = serial(problem, priority);
    for (int round = 0; round < 4; round++) {
      double before = length(problem, starts);
      double[] late = serial(backwards, finishes(problem, starts));
      starts = serial(problem, finishes(backwards, late));
      if (length(problem, starts) >= before) {
        break;
      }
    }
    return starts;
  }

  private static double[] finishes(ResourceProblem problem, double[] starts) {
    double[] finish = new double[problem.size];
    for (int i = 0; i < finish.length; i++) {
      finish[i] = starts[i] + problem.duration[i];
    }
    return finish;
  }

  static double length(ResourceProblem problem, double[] starts) {
    double end = 0;
    for (int i = 0; i < problem.size; i++) {
      end = Math.max(end, starts[i] + problem.duration[i]);
    }
    return end;
  }

  /** Takes the task of greatest priority whose tasks before are placed and places it. */
  static double[] serial(ResourceProblem problem, double[] priority) {
    int n = problem.size;
    int[] missing = new int[n];
    double[] ready = new double[n];
    double[] start = new double[n];
    UsageProfile profile = new UsageProfile(problem.capacity);
    PriorityQueue<Integer> open =
        new PriorityQueue<>(
            Math.max(1, n),
            Comparator.<Integer>comparingDouble(i -> -priority[i]).thenComparing(i -> i));
    IntStream.range(0, n)
        .forEach(i -> missing[i] = (int) Arrays.stream(problem.before[i]).distinct().count());
    for (int i = 0; i < n; i++) {
      if (missing[i] == 0) {
        open.add(i);
      }
    }
    while (!open.isEmpty()) {
      int task = open.remove();
      for (int j = 0; j < problem.before[task].length; j++) {
        int b = problem.before[task][j];
        ready[task] = Math.max(ready[task], start[b] + problem.duration[b] + problem.lag[task][j]);
      }
      start[task] =
          problem.duration[task] == 0
              ? ready[task]
              : profile.earliest(ready[task], problem.duration[task], problem.need[task]);
      profile.reserve(start[task], problem.duration[task], problem.need[task]);
      for (int next : problem.after[task]) {
        if (--missing[next] == 0) {
          open.add(next);
        }
      }
    }
    return start;
  }
}
