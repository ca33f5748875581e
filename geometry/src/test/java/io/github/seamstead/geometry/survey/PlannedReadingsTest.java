package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.Deficiency.Quantity;
import io.github.seamstead.geometry.survey.SurveyShape.PanelEdge;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Readings that are proposed, against adjustments that really have each of the others. */
class PlannedReadingsTest {

  private static final double U = 0.002;

  private static Reading tape(Map<Node, Vector3D> nodes, Node a, Node b) {
    return Reading.distance(a, b, nodes.get(a).distance(nodes.get(b)), U);
  }

  private static Adjustment with(Adjustment before, PanelEdge pair) {
    List<Reading> more = new ArrayList<>(before.survey().readings());
    double as = before.distance(pair.from(), pair.to()).value();
    more.add(
        Reading.distance(
            pair.from(),
            pair.to(),
            as,
            ReadingPlanner.usualUncertainty(before.survey().readings())));
    return Survey.of(before.survey().shape(), more).adjust().orThrow();
  }

  private static double uncertainty(Adjustment adjustment, PanelEdge edge) {
    return adjustment.distance(edge.from(), edge.to()).standardUncertainty();
  }

  private static double worst(Adjustment adjustment) {
    return adjustment.edges().stream()
        .mapToDouble(e -> e.length().standardUncertainty())
        .max()
        .orElseThrow();
  }

  /** All distances that help the worst edge by more than a thousandth, the best first. */
  @Test
  void allThatHelpsIsProposedInOrder() {
    Survey survey = TestFrames.survey(4, false, 0.05, 0.002, 2);
    Adjustment before = survey.adjust().orThrow();
    List<NextReading> next = before.nextReadings(100);
    PanelEdge worstEdge = next.get(0).worstEdge();
    assertThat(uncertainty(before, worstEdge)).isCloseTo(worst(before), within(1e-12));
    Set<PanelEdge> proposed = new HashSet<>();
    for (NextReading one : next) {
      proposed.add(one.pair());
      Adjustment after = with(before, one.pair());
      assertThat(one.edgeAfter()).isCloseTo(uncertainty(after, worstEdge), within(1e-9));
      assertThat(one.worstAfter()).isCloseTo(worst(after), within(1e-9));
      Set<Node> ends = Set.of(one.pair().from(), one.pair().to());
      boolean read =
          survey.readings().stream()
              .anyMatch(r -> r instanceof Reading.Distance && ends.equals(Set.copyOf(r.nodes())));
      assertThat(one.repeats()).as(one.pair().name()).isEqualTo(read);
      assertThat(one.predicted().value())
          .isEqualTo(before.distance(one.pair().from(), one.pair().to()).value());
    }
    assertThat(next).anyMatch(NextReading::repeats).anyMatch(n -> !n.repeats());
    for (PanelEdge pair : ReadingPlanner.pairs(survey.nodes())) {
      double after = uncertainty(with(before, pair), worstEdge);
      assertThat(proposed.contains(pair)).as(pair.name()).isEqualTo(after < 0.999 * worst(before));
    }
    for (int i = 1; i < next.size(); i++) {
      // In thousandths of what the worst edge was, then by the edge itself.
      long former = Math.round(1000 * next.get(i - 1).worstAfter() / worst(before));
      long here = Math.round(1000 * next.get(i).worstAfter() / worst(before));
      assertThat(former).isLessThanOrEqualTo(here);
      if (former == here) {
        assertThat(next.get(i - 1).edgeAfter()).isLessThanOrEqualTo(next.get(i).edgeAfter());
      }
    }
    assertThat(before.nextReadings(1)).containsExactly(next.get(0));
  }

  /** Edges, one diagonal of each face and what makes the frame stiff: nothing to spare. */
  private static Adjustment bare(int sides) {
    Map<Node, Vector3D> nodes = TestFrames.bent(sides, true, 3, 3.5, 0.03, 3);
    SurveyShape shape = SurveyShape.truncated(sides);
    List<Reading> readings = new ArrayList<>();
    for (PanelEdge edge : shape.panelEdges()) {
      readings.add(tape(nodes, edge.from(), edge.to()));
    }
    for (int i = 1; i <= sides; i++) {
      readings.add(tape(nodes, shape.baseCorner(i), shape.hipTop(i + 1)));
    }
    if (Survey.of(shape, readings).adjust() instanceof Deficiency deficiency) {
      deficiency.suggestions().forEach(s -> readings.add(tape(nodes, s.from(), s.to())));
    }
    return Survey.of(shape, readings).adjust().orThrow();
  }

  /** How many of the weak readings are controlled, and how much redundancy all of them gain. */
  private static double[] gained(Adjustment before, Adjustment after, List<ReadingResult> weak) {
    double controlled = 0;
    double gain = 0;
    for (ReadingResult result : weak) {
      double now = after.readings().get(result.number() - 1).redundancy();
      controlled += now >= ReadingResult.CONTROLLED ? 1 : 0;
      gain += Math.min(now, 0.3) - result.redundancy();
    }
    assertThat(after.readings()).hasSize(before.readings().size() + 1);
    return new double[] {controlled, gain};
  }

  @Test
  void theFirstCheckControlsMost() {
    for (int sides : new int[] {4, 5}) {
      Adjustment before = bare(sides);
      SurveyControl control = before.control();
      CheckReading first = control.proposed().get(0);
      assertThat(first.quantity()).isEqualTo(Quantity.DISTANCE);
      List<ReadingResult> weak = control.uncontrolled();
      double[] best = {0, 0};
      PanelEdge bestPair = null;
      Set<Set<Node>> read = new HashSet<>();
      before.survey().readings().forEach(r -> read.add(Set.copyOf(r.nodes())));
      for (PanelEdge pair : ReadingPlanner.pairs(before.survey().nodes())) {
        if (read.contains(Set.of(pair.from(), pair.to()))) {
          continue;
        }
        double[] now = gained(before, with(before, pair), weak);
        if (now[0] > best[0] || (now[0] == best[0] && now[1] > best[1] * (1 + 1e-7))) {
          best = now;
          bestPair = pair;
        }
      }
      assertThat(new PanelEdge(first.from(), first.to())).isEqualTo(bestPair);
    }
  }

  /** All six distances of three sides and three hips: each can only be read again. */
  @Test
  void whatNothingElseControlsIsReadAgain() {
    Map<Node, Vector3D> nodes = TestFrames.bent(3, false, 3, 3.5, 0, 3);
    List<Reading> readings = new ArrayList<>();
    for (PanelEdge pair : ReadingPlanner.pairs(SurveyShape.whole(3).panelNodes())) {
      readings.add(tape(nodes, pair.from(), pair.to()));
    }
    Adjustment adjustment = Survey.of(SurveyShape.whole(3), readings).adjust().orThrow();
    SurveyControl control = adjustment.control();
    assertThat(control.isNothingChecked()).isTrue();
    assertThat(control.uncontrolled()).hasSize(6);
    assertThat(control.proposed().stream().map(CheckReading::text))
        .containsExactly(
            "distance B1-B2 again",
            "distance B1-B3 again",
            "distance B1-A again",
            "distance B2-B3 again",
            "distance B2-A again",
            "distance B3-A again");
    List<Reading> twice = new ArrayList<>(readings);
    twice.addAll(readings);
    Adjustment again = Survey.of(SurveyShape.whole(3), twice).adjust().orThrow();
    assertThat(again.control().isAllControlled()).isTrue();
    assertThat(again.control().message())
        .isEqualTo(
            "every reading that a panel depends on is controlled by others; readings to spare: 6");
  }

  /** Sides, hips and levels of a square: the levels hold the frame, but three sides each face. */
  @Test
  void whatMovesNoPanelNeedsNoControl() {
    Map<Node, Vector3D> nodes = TestFrames.bent(4, false, 3, 3.5, 0, 3);
    SurveyShape shape = SurveyShape.whole(4);
    List<Reading> readings = new ArrayList<>();
    for (PanelEdge edge : shape.panelEdges()) {
      readings.add(tape(nodes, edge.from(), edge.to()));
    }
    for (int i = 2; i <= 4; i++) {
      readings.add(TestFrames.level(nodes, Node.base(1), Node.base(i), 0, U));
    }
    Adjustment adjustment = Survey.of(shape, readings).adjust().orThrow();
    assertThat(adjustment.degreesOfFreedom()).isZero();
    SurveyControl control = adjustment.control();
    assertThat(control.uncontrolled())
        .hasSize(8)
        .allMatch(r -> r.reading() instanceof Reading.Distance);
    for (CheckReading check : control.proposed()) {
      double rise = nodes.get(check.to()).getZ() - nodes.get(check.from()).getZ();
      readings.add(
          check.quantity() == Quantity.DISTANCE
              ? tape(nodes, check.from(), check.to())
              : new Reading.HeightDifference(check.from(), check.to(), rise, U, ""));
    }
    assertThat(Survey.of(shape, readings).adjust().orThrow().control().isAllControlled()).isTrue();
  }

  /** Beyond a quarter of the readings nothing tells the right from the wrong. */
  @Test
  void atMostAQuarterIsTakenOut() {
    Survey sound = TestFrames.survey(5, false, 0.01, 0.001, 8);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 3 * sound.readings().size(); i++) {
      Reading one = sound.readings().get(i % sound.readings().size());
      readings.add(i % 2 == 0 ? one.withValue(one.value() + 0.05 + 0.013 * i) : one);
    }
    BlunderReport report = Survey.of(sound.shape(), readings).findBlunders();
    assertThat(report.undecided()).isTrue();
    assertThat(report.blunders()).isNotEmpty().hasSizeLessThanOrEqualTo(readings.size() / 4);
    // An adjustment needs a reading for each coordinate, so most of them stay.
    assertThat(report.accepted().readings().size())
        .isGreaterThanOrEqualTo(readings.size() - readings.size() / 4);
  }

  /** A hip a foot too long that nothing controls: good readings went for it, and came back. */
  @Test
  void aWrongHipIsNamedInTheEnd() {
    SurveySimulation simulation = new SurveySimulation(SurveySimulation.Kind.WHOLE_WITHOUT_LEVELS);
    simulation.add(82, SurveySimulation.Planted.A_HIP, 0.3048);
    assertThat(simulation.named).isEqualTo(1);
    assertThat(simulation.undecided).isEqualTo(1);
    assertThat(simulation.goodThrownOut).isZero();
  }
}
