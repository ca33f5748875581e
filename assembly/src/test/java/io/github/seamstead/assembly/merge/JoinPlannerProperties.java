package io.github.seamstead.assembly.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.JoinLog;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.LogEntry;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class JoinPlannerProperties {

  private static PieceRing ring(Random random, int n, boolean closed) {
    List<Piece> pieces = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      Load load =
          new Load(
              random.nextInt(10),
              random.nextInt(5) / 4.0,
              random.nextInt(4) / 4.0,
              random.nextInt(6));
      pieces.add(Piece.of(Integer.toString(i), load));
      lengths.add(1.0 + random.nextInt(4));
    }
    return closed
        ? PieceRing.ring(pieces, lengths)
        : PieceRing.line(pieces, lengths.subList(0, n - 1));
  }

  private static PlanOptions options(Random random, PieceRing ring) {
    Limits limits = Limits.NONE;
    if (random.nextInt(3) == 0) {
      limits = limits.withRule(CarryRule.BOTH_ARE_LIFTED);
    }
    if (random.nextInt(3) == 0) {
      limits = limits.withCarriedMass(1 + random.nextInt(8 * ring.size()));
    }
    if (random.nextInt(5) == 0) {
      limits = limits.withCarriedBulk(0.25 + random.nextInt(12) / 4.0);
    }
    if (random.nextInt(5) == 0) {
      limits = limits.withReach(0.25 + random.nextInt(8) / 4.0);
    }
    if (random.nextInt(6) == 0) {
      limits = limits.withFloor(1 + random.nextInt(5 * ring.size()));
    }
    List<Arc> groups = new ArrayList<>();
    if (random.nextInt(3) == 0 && ring.size() > 3) {
      int first = ring.isRing() ? 1 + random.nextInt(ring.size()) : 1;
      groups.add(new Arc(first, 2 + random.nextInt(2)));
    }
    return new PlanOptions(
        Objective.HANDLED_MASS,
        limits,
        new JoinTimes(random.nextInt(3), 1 + random.nextInt(2), random.nextInt(3) * 0.5),
        1 + random.nextInt(3),
        ring.isRing() && random.nextInt(3) == 0
            ? Optional.of(1 + random.nextInt(ring.size()))
            : Optional.empty(),
        groups,
        Work.of(Budget.ofWork(200_000), 0));
  }

  private static double value(MergePlan plan, Objective objective) {
    PlanCost cost = plan.cost();
    return switch (objective) {
      case HANDLED_MASS -> cost.handledMass();
      case WORK_TIME -> cost.workTime();
      case ELAPSED_TIME -> cost.elapsedTime();
      case HEAVIEST_CARRY -> cost.heaviestCarried();
    };
  }

  /** Every objective against all orders of joining, with random limits and wishes. */
  @Property(tries = 150, seed = "10123")
  void agreesWithEveryOrderOfJoining(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(random, 2 + random.nextInt(5), random.nextBoolean());
    PlanOptions options = options(random, ring);
    BruteForce all = new BruteForce(ring, options);
    for (Objective objective : Objective.values()) {
      double expected =
          switch (objective) {
            case HANDLED_MASS -> all.handled;
            case WORK_TIME -> all.work;
            case ELAPSED_TIME -> all.elapsed;
            case HEAVIEST_CARRY -> all.carried;
          };
      PlanResult result = JoinPlanner.plan(ring, options.with(objective));
      if (expected == Double.POSITIVE_INFINITY) {
        assertThat(result.plan()).as("%s", objective).isEmpty();
        assertThat(result.reason()).startsWith("no order of joining keeps the limits");
        continue;
      }
      MergePlan plan = result.orThrow();
      assertThat(value(plan, objective)).as("%s", objective).isCloseTo(expected, within(1e-9));
      Optimality sure = plan.optimality().orElseThrow();
      assertThat(sure.proved()).as("%s", objective).isTrue();
      assertThat(sure.value()).isCloseTo(expected, within(1e-9));
      checkPlan(plan, options);
    }
  }

  /** Ring of seven, all orders: teams and times that differ. */
  @Property(tries = 8, seed = "67667")
  void agreesForSevenPieces(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(random, 7, true);
    PlanOptions options =
        PlanOptions.least(Objective.ELAPSED_TIME)
            .with(new JoinTimes(1, 1, 0.25))
            .withTeams(2)
            .searching(500_000);
    BruteForce all = new BruteForce(ring, options);
    MergePlan plan = JoinPlanner.plan(ring, options).orThrow();
    assertThat(plan.cost().elapsedTime()).isCloseTo(all.elapsed, within(1e-9));
    assertThat(plan.optimality().orElseThrow().proved()).isTrue();
  }

  private static void checkPlan(MergePlan plan, PlanOptions options) {
    PieceRing ring = plan.ring();
    assertThat(plan.cost().withinLimits()).isTrue();
    Set<Integer> joints = new HashSet<>();
    for (JoinStep step : plan.steps()) {
      assertThat(joints.add(step.joint().number())).as("each joint once").isTrue();
      options
          .limits()
          .carriedMass()
          .ifPresent(most -> assertThat(step.carriedMass()).isLessThanOrEqualTo(most * 1.000001));
    }
    assertThat(joints).hasSize(ring.joints().size());
    options
        .closingJoint()
        .ifPresent(
            fixed ->
                assertThat(plan.closingStep().orElseThrow().joint().number()).isEqualTo(fixed));
    checkTeams(plan, options.teams());
    checkReplay(plan);
    assertThat(HandledMass.of(plan)).isCloseTo(plan.cost().handledMass(), within(1e-9));
  }

  /** No team does two things at once, and no group is joined before it is there. */
  private static void checkTeams(MergePlan plan, int teams) {
    for (JoinStep a : plan.steps()) {
      assertThat(a.team()).isBetween(1, teams);
      for (JoinStep b : plan.steps()) {
        if (a.number() < b.number()) {
          boolean apart =
              a.endTime() <= b.startTime() + 1e-9 || b.endTime() <= a.startTime() + 1e-9;
          assertThat(a.team() != b.team() || apart).isTrue();
          assertThat(a.startTime()).isLessThanOrEqualTo(b.startTime());
          boolean touch = overlap(a, b, plan.ring().size());
          assertThat(!touch || apart).isTrue();
        }
      }
    }
  }

  private static boolean overlap(JoinStep a, JoinStep b, int n) {
    for (int p = 1; p <= n; p++) {
      boolean inA = a.left().contains(p, n) || a.right().contains(p, n);
      boolean inB = b.left().contains(p, n) || b.right().contains(p, n);
      if (inA && inB) {
        return true;
      }
    }
    return false;
  }

  /** Typed into the log in the plan's order, the joints are clean, whole, and cost the same. */
  private static void checkReplay(MergePlan plan) {
    PieceRing ring = plan.ring();
    List<LogEntry> log = new ArrayList<>();
    double handled = 0;
    for (JoinStep step : plan.steps()) {
      Joint joint = step.joint();
      log.add(LogEntry.joined(joint.first().label(), joint.second().label()));
      List<Arc> groups = JoinLog.verify(ring, log).groups();
      handled +=
          groups.stream()
              .filter(g -> g.contains(joint.first().piece(), ring.size()))
              .mapToDouble(g -> ring.load(g).mass())
              .sum();
    }
    LogReport report = JoinLog.verify(ring, log);
    assertThat(report.isClean()).isTrue();
    assertThat(report.isComplete()).isTrue();
    assertThat(handled).isCloseTo(plan.cost().handledMass(), within(1e-9));
  }

  @Property(tries = 60, seed = "92442")
  void rotatingAndMirroringChangeNothing(@ForAll long seed) {
    Random random = new Random(seed);
    int n = 3 + random.nextInt(12);
    PieceRing ring = ring(random, n, true);
    List<Piece> pieces = new ArrayList<>(ring.pieces());
    List<Double> lengths = new ArrayList<>(ring.joints().stream().map(Joint::length).toList());
    int by = 1 + random.nextInt(n - 1);
    Collections.rotate(pieces, by);
    Collections.rotate(lengths, by);
    PieceRing rotated = PieceRing.ring(pieces, lengths);
    Collections.reverse(pieces);
    Collections.reverse(lengths);
    Collections.rotate(lengths, -1);
    PieceRing mirrored = PieceRing.ring(pieces, lengths);
    for (Objective objective : Objective.values()) {
      PlanOptions options =
          PlanOptions.least(objective).with(new JoinTimes(2, 1, 0.5)).withTeams(2).searching(0);
      double value = value(JoinPlanner.plan(ring, options).orThrow(), objective);
      if (objective != Objective.ELAPSED_TIME) {
        assertThat(value(JoinPlanner.plan(rotated, options).orThrow(), objective))
            .isCloseTo(value, within(1e-9));
        assertThat(value(JoinPlanner.plan(mirrored, options).orThrow(), objective))
            .isCloseTo(value, within(1e-9));
      } else {
        assertThat(
                JoinPlanner.plan(rotated, options)
                    .orThrow()
                    .optimality()
                    .orElseThrow()
                    .lowerBound())
            .isLessThanOrEqualTo(value + 1e-9);
      }
    }
  }

  @Property(tries = 60, seed = "32044")
  void replanningAfterAnyPrefixCompletesTheRing(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(random, 3 + random.nextInt(8), random.nextInt(3) > 0);
    List<Joint> order = new ArrayList<>(ring.joints());
    Collections.shuffle(order, random);
    int done = random.nextInt(order.size() + 1);
    List<LogEntry> log = new ArrayList<>();
    for (Joint joint : order.subList(0, done)) {
      log.add(LogEntry.joined(joint.second().label(), joint.first().label()));
    }
    if (random.nextBoolean()) {
      log.add(LogEntry.joined("1L", "3L"));
    }
    LogReport report = JoinLog.verify(ring, log);
    for (Objective objective : Objective.values()) {
      MergePlan plan =
          JoinPlanner.replan(ring, report, PlanOptions.least(objective).withTeams(2)).orThrow();
      Set<Integer> joints = new HashSet<>();
      report.kept().forEach(joint -> joints.add(joint.number()));
      plan.steps().forEach(step -> assertThat(joints.add(step.joint().number())).isTrue());
      assertThat(joints).hasSize(ring.joints().size());
    }
  }

  @Property(tries = 40, seed = "16208")
  void longRingsAgreeWithTheIntervalProgramme(@ForAll long seed) {
    Random random = new Random(seed);
    int n = 49 + random.nextInt(12);
    PieceRing ring = ring(random, n, random.nextBoolean());
    PlanOptions plain = PlanOptions.least(Objective.HANDLED_MASS);
    PlanOptions limited = plain.with(Limits.NONE.withCarriedMass(1e9));
    assertThat(JoinPlanner.plan(ring, plain).orThrow().cost().mergedMass())
        .isCloseTo(JoinPlanner.plan(ring, limited).orThrow().cost().mergedMass(), within(1e-9));
  }

  @Property(tries = 60, seed = "56381")
  void anElapsedPlanNeverBeatsItsBound(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(random, 2 + random.nextInt(24), true);
    PlanOptions options =
        PlanOptions.least(Objective.ELAPSED_TIME)
            .with(new JoinTimes(1, 2, 0.5))
            .withTeams(1 + random.nextInt(4))
            .searching(300);
    MergePlan plan = JoinPlanner.plan(ring, options).orThrow();
    Optimality sure = plan.optimality().orElseThrow();
    assertThat(sure.lowerBound()).isLessThanOrEqualTo(plan.cost().elapsedTime() * 1.000001);
    assertThat(sure.gapRatio()).isBetween(0.0, 0.5);
    checkTeams(plan, options.teams());
    checkReplay(plan);
  }

  @Example
  void oneTeamNeedsTheWorkTime() {
    PieceRing ring = PieceRing.ofEqualPieces(8, 5, 3);
    MergePlan plan = JoinPlanner.plan(ring, PlanOptions.least(Objective.ELAPSED_TIME)).orThrow();
    assertThat(plan.cost().elapsedTime()).isEqualTo(8 * 540.0);
    assertThat(plan.cost().workTime()).isEqualTo(8 * 540.0);
    assertThat(plan.optimality().map(Optimality::proved)).isEqualTo(Optional.of(true));
  }

  @Example
  void twoTeamsJoinTenPiecesInSixRounds() {
    PieceRing ring = PieceRing.ofEqualPieces(10, 5, 3);
    MergePlan plan =
        JoinPlanner.plan(ring, PlanOptions.least(Objective.ELAPSED_TIME).withTeams(2)).orThrow();
    // 10, 8, 6, 4, 2, 1 groups, then the closing joint.
    assertThat(plan.cost().elapsedTime()).isEqualTo(6 * 540.0);
    assertThat(plan.optimality().map(Optimality::proved)).isEqualTo(Optional.of(true));
  }

  @Example
  void onePieceClosesOnItself() {
    PieceRing ring = PieceRing.ofEqualPieces(1, 5, 3);
    for (Objective objective : Objective.values()) {
      MergePlan plan = JoinPlanner.plan(ring, PlanOptions.least(objective)).orThrow();
      assertThat(plan.steps()).hasSize(1);
      assertThat(plan.cost().closingMass()).isEqualTo(5);
      assertThat(TreeLayout.of(plan).nodes()).hasSize(1);
    }
  }
}
