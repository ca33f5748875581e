package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.Arrays;

/**
 * Proves the shortest schedule by going through the times at which something ends, and at each
 * through every set of tasks that could start there.
 *
 * <p>A branch is cut where a bound reaches the best so far; where a task could have started earlier
 * beside what was placed (some other branch has it so); and where the same tasks were started
 * before in an earlier branch that freed everything at least as early and has no greater sum of
 * finishes. The last condition keeps the two rules from pointing at each other in a circle: a
 * schedule that is cut off is matched by one with no greater sum, found earlier in the search or
 * strictly smaller in sum.
 */
final class ScheduleSearch {

  static final int MOST_TASKS = 64;
  private static final double EPS = 1e-9;
  private static final double UNSET = -1;

  private final ResourceProblem problem;
  private final Work work;
  private final long limit;
  private final long deadline;
  private final double gain;
  private final int n;
  private final double[] start;
  private final double[] finish;
  private final Integer[] byTail;
  private final SeenStates seen;
  private long started;
  private double[] best;
  private double bestLength;
  private long nodes;
  private boolean stopped;

  ScheduleSearch(ResourceProblem problem, double[] incumbent, Work work, long spent) {
    this.problem = problem;
    this.work = work;
    this.n = problem.size;
    Budget budget = work.budget();
    this.limit = Math.max(0, budget.workUnits() - spent);
    this.deadline =
        budget.time().map(time -> System.nanoTime() + time.toNanos()).orElse(Long.MAX_VALUE);
    this.start = new double[n];
    this.finish = new double[n];
    Arrays.fill(start, UNSET);
    double[] lastLag = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < problem.before[i].length; j++) {
        int b = problem.before[i][j];
        lastLag[b] = Math.max(lastLag[b], problem.lag[i][j]);
      }
    }
    this.seen = new SeenStates(lastLag);
    this.byTail = new Integer[n];
    Arrays.setAll(byTail, i -> i);
    Arrays.sort(
        byTail,
        (a, b) ->
            Double.compare(
                problem.tail[b] + problem.duration[b], problem.tail[a] + problem.duration[a]));
    this.best = incumbent;
    this.bestLength = PriorityScheduler.length(problem, incumbent);
    // With whole durations a better schedule is better by one at least.
    this.gain = problem.isWhole() ? 1 - EPS : EPS * Math.max(1, bestLength);
  }

  /** Runs the search. */
  void run() {
    at(0);
  }

  double[] best() {
    return best;
  }

  boolean isProved() {
    return !stopped;
  }

  long nodes() {
    return nodes;
  }

  private boolean hopeless(double bound) {
    return bound > bestLength - gain;
  }

  private void at(double now) {
    if (stopped || ++nodes > limit || work.cancellation().endsSearches()) {
      stopped = true;
      return;
    }
    if ((nodes & 1023) == 0 && System.nanoTime() > deadline) {
      stopped = true;
      return;
    }
    long forced = startFree(now);
    if (started == (n == 64 ? -1L : (1L << n) - 1)) {
      double length = 0;
      for (double f : finish) {
        length = Math.max(length, f);
      }
      if (!hopeless(length)) {
        bestLength = length;
        best = start.clone();
      }
    } else if (!hopeless(bound(now)) && !seen.dominate(started, finish, now)) {
      double[] record = seen.open(started, finish, now);
      choose(now, eligible(now), 0, available(now));
      seen.close(record);
    }
    unstart(forced);
  }

  /** Starts what needs no limited resource as soon as it may: nothing is gained by waiting. */
  private long startFree(double now) {
    long forced = 0;
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < n; i++) {
        if (start[i] == UNSET && problem.needsNothing(i) && ready(i) <= now + EPS) {
          begin(i, now);
          forced |= 1L << i;
          again = true;
        }
      }
    }
    return forced;
  }

  private void begin(int task, double now) {
    start[task] = now;
    finish[task] = now + problem.duration[task];
    started |= 1L << task;
  }

  private void unstart(long tasks) {
    for (int i = 0; i < n; i++) {
      if ((tasks >> i & 1) != 0) {
        start[i] = UNSET;
        finish[i] = 0;
      }
    }
    started &= ~tasks;
  }

  /** Gives when a task may start, or infinity while a task before it has not started. */
  private double ready(int task) {
    double ready = 0;
    for (int j = 0; j < problem.before[task].length; j++) {
      int b = problem.before[task][j];
      if (start[b] == UNSET) {
        return Double.POSITIVE_INFINITY;
      }
      ready = Math.max(ready, finish[b] + problem.lag[task][j]);
    }
    return ready;
  }

  private int[] eligible(double now) {
    int[] open = new int[n];
    int count = 0;
    for (int i : byTail) {
      if (start[i] == UNSET && ready(i) <= now + EPS) {
        open[count++] = i;
      }
    }
    return Arrays.copyOf(open, count);
  }

  private int[] available(double now) {
    int[] available = problem.capacity.clone();
    for (int i = 0; i < n; i++) {
      if (start[i] != UNSET && finish[i] > now + EPS) {
        for (int r = 0; r < available.length; r++) {
          available[r] -= problem.need[i][r];
        }
      }
    }
    return available;
  }

  private void choose(double now, int[] open, int from, int[] available) {
    if (stopped) {
      return;
    }
    if (from == open.length) {
      double next = nextTime(now);
      if (next < Double.POSITIVE_INFINITY) {
        at(next);
      }
      return;
    }
    int task = open[from];
    if (fits(task, available) && !couldStartEarlier(task, now)) {
      begin(task, now);
      int[] rest = available.clone();
      for (int r = 0; r < rest.length; r++) {
        rest[r] -= problem.need[task][r];
      }
      choose(now, open, from + 1, rest);
      unstart(1L << task);
    }
    if (!hopeless(nextChance(now, open, from) + problem.duration[task] + problem.tail[task])) {
      choose(now, open, from + 1, available);
    }
  }

  /** Gives the earliest time at which a task left out now could start, whatever else starts now. */
  private double nextChance(double now, int[] open, int from) {
    double next = nextTime(now);
    for (int i = from + 1; i < open.length; i++) {
      next = Math.min(next, now + problem.duration[open[i]]);
    }
    return next;
  }

  private boolean fits(int task, int[] available) {
    for (int r = 0; r < available.length; r++) {
      if (problem.need[task][r] > available[r]) {
        return false;
      }
    }
    return true;
  }

  private double nextTime(double now) {
    double next = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      if (start[i] != UNSET) {
        if (finish[i] > now + EPS) {
          next = Math.min(next, finish[i]);
        }
      } else if (lagged(i)) {
        double ready = ready(i);
        if (ready > now + EPS) {
          next = Math.min(next, ready);
        }
      }
    }
    return next;
  }

  private boolean lagged(int task) {
    for (double wait : problem.lag[task]) {
      if (wait > 0) {
        return true;
      }
    }
    return false;
  }

  /** Tells whether a task fits at an earlier time beside all that is placed. */
  private boolean couldStartEarlier(int task, double now) {
    double ready = ready(task);
    if (ready > now - EPS) {
      return false;
    }
    if (fitsFrom(task, ready, now)) {
      return true;
    }
    for (int i = 0; i < n; i++) {
      if (start[i] != UNSET
          && finish[i] > ready
          && finish[i] < now - EPS
          && fitsFrom(task, finish[i], now)) {
        return true;
      }
    }
    return false;
  }

  /** Checks usage at the start and wherever another task starts during the run. */
  private boolean fitsFrom(int task, double when, double now) {
    double end = when + problem.duration[task];
    if (!fitsAt(task, when)) {
      return false;
    }
    for (int i = 0; i < n; i++) {
      if (start[i] != UNSET && start[i] > when && start[i] < end - EPS && !fitsAt(task, start[i])) {
        return false;
      }
    }
    return when < now - EPS;
  }

  private boolean fitsAt(int task, double when) {
    for (int r = 0; r < problem.capacity.length; r++) {
      int used = problem.need[task][r];
      if (used == 0) {
        continue;
      }
      for (int i = 0; i < n; i++) {
        if (start[i] != UNSET && start[i] <= when + EPS && finish[i] > when + EPS) {
          used += problem.need[i][r];
        }
      }
      if (used > problem.capacity[r]) {
        return false;
      }
    }
    return true;
  }

  /** Critical path from here on, and the work that each resource still has. */
  private double bound(double now) {
    double bound = 0;
    double[] early = new double[n];
    for (int task : problem.order) {
      if (start[task] != UNSET) {
        early[task] = start[task];
      } else {
        double from = now;
        for (int j = 0; j < problem.before[task].length; j++) {
          int b = problem.before[task][j];
          from = Math.max(from, early[b] + problem.duration[b] + problem.lag[task][j]);
        }
        early[task] = from;
      }
      bound = Math.max(bound, early[task] + problem.duration[task] + problem.tail[task]);
    }
    for (int r = 0; r < problem.capacity.length; r++) {
      double left = 0;
      double leastTail = Double.POSITIVE_INFINITY;
      for (int i = 0; i < n; i++) {
        if (problem.need[i][r] == 0) {
          continue;
        }
        double rest = start[i] == UNSET ? problem.duration[i] : finish[i] - now;
        if (rest > 0) {
          left += rest * problem.need[i][r];
          leastTail = Math.min(leastTail, problem.tail[i]);
        }
      }
      if (left > 0) {
        bound = Math.max(bound, now + left / problem.capacity[r] + leastTail);
      }
    }
    return bound;
  }
}
