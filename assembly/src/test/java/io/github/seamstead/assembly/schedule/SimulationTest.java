package io.github.seamstead.assembly.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanOptions;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.schedule.WorkCalendar.Shift;
import io.github.seamstead.assembly.schedule.WorkCalendar.Span;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;

class SimulationTest {

  private static final Map<String, Integer> TWO_TEAMS = Map.of(JoinTasks.TEAM, 2, "stapler", 2);

  private static Work runs(int runs) {
    return Work.of(Budget.ofWork(runs), 42);
  }

  private static Network joints(double cure) {
    MergePlan plan =
        JoinPlanner.plan(
                PieceRing.ofEqualPieces(8, 5, 3),
                PlanOptions.least(Objective.HANDLED_MASS).withTeams(2))
            .orThrow();
    return JoinTasks.of(plan, 8.0 / 9, 10.0 / 9, cure, Map.of("stapler", 1));
  }

  /** Against the distribution function of an independent library: Kolmogorov's distance. */
  @Test
  void durationsFollowTheBetaDistribution() {
    int n = 20_000;
    for (ThreePoint t :
        List.of(new ThreePoint(3, 5, 13), new ThreePoint(0, 0, 1), new ThreePoint(1, 9, 9))) {
      BetaSampler sampler = new BetaSampler(Seeds.stream(5, "test", 0));
      double[] drawn = new double[n];
      for (int i = 0; i < n; i++) {
        drawn[i] = sampler.draw(t);
      }
      Arrays.sort(drawn);
      double width = t.pessimistic() - t.optimistic();
      BetaDistribution beta =
          new BetaDistribution(
              1 + 4 * (t.likely() - t.optimistic()) / width,
              1 + 4 * (t.pessimistic() - t.likely()) / width);
      double distance = 0;
      for (int i = 0; i < n; i++) {
        double p = beta.cumulativeProbability((drawn[i] - t.optimistic()) / width);
        distance = Math.max(distance, Math.max(p - (double) i / n, (i + 1.0) / n - p));
      }
      // 1.95 / sqrt(n) is exceeded by chance once in a thousand.
      assertThat(distance).isLessThan(1.95 / Math.sqrt(n));
      assertThat(Arrays.stream(drawn).average().orElseThrow()).isCloseTo(t.mean(), within(0.05));
    }
  }

  @Test
  void aChainAgreesWithPertAndParallelPathsAreLater() {
    Network chain =
        Network.of(
            List.of(
                Task.of("A", new ThreePoint(8, 9, 13)),
                Task.of("B", new ThreePoint(8, 9, 13), "A"),
                Task.of("C", new ThreePoint(8, 9, 13), "B")));
    Simulation simulated = Simulation.of(chain, Map.of(), runs(4000));
    CriticalPath path = CriticalPath.of(chain);
    assertThat(simulated.mean()).isCloseTo(path.length(), within(0.1));
    assertThat(simulated.criticality().values()).allMatch(share -> share == 1.0);
    Network beside =
        Network.of(
            List.of(
                Task.of("A", new ThreePoint(8, 9, 13)),
                Task.of("B", new ThreePoint(8, 9, 13)),
                Task.of("C", new ThreePoint(8, 9, 13))));
    Simulation later = Simulation.of(beside, Map.of(), runs(4000));
    assertThat(later.mean()).isGreaterThan(CriticalPath.of(beside).length() + 0.3);
    assertThat(later.criticality().values()).allMatch(share -> share > 0.25 && share < 0.42);
  }

  @Test
  void rangesAreOrderedAndRepeatable() {
    Simulation first = Simulation.of(joints(0), TWO_TEAMS, runs(1000));
    Simulation again = Simulation.of(joints(0), TWO_TEAMS, runs(1000));
    assertThat(first.shortest()).isLessThanOrEqualTo(first.p50());
    assertThat(first.p50()).isLessThan(first.p80());
    assertThat(first.p80()).isLessThan(first.p95());
    assertThat(first.p95()).isLessThanOrEqualTo(first.longest());
    assertThat(again.p95()).isEqualTo(first.p95());
    assertThat(again.mean()).isEqualTo(first.mean());
    assertThat(first.probabilityBy(first.p80())).isBetween(0.8, 0.802);
    assertThat(first.runs()).isEqualTo(1000);
    assertThat(Arrays.stream(first.histogram(20)).sum()).isEqualTo(1000);
    assertThat(first.standardDeviation()).isPositive();
    // Five rounds of at least eight and at most ten minutes each.
    assertThat(first.shortest()).isGreaterThanOrEqualTo(5 * 480);
    assertThat(first.longest()).isLessThanOrEqualTo(5 * 600 + 1e-9);
  }

  @Test
  void stopsWhenItIsTold() {
    Cancellation stop = new Cancellation();
    Work work = new Work(Budget.ofWork(100_000), 1, (done, message) -> stop.cancel(), stop);
    assertThat(Simulation.of(joints(0), TWO_TEAMS, work).runs()).isEqualTo(256);
    assertThat(Progress.NONE).isNotNull();
    assertThatThrownBy(() -> Simulation.of(joints(0), TWO_TEAMS, runs(10)))
        .hasMessage("simulation runs: given 10, must be 100 or more");
  }

  @Test
  void jointsWaitForTheirGroupsAndTheCure() {
    Network network = joints(3600);
    CriticalPath path = CriticalPath.of(network);
    // Pairs, fours, the eight, the closing joint: four joints and three cures.
    assertThat(path.length()).isCloseTo(4 * 540 + 3 * 3600, within(1e-6));
    ResourceSchedule schedule =
        ResourceSchedule.of(network, TWO_TEAMS, Work.of(Budget.ofWork(100_000), 1));
    ResourceScheduleTest.checkFeasible(schedule, TWO_TEAMS);
    assertThat(schedule.proved()).isTrue();
    assertThat(schedule.length()).isCloseTo(4 * 540 + 3 * 3600 + 540, within(1e-6));
  }

  @Test
  void laterJointsAreQuickerByTheLearningRule() {
    MergePlan plan =
        JoinPlanner.plan(
                PieceRing.ofEqualPieces(8, 5, 3), PlanOptions.least(Objective.HANDLED_MASS))
            .orThrow();
    LearningCurve curve = new LearningCurve(LearningCurve.Rule.UNIT, 0.9);
    Network network = JoinTasks.of(plan, 1, 1, 0, Map.of(), curve);
    double sum = network.tasks().stream().mapToDouble(task -> task.duration().likely()).sum();
    assertThat(sum).isCloseTo(curve.total(540, 8), within(1e-6));
    assertThat(plan.cautions()).isNotEmpty();
    assertThat(new AdhesiveTimes(1, 1, 1, 1).caution().text()).contains("vapour");
  }

  @Test
  void barsOfALaneNeverOverlap() {
    ResourceSchedule schedule =
        ResourceSchedule.of(joints(0), TWO_TEAMS, Work.of(Budget.ofWork(100_000), 1));
    GanttChart chart = GanttChart.of(schedule, TWO_TEAMS);
    assertThat(chart.lanes()).isEqualTo(2);
    assertThat(chart.byClock()).isFalse();
    assertThat(chart.endTime()).isEqualTo(schedule.length());
    checkLanes(chart);
    assertThat(chart.bars().stream().filter(GanttChart.Bar::critical)).isNotEmpty();
  }

  private static void checkLanes(GanttChart chart) {
    Map<Integer, Double> end = new HashMap<>();
    for (GanttChart.Bar bar : chart.bars()) {
      assertThat(bar.startTime()).isGreaterThanOrEqualTo(end.getOrDefault(bar.lane(), 0.0) - 1e-6);
      end.put(bar.lane(), bar.endTime());
    }
  }

  @Test
  void workStopsAtBreaksAndAtNightWhileTheCureGoesOn() {
    WorkCalendar calendar =
        WorkCalendar.ofDaylight(8 * 3600, 16 * 3600, List.of(new Shift(12 * 3600, 13 * 3600)));
    assertThat(calendar.workTimePerDay()).isEqualTo(7 * 3600);
    ResourceSchedule schedule =
        ResourceSchedule.of(joints(12 * 3600), TWO_TEAMS, Work.of(Budget.ofWork(100_000), 1));
    GanttChart chart = GanttChart.of(schedule, TWO_TEAMS, calendar, 8 * 3600);
    checkLanes(chart);
    Map<String, GanttChart.Bar> bars = new HashMap<>();
    for (GanttChart.Bar bar : chart.bars()) {
      bars.put(bar.task().id(), bar);
      for (Span part : bar.parts()) {
        double start = part.startTime() % WorkCalendar.DAY_SECONDS;
        double end = part.endTime() % WorkCalendar.DAY_SECONDS;
        assertThat(
                calendar.shifts().stream()
                    .anyMatch(s -> start >= s.startTime() && end <= s.endTime() + 1e-6))
            .isTrue();
      }
    }
    for (GanttChart.Bar bar : chart.bars()) {
      for (Link link : bar.task().after()) {
        assertThat(bar.startTime())
            .isGreaterThanOrEqualTo(bars.get(link.task()).endTime() + link.lag() - 1e-6);
      }
    }
    // Pairs on day 1, fours on day 2, the eight on day 3, closed on day 4: cured over night.
    assertThat((int) (chart.endTime() / WorkCalendar.DAY_SECONDS)).isEqualTo(3);
  }

  @Test
  void laysTasksIntoShifts() {
    WorkCalendar calendar =
        WorkCalendar.ofDaylight(8 * 3600, 16 * 3600, List.of(new Shift(12 * 3600, 13 * 3600)));
    assertThat(calendar.lay(0, 3600)).containsExactly(new Span(8 * 3600, 9 * 3600));
    assertThat(calendar.lay(11.5 * 3600, 3600)).containsExactly(new Span(13 * 3600, 14 * 3600));
    assertThat(calendar.lay(8 * 3600, 6 * 3600))
        .containsExactly(new Span(8 * 3600, 12 * 3600), new Span(13 * 3600, 15 * 3600));
    assertThat(calendar.without(Set.of(1, 2)).lay(0, 60))
        .containsExactly(new Span(2 * 86400 + 8 * 3600, 2 * 86400 + 8 * 3600 + 60));
    assertThat(calendar.lay(12.5 * 3600, 0)).containsExactly(new Span(13 * 3600, 13 * 3600));
    assertThatThrownBy(
            () ->
                WorkCalendar.ofDaylight(
                    8 * 3600, 9 * 3600, List.of(new Shift(7 * 3600, 10 * 3600))))
        .hasMessage("breaks: given no time to work between them");
    assertThatThrownBy(() -> new Shift(5, 5)).hasMessageContaining("must end after it starts");
    assertThatThrownBy(
            () -> new WorkCalendar(List.of(new Shift(0, 10), new Shift(5, 15)), Set.of(), true))
        .hasMessageContaining("overlap");
  }
}
