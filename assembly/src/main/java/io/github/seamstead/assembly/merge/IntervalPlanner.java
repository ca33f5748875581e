package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Exact dynamic programme over all spans and all cuts at once: the best tree of a span is the best
 * pair of trees of its parts. Costs O(k^3) time and O(k^2) memory for k groups.
 */
final class IntervalPlanner {

  /** How the values of two parts and of their merge make the value of the whole. */
  enum Rule {
    /** Sum of the mass in hand. */
    MASS,
    /** Sum of the times. */
    WORK,
    /** Time with a team for every merge. */
    PARALLEL,
    /** Heaviest carry. */
    CARRY
  }

  private static final double NONE = Double.POSITIVE_INFINITY;

  private final Groups groups;
  private final PlanOptions options;
  private final Rule rule;
  private final double carryBound;
  private final int k;
  private final double[][] value;
  private final double[][] tie;
  private final int[][] split;
  private final Load[][] load;

  private IntervalPlanner(Groups groups, PlanOptions options, Rule rule, double carryBound) {
    this.groups = groups;
    this.options = options;
    this.rule = rule;
    this.carryBound = carryBound;
    this.k = groups.size;
    this.value = new double[k][k + 1];
    this.tie = new double[k][k + 1];
    this.split = new int[k][k + 1];
    this.load = new Load[k][k + 1];
    fill();
  }

  /** A tree and its value by the rule, the closing joint included. */
  record Best(Tree tree, double value) {}

  /**
   * Finds the best permitted tree.
   *
   * @param carryBound the heaviest carry allowed on top of the limits, in kilograms
   * @return empty if no tree keeps the limits
   */
  static Optional<Best> best(Groups groups, PlanOptions options, Rule rule, double carryBound) {
    return new IntervalPlanner(groups, options, rule, carryBound).best();
  }

  private void fill() {
    boolean[][] allowed = FirstGroups.allowed(groups, options.firstGroups());
    for (int first = 0; first < k; first++) {
      load[first][1] = groups.load(first, 1);
    }
    for (int count = 2; count <= k; count++) {
      int starts = groups.closed ? k : k - count + 1;
      for (int first = 0; first < starts; first++) {
        load[first][count] = groups.load(first, count);
        value[first][count] = NONE;
        if (allowed[first][count]) {
          fill(first, count);
        }
      }
    }
  }

  private void fill(int first, int count) {
    double best = NONE;
    double bestTie = NONE;
    int bestSplit = 0;
    double mass = load[first][count].massKg();
    for (int part = 1; part < count; part++) {
      int second = first + part < k ? first + part : first + part - k;
      double a = value[first][part];
      double b = value[second][count - part];
      if (a == NONE || b == NONE || !permitted(load[first][part], load[second][count - part])) {
        continue;
      }
      double own = own(first, part, second, count - part, mass);
      double total = combine(a, b, own);
      double totalTie = tie[first][part] + tie[second][count - part] + mass;
      if (better(total, totalTie, best, bestTie)) {
        best = total;
        bestTie = totalTie;
        bestSplit = part;
      }
    }
    value[first][count] = best;
    tie[first][count] = bestTie;
    split[first][count] = bestSplit;
  }

  private static boolean better(double total, double totalTie, double best, double bestTie) {
    double slack = 1e-12 * Math.abs(total);
    return total < best - slack || (total <= best + slack && totalTie < bestTie * (1 - 1e-12));
  }

  private boolean permitted(Load left, Load right) {
    return options.limits().permitMerge(left, right)
        && options.limits().carried(left.massKg(), right.massKg()) <= carryBound;
  }

  private double own(int first, int part, int second, int rest, double mass) {
    return switch (rule) {
      case MASS -> mass;
      case WORK, PARALLEL ->
          options.times().seconds(groups.lengthAfter((first + part - 1) % k), mass);
      case CARRY ->
          options.limits().carried(load[first][part].massKg(), load[second][rest].massKg());
    };
  }

  private double combine(double a, double b, double own) {
    return switch (rule) {
      case MASS, WORK -> a + b + own;
      case PARALLEL -> Math.max(a, b) + own;
      case CARRY -> Math.max(Math.max(a, b), own);
    };
  }

  private Optional<Best> best() {
    double best = NONE;
    double bestTie = NONE;
    int bestCut = -1;
    for (int cut = 0; cut < groups.cuts(); cut++) {
      if (value[cut][k] == NONE || !closingAllowed(cut)) {
        continue;
      }
      double total = groups.closed ? combine(value[cut][k], 0, closing(cut)) : value[cut][k];
      if (bestCut < 0 || better(total, tie[cut][k], best, bestTie)) {
        best = total;
        bestTie = tie[cut][k];
        bestCut = cut;
      }
    }
    return bestCut < 0 ? Optional.empty() : Optional.of(new Best(tree(bestCut), best));
  }

  private boolean closingAllowed(int cut) {
    if (!groups.closed) {
      return true;
    }
    OptionalInt fixed = options.closingJoint();
    return (fixed.isEmpty() || groups.closingJoint(cut) == fixed.getAsInt())
        && options.limits().permitClosing(groups.load(0, k))
        && options.limits().carriedAtClosing(groups.mass(0, k)) <= carryBound;
  }

  private double closing(int cut) {
    double whole = groups.mass(0, k);
    return switch (rule) {
      case MASS -> whole;
      case WORK, PARALLEL -> options.times().seconds(groups.closingLength(cut), whole);
      case CARRY -> options.limits().carriedAtClosing(whole);
    };
  }

  private Tree tree(int cut) {
    Tree tree = new Tree(cut, k);
    grow(tree, cut, 0, k);
    return tree;
  }

  private int grow(Tree tree, int cut, int offset, int count) {
    if (count == 1) {
      return offset;
    }
    int part = split[(cut + offset) % k][count];
    int left = grow(tree, cut, offset, part);
    int right = grow(tree, cut, offset + part, count - part);
    return tree.merge(left, right);
  }
}
