package io.github.seamstead.assembly.merge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Proves the shortest elapsed time for few groups: goes through the times at which a merge ends,
 * and at each through every set of pairs that could start there. A branch is cut by {@link
 * ElapsedBound}, and where the same joints were started before with every group free at least as
 * early.
 */
final class ElapsedSearch {

  static final int MOST_GROUPS = 16;
  private static final double EPS = 1e-9;
  private static final int MOST_KEPT = 200_000;
  private static final double EXPLORED = 1;

  private final Groups groups;
  private final PlanOptions options;
  private final int k;
  private final int joints;
  private final boolean[][] allowed;
  private final ElapsedBound lower;
  private final Map<Integer, List<double[]>> seen = new HashMap<>();
  private final double[] start;
  private final double[] finish;
  private int started;
  private int kept;
  private double bestTime;
  private double[] bestStart = new double[0];
  private int bestJoints;
  private final long deadline;
  private long nodes;
  private boolean stopped;

  ElapsedSearch(Groups groups, PlanOptions options, double incumbent) {
    this.groups = groups;
    this.options = options;
    this.k = groups.size;
    this.joints = groups.closed ? k : k - 1;
    this.allowed = FirstGroups.allowed(groups, options.firstGroups());
    this.lower = new ElapsedBound(groups, options);
    this.start = new double[k];
    this.finish = new double[k];
    this.bestTime = incumbent;
    this.deadline =
        options
            .work()
            .budget()
            .time()
            .map(time -> System.nanoTime() + time.toNanos())
            .orElse(Long.MAX_VALUE);
  }

  /** Runs the search; gives false if it was stopped before the end. */
  boolean run() {
    at(0);
    return !stopped;
  }

  /** Gives the nodes visited. */
  long nodes() {
    return nodes;
  }

  /** Gives the better plan found, if there is one. */
  Optional<PlanBuilder> found() {
    if (bestStart.length == 0) {
      return Optional.empty();
    }
    int cut = 0;
    for (int i = 0; groups.closed && i < k; i++) {
      if ((bestJoints >> i & 1) == 0) {
        cut = (i + 1) % k;
      }
    }
    Tree tree = new Tree(cut, k);
    int[] byFirst = new int[k];
    int[] byLast = new int[k];
    Arrays.setAll(byFirst, i -> i);
    Arrays.setAll(byLast, i -> i);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < k; i++) {
      if ((bestJoints >> i & 1) != 0) {
        order.add(i);
      }
    }
    order.sort((a, b) -> Double.compare(bestStart[a], bestStart[b]));
    double[] starts = new double[tree.nodes()];
    for (int joint : order) {
      int offset = Math.floorMod(joint - cut, k);
      int node = tree.merge(byLast[offset], byFirst[offset + 1]);
      byFirst[tree.first[node]] = node;
      byLast[tree.first[node] + tree.count[node] - 1] = node;
      starts[node] = bestStart[joint];
    }
    return Optional.of(new PlanBuilder(groups, options, tree, starts));
  }

  /** The spans that hang together once all started merges are done, and when they are free. */
  private static final class State {
    final int[] first;
    final int[] count;
    final double[] release;

    State(int spans) {
      first = new int[spans];
      count = new int[spans];
      release = new double[spans];
    }
  }

  private State state() {
    int begin = 0;
    while (groups.closed && begin < k && (started >> Math.floorMod(begin - 1, k) & 1) != 0) {
      begin++;
    }
    int spans = k - Integer.bitCount(started);
    State state = new State(spans);
    int group = begin % k;
    for (int s = 0; s < spans; s++) {
      state.first[s] = group;
      state.count[s] = 1;
      while (state.count[s] < k && (started >> group & 1) != 0) {
        state.release[s] = Math.max(state.release[s], finish[group]);
        group = (group + 1) % k;
        state.count[s]++;
      }
      group = (group + 1) % k;
    }
    return state;
  }

  private void at(double now) {
    if (stopped
        || ++nodes > options.work().budget().workUnits()
        || options.work().cancellation().endsSearches()
        || ((nodes & 1023) == 0 && System.nanoTime() > deadline)) {
      stopped = true;
      return;
    }
    State state = state();
    if (state.first.length == 1) {
      complete(state);
      return;
    }
    if (lower.of(state.first, state.count, state.release, now) >= bestTime - EPS * bestTime
        || isDominated(state, now)) {
      return;
    }
    double[] record = opened(state, now);
    int busy = 0;
    for (double release : state.release) {
      busy += release > now + EPS ? 1 : 0;
    }
    choose(now, 0, options.teams() - busy);
    record[state.release.length + 1] = EXPLORED;
  }

  private void complete(State state) {
    double closing =
        groups.closed
            ? options.times().time(groups.closingLength(state.first[0]), groups.mass(0, k))
            : 0;
    boolean permitted = !groups.closed || options.limits().permitClosing(groups.load(0, k));
    double total = state.release[0] + closing;
    if (permitted && total < bestTime - EPS * bestTime) {
      bestTime = total;
      bestStart = start.clone();
      bestJoints = started;
    }
  }

  private void choose(double now, int joint, int free) {
    if (stopped) {
      return;
    }
    if (joint == joints || free == 0) {
      double next = Double.POSITIVE_INFINITY;
      for (double release : state().release) {
        if (release > now + EPS) {
          next = Math.min(next, release);
        }
      }
      if (next < Double.POSITIVE_INFINITY) {
        at(next);
      }
      return;
    }
    double seconds = mergeTime(joint, now);
    if (seconds < Double.POSITIVE_INFINITY) {
      started |= 1 << joint;
      start[joint] = now;
      finish[joint] = now + seconds;
      choose(now, joint + 1, free - 1);
      started &= ~(1 << joint);
      finish[joint] = 0;
    }
    choose(now, joint + 1, free);
  }

  /** Gives how long a merge takes, or infinity if it may not start now. */
  private double mergeTime(int joint, double now) {
    boolean taken =
        (started >> joint & 1) != 0
            || (options.closingJoint().isPresent()
                && options.closingJoint().get() == groups.jointAfter(joint));
    if (taken) {
      return Double.POSITIVE_INFINITY;
    }
    int left = 1;
    double release = 0;
    int at = Math.floorMod(joint - 1, k);
    while (left < k && hasJoint(at) && (started >> at & 1) != 0) {
      release = Math.max(release, finish[at]);
      at = Math.floorMod(at - 1, k);
      left++;
    }
    int right = 1;
    at = (joint + 1) % k;
    while (left + right <= k && hasJoint(at) && (started >> at & 1) != 0) {
      release = Math.max(release, finish[at]);
      at = (at + 1) % k;
      right++;
    }
    int first = Math.floorMod(joint - left + 1, k);
    boolean permitted =
        left + right <= k
            && release <= now + EPS
            && allowed[first][left + right]
            && options
                .limits()
                .permitMerge(groups.load(first, left), groups.load((joint + 1) % k, right));
    return permitted
        ? options.times().time(groups.lengthAfter(joint), groups.mass(first, left + right))
        : Double.POSITIVE_INFINITY;
  }

  private boolean hasJoint(int joint) {
    return joint < joints;
  }

  /** Compares with branches that are explored to the end: one that only waits is still open. */
  private boolean isDominated(State state, double now) {
    int spans = state.release.length;
    for (double[] other : seen.getOrDefault(started, List.of())) {
      boolean earlier = other[spans + 1] == EXPLORED && other[spans] <= now + EPS;
      for (int s = 0; earlier && s < spans; s++) {
        earlier = other[s] <= Math.max(state.release[s], now) + EPS;
      }
      if (earlier) {
        return true;
      }
    }
    return false;
  }

  private double[] opened(State state, double now) {
    int spans = state.release.length;
    double[] record = Arrays.copyOf(state.release, spans + 2);
    record[spans] = now;
    if (kept < MOST_KEPT) {
      seen.computeIfAbsent(started, key -> new ArrayList<>(2)).add(record);
      kept++;
    }
    return record;
  }
}
