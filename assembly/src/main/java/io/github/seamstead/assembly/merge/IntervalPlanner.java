package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import java.util.Optional;

/**
 * The best permitted tree by one of the rules, first groups and closing joint included: a {@link
 * SpanProgramme} with the crew's costs.
 */
final class IntervalPlanner {

  /** What is kept small. */
  enum Rule {
    /** Sum of the mass in hand. */
    MASS(SpanProgramme.Combine.SUM),
    /** Sum of the times. */
    WORK(SpanProgramme.Combine.SUM),
    /** Time with a team for every merge. */
    PARALLEL(SpanProgramme.Combine.LATER_THEN_OWN),
    /** Heaviest carry. */
    CARRY(SpanProgramme.Combine.GREATEST);

    private final SpanProgramme.Combine combine;

    Rule(SpanProgramme.Combine combine) {
      this.combine = combine;
    }
  }

  /** A tree and its value by the rule, the closing joint included. */
  record Best(Tree tree, double value) {}

  private static final double NONE = Double.POSITIVE_INFINITY;

  private final Groups groups;
  private final PlanOptions options;
  private final Rule rule;
  private final double carryBound;
  private final int k;
  private final Load[][] load;
  private final boolean[][] allowed;

  private IntervalPlanner(Groups groups, PlanOptions options, Rule rule, double carryBound) {
    this.groups = groups;
    this.options = options;
    this.rule = rule;
    this.carryBound = carryBound;
    this.k = groups.size;
    this.allowed = FirstGroups.allowed(groups, options.firstGroups());
    this.load = new Load[k][k + 1];
    for (int first = 0; first < k; first++) {
      for (int count = 1; count <= k; count++) {
        load[first][count] = groups.load(first, count);
      }
    }
  }

  /**
   * Finds the best permitted tree.
   *
   * @param carryBound the heaviest carry allowed on top of the limits, in kilograms
   * @return empty if no tree keeps the limits
   */
  static Optional<Best> best(Groups groups, PlanOptions options, Rule rule, double carryBound) {
    return new IntervalPlanner(groups, options, rule, carryBound).best();
  }

  private double own(int first, int left, int right) {
    Load a = load[first][left];
    Load b = load[(first + left) % k][right];
    double carried = options.limits().carried(a.mass(), b.mass());
    if (!allowed[first][left + right]
        || carried > carryBound
        || !options.limits().permitMerge(a, b)) {
      return NONE;
    }
    double mass = load[first][left + right].mass();
    return switch (rule) {
      case MASS -> mass;
      case WORK, PARALLEL -> options.times().time(groups.lengthAfter((first + left - 1) % k), mass);
      case CARRY -> carried;
    };
  }

  private Optional<Best> best() {
    SpanProgramme programme =
        new SpanProgramme(
            k,
            groups.closed,
            this::own,
            (first, left, right) -> load[first][left + right].mass(),
            rule.combine);
    double best = NONE;
    double bestTie = NONE;
    int bestCut = -1;
    for (int cut = 0; cut < programme.cuts(); cut++) {
      double value = programme.value(cut);
      if (value == NONE || !closingAllowed(cut)) {
        continue;
      }
      double total = groups.closed ? rule.combine.of(value, 0, closing(cut)) : value;
      if (bestCut < 0 || SpanProgramme.better(total, programme.tie(cut), best, bestTie)) {
        best = total;
        bestTie = programme.tie(cut);
        bestCut = cut;
      }
    }
    return bestCut < 0 ? Optional.empty() : Optional.of(new Best(programme.tree(bestCut), best));
  }

  private boolean closingAllowed(int cut) {
    if (!groups.closed) {
      return true;
    }
    Optional<Integer> fixed = options.closingJoint();
    return (fixed.isEmpty() || groups.closingJoint(cut) == fixed.get())
        && options.limits().permitClosing(load[0][k])
        && options.limits().carriedAtClosing(load[0][k].mass()) <= carryBound;
  }

  private double closing(int cut) {
    double whole = load[0][k].mass();
    return switch (rule) {
      case MASS -> whole;
      case WORK, PARALLEL -> options.times().time(groups.closingLength(cut), whole);
      case CARRY -> options.limits().carriedAtClosing(whole);
    };
  }
}
