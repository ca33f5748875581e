package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Plans the order of joining.
 *
 * <pre>{@code
 * PieceRing ring = PieceRing.ofEqualPieces(10, 5.0, 3.2);
 * PlanOptions options = PlanOptions.least(Objective.HANDLED_MASS).withTeams(2);
 * MergePlan plan = JoinPlanner.plan(ring, options).orThrow();
 * plan.cost().mergedMass();                 // 170: 34 piece-lifts of 5 kg
 * JoinPlanner.compare(ring, options).plans(); // pairs first 36, one by one 54, best 34
 * }</pre>
 *
 * <p>A dynamic programme over all spans: O(n^3) time and O(n^2) memory, up to {@link #MOST_GENERAL}
 * groups. A frame has 64 sides at most; more groups than that are refused.
 */
public final class JoinPlanner {

  /** The most groups that are planned. */
  public static final int MOST_GENERAL = 500;

  private static final double FREE = Double.POSITIVE_INFINITY;

  private JoinPlanner() {}

  /**
   * Plans from the pieces on.
   *
   * @param ring the pieces
   * @param options what to keep small and what to keep to
   * @return the best plan, or why there is none
   * @throws IllegalArgumentException if the options do not fit the ring, or there are more than
   *     {@link #MOST_GENERAL} groups
   */
  public static PlanResult plan(PieceRing ring, PlanOptions options) {
    return plan(ring, Set.of(), options);
  }

  /**
   * Plans from the present state on. Wrong seams of the report are taken as undone.
   *
   * @param ring the pieces
   * @param report what the log says
   * @param options what to keep small; a closing joint that is made already and first groups that
   *     are broken already are left out
   * @return the best plan of the joints still open, or why there is none
   * @throws IllegalArgumentException as for {@link #plan(PieceRing, PlanOptions)}
   */
  public static PlanResult replan(PieceRing ring, LogReport report, PlanOptions options) {
    Set<Integer> made = new TreeSet<>();
    for (Joint joint : report.kept()) {
      made.add(joint.number());
    }
    return plan(ring, made, options);
  }

  /**
   * Plans the joints that are still open.
   *
   * @param ring the pieces
   * @param made the numbers of the joints made already
   * @param options what to keep small and what to keep to
   * @return the best plan of the joints still open, or why there is none
   * @throws IllegalArgumentException as for {@link #plan(PieceRing, PlanOptions)}
   */
  public static PlanResult plan(PieceRing ring, Set<Integer> made, PlanOptions options) {
    check(ring, made, options);
    Groups groups = new Groups(ring, made);
    PlanOptions fitting = fitting(options, made);
    Args.within("groups to join", groups.size, 1, MOST_GENERAL);
    return switch (options.objective()) {
      case HANDLED_MASS -> summed(groups, fitting, IntervalPlanner.Rule.MASS);
      case WORK_TIME -> summed(groups, fitting, IntervalPlanner.Rule.WORK);
      case HEAVIEST_CARRY -> lightest(groups, fitting, fitting);
      case ELAPSED_TIME -> ElapsedPlanner.plan(groups, fitting);
    };
  }

  /**
   * Plans the order that asks the least of the crew where no order keeps the limits: the lightest
   * heaviest carry, as if there were no limits. Its cost still says that the limits are not kept.
   *
   * @param ring the pieces
   * @param options the limits to come near to; the objective is not used
   * @return the order, or why there is none
   * @throws IllegalArgumentException as for {@link #plan(PieceRing, PlanOptions)}
   */
  public static PlanResult nearest(PieceRing ring, PlanOptions options) {
    check(ring, Set.of(), options);
    Groups groups = new Groups(ring, Set.of());
    Args.within("groups to join", groups.size, 1, MOST_GENERAL);
    PlanOptions free =
        options.with(
            new Limits(
                options.limits().rule(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    return lightest(groups, free, options);
  }

  /**
   * Sets the rules of thumb beside the best plans.
   *
   * @param ring the pieces
   * @param options limits, times, teams and closing joint; the objective is not used. A rule of
   *     thumb starts behind the closing joint, or behind joint n if that is free, and ignores the
   *     first groups
   * @return pairs first, one by one, least handled mass, least elapsed time
   * @throws IllegalArgumentException as for {@link #plan(PieceRing, PlanOptions)}
   */
  public static Comparison compare(PieceRing ring, PlanOptions options) {
    check(ring, Set.of(), options);
    Groups groups = new Groups(ring, Set.of());
    int cut = options.closingJoint().orElse(ring.size()) % ring.size();
    List<MergePlan> plans = new ArrayList<>();
    plans.add(
        new PlanBuilder(groups, options, Tree.pairsFirst(cut, groups.size))
            .build("pairs first", Optional.empty()));
    plans.add(
        new PlanBuilder(groups, options, Tree.oneByOne(cut, groups.size))
            .build("one by one", Optional.empty()));
    plan(ring, options.with(Objective.HANDLED_MASS)).plan().ifPresent(plans::add);
    plan(ring, options.with(Objective.ELAPSED_TIME)).plan().ifPresent(plans::add);
    return new Comparison(plans);
  }

  private static void check(PieceRing ring, Set<Integer> made, PlanOptions options) {
    made.forEach(joint -> Args.within("joint made", joint, 1, ring.joints().size()));
    FirstGroups.check(ring, options.firstGroups());
    if (options.closingJoint().isPresent()) {
      Args.require(
          ring.isRing(), "closing joint", "for a line", "must be left out: a line stays open");
      Args.within("closing joint", options.closingJoint().get(), 1, ring.joints().size());
    }
  }

  private static PlanOptions fitting(PlanOptions options, Set<Integer> made) {
    return options.closingJoint().isPresent() && made.contains(options.closingJoint().get())
        ? options.closingAnywhere()
        : options;
  }

  private static PlanResult summed(Groups groups, PlanOptions options, IntervalPlanner.Rule rule) {
    return IntervalPlanner.best(groups, options, rule, FREE)
        .map(
            best ->
                found(
                    new PlanBuilder(groups, options, best.tree())
                        .build(
                            "least " + options.objective().label(),
                            Optional.of(exact(best.value())))))
        .orElseGet(() -> refusal(groups, options));
  }

  /** First the least heaviest carry, then among all trees within it the least handled mass. */
  private static PlanResult lightest(Groups groups, PlanOptions options, PlanOptions judged) {
    Optional<IntervalPlanner.Best> bound =
        IntervalPlanner.best(groups, options, IntervalPlanner.Rule.CARRY, FREE);
    if (bound.isEmpty()) {
      return refusal(groups, options);
    }
    double heaviest = bound.get().value();
    IntervalPlanner.Best best =
        IntervalPlanner.best(groups, options, IntervalPlanner.Rule.MASS, heaviest * (1 + 1e-12))
            .orElse(bound.get());
    return found(
        new PlanBuilder(groups, judged, best.tree())
            .build("least heaviest carry", Optional.of(exact(heaviest))));
  }

  private static Optimality exact(double value) {
    return new Optimality(true, value, value, "dynamic programme over all spans and cuts");
  }

  static PlanResult found(MergePlan plan) {
    return new PlanResult(Optional.of(plan), "");
  }

  /** Says what no order keeps, and the least mass limit that would do with the other limits. */
  static PlanResult refusal(Groups groups, PlanOptions options) {
    Limits limits = options.limits();
    Limits withoutMass =
        new Limits(
            limits.rule(),
            Optional.empty(),
            limits.carriedBulk(),
            limits.reach(),
            limits.floorArea());
    Optional<IntervalPlanner.Best> lightest =
        IntervalPlanner.best(groups, options.with(withoutMass), IntervalPlanner.Rule.CARRY, FREE);
    String reason =
        lightest
            .map(
                best ->
                    "no order of joining keeps the limits: the heaviest carry is at least "
                        + Refusals.kilograms(best.value())
                        + ", the limit is "
                        + Refusals.kilograms(limits.carriedMass().orElse(FREE)))
            .orElseGet(() -> Refusals.otherThanMass(groups, options));
    return new PlanResult(Optional.empty(), reason);
  }
}
