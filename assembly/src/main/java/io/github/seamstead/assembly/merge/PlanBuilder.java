package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/** Turns a tree into steps with masses, teams and times. */
final class PlanBuilder {

  private final Groups groups;
  private final PlanOptions options;
  private final Tree tree;
  private final int nodes;
  private final double[] seconds;
  private final double[] start;
  private final int[] team;
  private final int[] wave;
  private final double elapsedMerges;

  /** Gives each free team the ready merge with the longest way to the end. */
  PlanBuilder(Groups groups, PlanOptions options, Tree tree) {
    this(groups, options, tree, new double[0]);
  }

  /** Takes the starts as given, one for each node of the tree; none for a list schedule. */
  PlanBuilder(Groups groups, PlanOptions options, Tree tree, double[] starts) {
    this.groups = groups;
    this.options = options;
    this.tree = tree;
    this.nodes = tree.nodes();
    this.seconds = new double[nodes];
    this.start = new double[nodes];
    this.team = new int[nodes];
    this.wave = new int[nodes];
    for (int i = tree.size; i < nodes; i++) {
      wave[i] = 1 + Math.max(wave[tree.left[i]], wave[tree.right[i]]);
      seconds[i] = options.times().time(groups.lengthAfter(joinedAfter(i)), mass(i));
    }
    this.elapsedMerges = starts.length == 0 ? listSchedule() : taken(starts);
  }

  private double taken(double[] starts) {
    System.arraycopy(starts, 0, start, 0, nodes);
    double[] freeAt = new double[options.teams() + 1];
    double end = 0;
    for (int node : inOrderOfStart()) {
      int pick = 1;
      while (freeAt[pick] > start[node] + 1e-9 * (1 + start[node])) {
        pick++;
      }
      team[node] = pick;
      freeAt[pick] = start[node] + seconds[node];
      end = Math.max(end, freeAt[pick]);
    }
    return end;
  }

  private List<Integer> inOrderOfStart() {
    List<Integer> order = new ArrayList<>();
    for (int i = tree.size; i < nodes; i++) {
      order.add(i);
    }
    order.sort(
        Comparator.<Integer>comparingDouble(i -> start[i])
            .thenComparing(i -> team[i])
            .thenComparing(i -> i));
    return order;
  }

  /** Gives the group whose right joint a merge makes. */
  private int joinedAfter(int node) {
    int left = tree.left[node];
    return (tree.cut + tree.first[left] + tree.count[left] - 1) % groups.size;
  }

  private int begin(int node) {
    return (tree.cut + tree.first[node]) % groups.size;
  }

  private double mass(int node) {
    return groups.mass(begin(node), tree.count[node]);
  }

  /** Gives the time from the first merge to the end of the closing joint, in seconds. */
  double elapsed() {
    return elapsedMerges + closingTime();
  }

  private double closingTime() {
    return groups.closed
        ? options.times().time(groups.closingLength(tree.cut), groups.mass(0, groups.size))
        : 0;
  }

  /** Gives each free team the ready merge with the longest way to the end; gives the makespan. */
  private double listSchedule() {
    double[] tail = new double[nodes];
    int[] parent = new int[nodes];
    int[] missing = new int[nodes];
    for (int i = nodes - 1; i >= tree.size; i--) {
      tail[i] += seconds[i];
      for (int child : new int[] {tree.left[i], tree.right[i]}) {
        parent[child] = i;
        tail[child] = tail[i];
        missing[i] += child >= tree.size ? 1 : 0;
      }
    }
    PriorityQueue<Integer> ready =
        new PriorityQueue<>(
            Comparator.<Integer>comparingDouble(i -> -tail[i]).thenComparing(i -> i));
    for (int i = tree.size; i < nodes; i++) {
      if (missing[i] == 0) {
        ready.add(i);
      }
    }
    PriorityQueue<Integer> running =
        new PriorityQueue<>(
            Comparator.<Integer>comparingDouble(i -> start[i] + seconds[i]).thenComparing(i -> i));
    PriorityQueue<Integer> free = new PriorityQueue<>();
    for (int i = 1; i <= options.teams(); i++) {
      free.add(i);
    }
    double now = 0;
    while (!ready.isEmpty() || !running.isEmpty()) {
      while (!ready.isEmpty() && !free.isEmpty()) {
        int node = ready.remove();
        start[node] = now;
        team[node] = free.remove();
        running.add(node);
      }
      int done = running.remove();
      now = start[done] + seconds[done];
      free.add(team[done]);
      if (done != nodes - 1 && --missing[parent[done]] == 0) {
        ready.add(parent[done]);
      }
    }
    return now;
  }

  /** Builds the plan. */
  MergePlan build(String name, Optional<Optimality> optimality) {
    List<JoinStep> steps = new ArrayList<>();
    boolean within = true;
    for (int node : inOrderOfStart()) {
      Load left = load(tree.left[node]);
      Load right = load(tree.right[node]);
      within &= options.limits().permitMerge(left, right);
      steps.add(
          new JoinStep(
              steps.size() + 1,
              groups.ring.joint(groups.jointAfter(joinedAfter(node))),
              groups.arc(begin(tree.left[node]), tree.count[tree.left[node]]),
              groups.arc(begin(tree.right[node]), tree.count[tree.right[node]]),
              false,
              wave[node],
              mass(node),
              options.limits().carried(left.mass(), right.mass()),
              seconds[node],
              team[node],
              start[node]));
    }
    if (groups.closed) {
      within &= options.limits().permitClosing(groups.load(0, groups.size));
      steps.add(closing(steps.size() + 1));
    }
    return new MergePlan(name, groups.ring, steps, cost(steps, within), optimality);
  }

  private Load load(int node) {
    return groups.load(begin(node), tree.count[node]);
  }

  private JoinStep closing(int number) {
    double whole = groups.mass(0, groups.size);
    var all = groups.arc(tree.cut, groups.size);
    return new JoinStep(
        number,
        groups.ring.joint(groups.closingJoint(tree.cut)),
        all,
        all,
        true,
        wave[nodes - 1] + 1,
        whole,
        options.limits().carriedAtClosing(whole),
        closingTime(),
        1,
        elapsedMerges);
  }

  private PlanCost cost(List<JoinStep> steps, boolean within) {
    double merged = 0;
    double closing = 0;
    double work = 0;
    double inHand = 0;
    double carried = 0;
    for (JoinStep step : steps) {
      merged += step.closing() ? 0 : step.massInHand();
      closing += step.closing() ? step.massInHand() : 0;
      work += step.time();
      inHand = Math.max(inHand, step.massInHand());
      carried = Math.max(carried, step.carriedMass());
    }
    return new PlanCost(merged, closing, work, elapsed(), inHand, carried, within);
  }
}
