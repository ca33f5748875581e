package io.github.seamstead.assembly.schedule;

/** Which tasks of a schedule hold up its end, through precedence or through a shared resource. */
final class CriticalSequence {

  private CriticalSequence() {}

  /** Adds one for each task on a chain that touches end to end up to the end of the schedule. */
  static void count(ResourceProblem problem, double[] start, int[] counts) {
    boolean[] critical = of(problem, start);
    for (int i = 0; i < critical.length; i++) {
      counts[i] += critical[i] ? 1 : 0;
    }
  }

  static boolean[] of(ResourceProblem problem, double[] start) {
    int n = problem.size;
    double end = PriorityScheduler.length(problem, start);
    double tolerance = 1e-9 * Math.max(1, end);
    boolean[] critical = new boolean[n];
    int[] stack = new int[n];
    int top = 0;
    for (int i = 0; i < n; i++) {
      if (Math.abs(start[i] + problem.duration[i] - end) <= tolerance) {
        critical[i] = true;
        stack[top++] = i;
      }
    }
    while (top > 0) {
      int task = stack[--top];
      for (int j = 0; j < problem.before[task].length; j++) {
        int b = problem.before[task][j];
        double free = start[b] + problem.duration[b] + problem.lag[task][j];
        if (!critical[b] && Math.abs(free - start[task]) <= tolerance) {
          critical[b] = true;
          stack[top++] = b;
        }
      }
      for (int b = 0; b < n; b++) {
        if (!critical[b]
            && problem.duration[b] > 0
            && Math.abs(start[b] + problem.duration[b] - start[task]) <= tolerance
            && share(problem, task, b)) {
          critical[b] = true;
          stack[top++] = b;
        }
      }
    }
    return critical;
  }

  private static boolean share(ResourceProblem problem, int a, int b) {
    for (int r = 0; r < problem.capacity.length; r++) {
      if (problem.need[a][r] > 0 && problem.need[b][r] > 0) {
        return true;
      }
    }
    return false;
  }
}
