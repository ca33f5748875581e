package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** What an adjustment says of itself, against the propagation of its own covariances. */
class AdjustmentByHandTest {

  private static final Node B1 = Node.base(1);
  private static final Node B3 = Node.base(3);
  private static final Survey SURVEY = TestFrames.survey(6, true, 0.04, 0.003, 12);
  private static final Adjustment ADJUSTED = SURVEY.adjust().orThrow();

  /** The uncertainty of a sum of coordinates, each with its factor. */
  private static double propagated(List<Node> nodes, List<Vector3D> factors) {
    double square = 0;
    for (int i = 0; i < nodes.size(); i++) {
      for (int j = 0; j < nodes.size(); j++) {
        double[][] q = ADJUSTED.covariance(nodes.get(i), nodes.get(j));
        double[] a = factors.get(i).toArray();
        double[] b = factors.get(j).toArray();
        for (int k = 0; k < 3; k++) {
          for (int l = 0; l < 3; l++) {
            square += a[k] * q[k][l] * b[l];
          }
        }
      }
    }
    return Math.sqrt(square);
  }

  @Test
  void uncertaintiesFollowFromCovariances() {
    Vector3D way = ADJUSTED.position(B3).subtract(ADJUSTED.position(B1));
    Vector3D unit = way.normalize();
    Uncertain distance = ADJUSTED.distance(B1, B3);
    assertThat(distance.value()).isCloseTo(way.norm(), within(1e-12));
    assertThat(distance.standardUncertainty())
        .isCloseTo(propagated(List.of(B1, B3), List.of(unit.negate(), unit)), within(1e-12));
    Uncertain rise = ADJUSTED.heightDifference(B1, B3);
    Vector3D up = Vector3D.Unit.PLUS_Z;
    assertThat(rise.value()).isCloseTo(way.getZ(), within(1e-12));
    assertThat(rise.standardUncertainty())
        .isCloseTo(propagated(List.of(B1, B3), List.of(up.negate(), up)), within(1e-12));
    assertThat(ADJUSTED.middleDistance(List.of(B1), List.of(B3)).value())
        .isCloseTo(distance.value(), within(1e-12));
    assertThat(ADJUSTED.middleDistance(List.of(B1), List.of(B3)).standardUncertainty())
        .isCloseTo(distance.standardUncertainty(), within(1e-12));
    List<Node> bottom = List.of(B1, B3, Node.base(5));
    List<Node> top = List.of(Node.opening(1), Node.opening(4));
    Vector3D between =
        Vector3D.centroid(top.stream().map(ADJUSTED::position).toList())
            .subtract(Vector3D.centroid(bottom.stream().map(ADJUSTED::position).toList()));
    Vector3D along = between.normalize();
    List<Node> all = new ArrayList<>(bottom);
    all.addAll(top);
    Vector3D third = along.multiply(-1 / 3.0);
    Vector3D half = along.multiply(0.5);
    Uncertain middle = ADJUSTED.middleDistance(bottom, top);
    assertThat(middle.value()).isCloseTo(between.norm(), within(1e-12));
    assertThat(middle.standardUncertainty())
        .isCloseTo(propagated(all, List.of(third, third, third, half, half)), within(1e-12));
    assertThat(ADJUSTED.nodes()).hasSize(13);
    for (AdjustedNode node : ADJUSTED.nodes()) {
      double[][] q = ADJUSTED.covariance(node.node(), node.node());
      double[] u = node.standardUncertainty().toArray();
      for (int axis = 0; axis < 3; axis++) {
        assertThat(u[axis]).isPositive().isCloseTo(Math.sqrt(q[axis][axis]), within(1e-12));
      }
      assertThat(node.position()).isEqualTo(ADJUSTED.position(node.node()));
    }
    // A reading among its own is predicted as it was adjusted, with the uncertainty of its line.
    for (ReadingResult result : ADJUSTED.readings()) {
      Uncertain predicted = ADJUSTED.predict(result.reading());
      assertThat(predicted.value()).isCloseTo(result.adjusted(), within(1e-12));
      double u = result.reading().standardUncertainty();
      assertThat(predicted.standardUncertainty())
          .isCloseTo(u * Math.sqrt(1 - result.redundancy()), within(1e-9));
    }
  }

  /** Uncertainties of a tenth give the same frame; estimated, they come out as the residuals. */
  @Test
  void estimatedUncertaintiesAreScaledByTheResiduals() {
    List<Reading> tenth = new ArrayList<>();
    SURVEY.readings().forEach(r -> tenth.add(r.withUncertainty(r.standardUncertainty() / 10)));
    Adjustment estimated =
        new Survey(SURVEY.shape(), tenth, SigmaBasis.ESTIMATED).adjust().orThrow();
    double s = Math.sqrt(ADJUSTED.weightedSquares() / ADJUSTED.degreesOfFreedom());
    assertThat(estimated.uncertaintyScale()).isCloseTo(10 * s, within(1e-5));
    assertThat(ADJUSTED.uncertaintyScale()).isEqualTo(1);
    assertThat(estimated.distance(B1, B3).standardUncertainty())
        .isCloseTo(s * ADJUSTED.distance(B1, B3).standardUncertainty(), within(1e-8));
    assertThat(estimated.heightDifference(B1, B3).standardUncertainty())
        .isCloseTo(s * ADJUSTED.heightDifference(B1, B3).standardUncertainty(), within(1e-8));
    assertThat(estimated.middleDistance(List.of(B1), List.of(B3)).standardUncertainty())
        .isCloseTo(s * ADJUSTED.distance(B1, B3).standardUncertainty(), within(1e-8));
    assertThat(estimated.predict(tenth.get(0)).standardUncertainty())
        .isCloseTo(s * ADJUSTED.predict(tenth.get(0)).standardUncertainty(), within(1e-8));
    assertThat(estimated.covariance(B1, B3)[0][0])
        .isCloseTo(s * s * ADJUSTED.covariance(B1, B3)[0][0], within(1e-9));
    ReadingResult one = estimated.readings().get(3);
    ReadingResult known = ADJUSTED.readings().get(3);
    assertThat(one.statistic().orElseThrow())
        .isCloseTo(known.statistic().orElseThrow() / s, within(1e-4));
    assertThat(one.minimalDetectableError().orElseThrow())
        .isCloseTo(s * known.minimalDetectableError().orElseThrow(), within(1e-7));
    assertThat(AdjustmentSummary.minimalDetectableError(estimated, 4, Steps.none()))
        .isCloseTo(one.minimalDetectableError().orElseThrow(), within(1e-12));
    assertThat(AdjustmentSummary.standardisedResidual(estimated, 4, Steps.none()))
        .isCloseTo(one.statistic().orElseThrow(), within(1e-9));
    List<NextReading> next = ADJUSTED.nextReadings(2);
    List<NextReading> scaled = estimated.nextReadings(2);
    for (int i = 0; i < 2; i++) {
      assertThat(scaled.get(i).pair()).isEqualTo(next.get(i).pair());
      assertThat(scaled.get(i).worstBefore())
          .isCloseTo(s * next.get(i).worstBefore(), within(1e-8));
      assertThat(scaled.get(i).worstAfter()).isCloseTo(s * next.get(i).worstAfter(), within(1e-8));
      assertThat(scaled.get(i).edgeAfter()).isCloseTo(s * next.get(i).edgeAfter(), within(1e-8));
      assertThat(scaled.get(i).assumedUncertainty())
          .isCloseTo(s * next.get(i).assumedUncertainty(), within(1e-8));
    }
    NextReadingSet pair = ADJUSTED.nextReadingPair(p -> true).orElseThrow();
    NextReadingSet both = estimated.nextReadingPair(p -> true).orElseThrow();
    assertThat(both.pairs()).isEqualTo(pair.pairs());
    assertThat(both.worstAfter()).isCloseTo(s * pair.worstAfter(), within(1e-8));
    assertThat(both.worstBefore()).isCloseTo(s * pair.worstBefore(), within(1e-8));
    assertThat(both.assumedUncertainty()).isCloseTo(s * pair.assumedUncertainty(), within(1e-8));
  }

  /** The frame lies where the regular one lay: neither shifted nor turned about the plumb line. */
  @Test
  void theFrameStaysWhereItStarted() {
    Vector3D shift = Vector3D.ZERO;
    double turn = 0;
    for (Node node : SURVEY.nodes()) {
      Vector3D start = ADJUSTED.regular(node);
      Vector3D moved = ADJUSTED.position(node).subtract(start);
      shift = shift.add(moved);
      turn += start.getX() * moved.getY() - start.getY() * moved.getX();
    }
    assertThat(shift.norm()).isLessThan(1e-7);
    assertThat(turn).isCloseTo(0, within(1e-7));
  }

  private static List<Reading> pentagon() {
    List<Reading> readings = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      for (int j = i + 1; j <= 5; j++) {
        double length = 6 * Math.sin(Math.PI * (j - i) / 5);
        readings.add(Reading.distance(Node.base(i), Node.base(j), length, 0.002));
      }
      readings.add(Reading.distance(Node.base(i), Node.APEX, 5, 0.002));
    }
    return readings;
  }

  private static Adjustment adjusted(List<Reading> readings) {
    return Survey.of(SurveyShape.whole(5), readings).adjust().orThrow();
  }

  /** A hip taped twice: each of the two is controlled by the other alone, and looks like it. */
  @Test
  void readingsThatLookAlike() {
    List<Reading> readings = pentagon();
    readings.add(Reading.distance(Node.APEX, B1, 5.01, 0.002));
    Adjustment adjustment = adjusted(readings);
    ReadingResult first = adjustment.readings().get(4);
    ReadingResult again = adjustment.readings().get(15);
    assertThat(first.reading().name()).isEqualTo("B1-A");
    assertThat(first.redundancy()).isCloseTo(0.5, within(1e-4));
    assertThat(Correlations.alike(adjustment, first)).containsExactly(again);
    assertThat(Correlations.alike(adjustment, again)).containsExactly(first);
    // 10 mm apart: each 5 mm off their mean, over 2 mm times the root of one half.
    assertThat(again.statistic().orElseThrow()).isCloseTo(-5 / Math.sqrt(2), within(1e-2));
    assertThat(first.suspect()).isTrue();
    assertThat(again.predictedByOthers().orElseThrow().value()).isCloseTo(5, within(1e-5));
    assertThat(again.predictedByOthers().orElseThrow().standardUncertainty())
        .isCloseTo(0.002, within(1e-6));
    ReadingResult chord = adjustment.readings().get(0);
    assertThat(Correlations.alike(adjustment, chord)).doesNotContain(first, again);
  }

  @Test
  void levelsAreToldByTheFreeMotions() {
    List<Reading> readings = pentagon();
    assertThat(adjusted(readings).freeMotions()).isEqualTo(6);
    assertThat(adjusted(readings).isLevelled()).isFalse();
    readings.add(new Reading.HeightDifference(B1, B3, 0, 0.002, ""));
    assertThat(adjusted(readings).freeMotions()).isEqualTo(5);
    assertThat(adjusted(readings).isLevelled()).isFalse();
    readings.add(new Reading.HeightDifference(B1, Node.base(2), 0, 0.002, ""));
    assertThat(adjusted(readings).freeMotions()).isEqualTo(4);
    assertThat(adjusted(readings).isLevelled()).isTrue();
    assertThat(adjusted(readings).degreesOfFreedom()).isEqualTo(17 - 18 + 4);
  }

  @Test
  void equalSurveysAndUnknownNodes() {
    Adjustment same = Survey.of(SURVEY.shape(), SURVEY.readings()).adjust().orThrow();
    assertThat(same).isEqualTo(ADJUSTED).hasSameHashCodeAs(ADJUSTED);
    assertThat(ADJUSTED.hashCode()).isNotZero();
    assertThat(ADJUSTED.steps()).isBetween(2, 12);
    assertThat(ADJUSTED).isNotEqualTo(adjusted(pentagon())).isNotEqualTo("x");
    assertThat(ADJUSTED.toString()).isEqualTo("Adjustment[13 nodes, 48 readings]");
    assertThatThrownBy(() -> ADJUSTED.distance(B1, Node.APEX))
        .hasMessageContaining("node: given A, the survey has only");
    assertThatThrownBy(() -> ADJUSTED.distance(B1, B1)).hasMessageContaining("must be two nodes");
    assertThatThrownBy(() -> ADJUSTED.nextReadings(0)).hasMessageContaining("count");
    assertThatThrownBy(
            () -> AdjustmentSummary.standardisedResidual(adjusted(pentagon()), 5, Steps.none()))
        .hasMessageContaining("reading 5 (B1-A): no other reading controls it");
    assertThatThrownBy(() -> AdjustmentSummary.standardisedResidual(ADJUSTED, 0, Steps.none()))
        .hasMessageContaining("reading number");
    assertThatThrownBy(() -> AdjustmentSummary.standardisedResidual(ADJUSTED, 49, Steps.none()))
        .hasMessageContaining("reading number");
  }

  @Test
  void theSumsOfTheGlobalTestFollow() {
    StepRecorder steps = new StepRecorder();
    GlobalTest test = AdjustmentSummary.globalTest(ADJUSTED, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("geometry.survey.global-test", "test"), test.varianceFactor());
    assertThat(test.weightedSquares()).isCloseTo(ADJUSTED.weightedSquares(), within(1e-9));
    assertThat(ADJUSTED.globalTest()).contains(test);
    // 48 readings, 13 nodes, three shifts and a turn.
    assertThat(test.degreesOfFreedom()).isEqualTo(48 - 39 + 4);
    List<Reading> bare = new ArrayList<>();
    for (SurveyShape.PanelEdge pair : ReadingPlanner.pairs(SurveyShape.whole(3).panelNodes())) {
      bare.add(Reading.distance(pair.from(), pair.to(), 3, 0.002));
    }
    Adjustment none = Survey.of(SurveyShape.whole(3), bare).adjust().orThrow();
    assertThat(none.degreesOfFreedom()).isZero();
    assertThat(none.globalTest()).isEmpty();
    assertThatThrownBy(() -> AdjustmentSummary.globalTest(none, Steps.none()))
        .hasMessageContaining("degrees of freedom");
  }

  /** All nodes in one plane: distances hold them in it, and only levels hold it flat. */
  @Test
  void aFlatFrameAsksForLevels() {
    SurveyShape flat = SurveyShape.whole(4).meant(new SurveyShape.Ideal(3, 1e-5, 0));
    List<Reading> readings = new ArrayList<>();
    for (SurveyShape.PanelEdge pair : ReadingPlanner.pairs(flat.panelNodes())) {
      boolean hip = pair.to().equals(Node.APEX);
      boolean across = pair.to().number() - pair.from().number() == 2;
      double length = hip ? 3 : across ? 6 : 3 * Math.sqrt(2);
      readings.add(Reading.distance(pair.from(), pair.to(), length, 0.002));
    }
    Deficiency deficiency = (Deficiency) Survey.of(flat, readings).adjust();
    assertThat(deficiency.missing()).as("five heights, less a shift and two turns").isEqualTo(2);
    assertThat(deficiency.suggestions())
        .hasSize(2)
        .allMatch(s -> s.quantity() == Deficiency.Quantity.HEIGHT_DIFFERENCE);
    assertThat(deficiency.message()).contains("best: height difference B");
  }

  /** One distance holds neither a corner nor the mark: two more are needed for each. */
  @Test
  void looseNodesAreNamedInOrder() {
    Map<Node, Vector3D> frame = TestFrames.bent(6, false, 3, 3.5, 0.05, 3);
    List<Reading> readings = new ArrayList<>();
    for (SurveyShape.PanelEdge pair : ReadingPlanner.pairs(List.copyOf(frame.keySet()))) {
      boolean ofCorner = pair.from().equals(B3) || pair.to().equals(B3);
      boolean ofMark = pair.to().equals(Node.CENTRE);
      if ((!ofCorner && !ofMark) || pair.from().equals(B1)) {
        double length = frame.get(pair.from()).distance(frame.get(pair.to()));
        readings.add(Reading.distance(pair.from(), pair.to(), length, 0.002));
      }
    }
    Deficiency deficiency = (Deficiency) Survey.of(SurveyShape.whole(6), readings).adjust();
    assertThat(deficiency.looseNodes()).containsExactly(B3, Node.CENTRE);
    assertThat(deficiency.missing()).isEqualTo(4);
    assertThat(deficiency.message()).startsWith("readings: 4 more are needed to fix B3, C; best: ");
  }

  /** Of two readings of a line the middle is taken, of the lines the distances come first. */
  @Test
  void theUsualUncertainty() {
    Reading level = new Reading.HeightDifference(B1, B3, 0, 0.5, "");
    List<Reading> readings = new ArrayList<>(List.of(level));
    assertThat(ReadingPlanner.usualUncertainty(readings)).isEqualTo(0.5);
    for (double u : new double[] {0.003, 0.001, 0.002}) {
      readings.add(Reading.distance(B1, B3, 1, u));
    }
    assertThat(ReadingPlanner.usualUncertainty(readings)).isEqualTo(0.002);
    assertThat(ReadingPlanner.pairs(List.of(B1, B3, Node.APEX)))
        .extracting(SurveyShape.PanelEdge::name)
        .containsExactly("B1-B3", "B1-A", "B3-A");
  }

  /** Turns and shifts of a body of four nodes, of which a level sees two turns. */
  @Test
  void motionsThatNoReadingSees() {
    List<Reading> readings = new ArrayList<>();
    List<Node> nodes = List.of(B1, Node.base(2), B3, Node.APEX);
    double[][] places = {{0, 0, 0}, {3, 0, 0}, {0, 4, 0}, {1, 1, 2}};
    for (int i = 0; i < 4; i++) {
      for (int j = i + 1; j < 4; j++) {
        readings.add(Reading.distance(nodes.get(i), nodes.get(j), 1, 0.002));
      }
    }
    Map<Node, Integer> at = Map.of(B1, 0, Node.base(2), 1, B3, 2, Node.APEX, 3);
    NetworkModel model = new NetworkModel(at, places, new boolean[4][3], readings);
    double[][] six = model.freeMotions(model.start());
    assertThat(six).hasDimensions(6, 12);
    DesignRow row = new DesignRow(9);
    for (double[] motion : six) {
      assertThat(FreeMotions.dot(motion, motion)).isCloseTo(1, within(1e-12));
      for (int i = 0; i < readings.size(); i++) {
        model.evaluate(i, model.start(), row);
        assertThat(row.dot(motion)).isCloseTo(0, within(1e-12));
      }
    }
    readings.add(new Reading.HeightDifference(B1, B3, 0, 0.002, ""));
    NetworkModel levelled = new NetworkModel(at, places, new boolean[4][3], readings);
    assertThat(levelled.freeMotions(levelled.start())).hasDimensions(5, 12);
    // The last three of four nodes held: nothing moves.
    boolean[][] held = {
      {false, false, false}, {true, true, true}, {true, true, true}, {true, true, true}
    };
    NetworkModel fixed = new NetworkModel(at, places, held, readings);
    assertThat(fixed.freeMotions(fixed.start())).isEmpty();
    assertThat(fixed.unknowns()).isEqualTo(3);
    assertThat(fixed.start()).containsExactly(0, 0, 0);
    assertThat(LooseMotions.of(model, new Cancellation())).isEmpty();
  }

  /** The start keeps its middle and turns, and takes the size of what was read. */
  @Test
  void theDatumTakesTheSizeOfTheFrame() {
    double[][] places = {{1, 0, 0}, {4, 0, 0}, {1, 4, 0}};
    Map<Node, Integer> at = Map.of(B1, 0, Node.base(2), 1, B3, 2);
    List<Reading> readings = List.of(Reading.distance(B1, B3, 1, 0.002));
    NetworkModel model = new NetworkModel(at, places, new boolean[3][3], readings);
    double[] twice = model.start();
    for (int i = 0; i < 9; i++) {
      twice[i] = 2 * twice[i] + 5;
    }
    double[] datum = model.datum(twice);
    double[] middle = {2, 4 / 3.0, 0};
    for (int i = 0; i < 9; i++) {
      assertThat(datum[i])
          .isCloseTo(middle[i % 3] + 2 * (model.start()[i] - middle[i % 3]), within(1e-12));
    }
    double[] reversed = model.start();
    for (int i = 0; i < 9; i++) {
      reversed[i] = -reversed[i];
    }
    assertThat(model.datum(reversed)).containsExactly(model.start(), within(1e-12));
    boolean[][] held = new boolean[3][3];
    held[0][0] = true;
    NetworkModel fixed = new NetworkModel(at, places, held, readings);
    assertThat(fixed.datum(new double[8])).containsExactly(fixed.start(), within(1e-12));
  }

  /** A weight hung from the apex: 1 m along a line of 5 m, 2 m aside of it. */
  @Test
  void aPlumbOffsetIsMeasuredAlongItsLine() {
    Node c = Node.CENTRE;
    Map<Node, Integer> at = Map.of(Node.APEX, 0, c, 1, B1, 2);
    // The line runs 3 on 4; along it 1 m is 0.6, 0.8, aside 2 m is -1.6, 1.2.
    double[][] places = {{1 + 0.6 - 1.6, 1 + 0.8 + 1.2, 7}, {1, 1, 0}, {4, 5, 0.3}};
    Reading.PlumbOffset plumb = new Reading.PlumbOffset(Node.APEX, c, B1, 1.25, 0.003, "");
    NetworkModel model = new NetworkModel(at, places, new boolean[3][3], List.of(plumb));
    DesignRow row = new DesignRow(9);
    assertThat(model.evaluate(0, model.start(), row)).isCloseTo(0.25, within(1e-12));
    assertThat(model.weight(0)).isCloseTo(1 / 9e-6, within(1e-6));
    double[] slope = new double[9];
    for (int k = 0; k < row.size(); k++) {
      slope[row.index(k)] += row.coefficient(k);
    }
    // Along for the weight; the line turned at its end by 2 m aside over 5 m.
    double[] expected = {0.6, 0.8, 0, -0.6 + 0.32, -0.8 - 0.24, 0, -0.32, 0.24, 0};
    assertThat(slope).containsExactly(expected, within(1e-12));
  }
}
