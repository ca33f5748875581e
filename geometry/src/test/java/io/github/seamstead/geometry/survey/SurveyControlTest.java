package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.Deficiency.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class SurveyControlTest {

  /** Five sides taped whole without levels: sides, chords, hips, and two chords again. */
  private static List<Reading> withoutLevels(Map<Node, Vector3D> nodes) {
    List<Reading> readings = new ArrayList<>();
    SurveyShape shape = SurveyShape.whole(5);
    for (int i = 1; i <= 5; i++) {
      readings.add(taped(nodes, shape.baseCorner(i), shape.baseCorner(i + 1)));
    }
    for (int i = 1; i <= 5; i++) {
      readings.add(taped(nodes, shape.baseCorner(i), Node.APEX));
    }
    for (int i = 1; i <= 7; i++) {
      readings.add(taped(nodes, shape.baseCorner(i), shape.baseCorner(i + 2)));
    }
    return readings;
  }

  /** To the millimetre, as a tape is read. */
  private static Reading taped(Map<Node, Vector3D> nodes, Node a, Node b) {
    double read = Math.round(nodes.get(a).distance(nodes.get(b)) * 1000) / 1000.0;
    return new Reading.Distance(a, b, read, 0.002, "");
  }

  /** Edges and one diagonal of every face, and what the deficiency then asks for. */
  private static List<Reading> withoutControl() {
    Map<Node, Vector3D> nodes = TestFrames.bent(6, true, 3, 3.5, 0.03, 3);
    SurveyShape shape = SurveyShape.truncated(6);
    List<Reading> readings = new ArrayList<>();
    for (SurveyShape.PanelEdge edge : shape.panelEdges()) {
      readings.add(taped(nodes, edge.from(), edge.to()));
    }
    for (int i = 1; i <= 6; i++) {
      readings.add(taped(nodes, shape.baseCorner(i), shape.hipTop(i + 1)));
    }
    if (Survey.of(shape, readings).adjust() instanceof Deficiency deficiency) {
      deficiency.suggestions().forEach(s -> readings.add(taped(nodes, s.from(), s.to())));
    }
    return readings;
  }

  @Test
  void aSurveyWithNothingToSpareSaysThatNothingWasChecked() {
    List<Reading> readings = new ArrayList<>(withoutControl());
    Adjustment adjustment = Survey.of(SurveyShape.truncated(6), readings).adjust().orThrow();
    assertThat(adjustment.degreesOfFreedom()).isZero();
    SurveyControl control = adjustment.control();
    assertThat(control.isNothingChecked()).isTrue();
    assertThat(control.isAllControlled()).isFalse();
    // All edges and diagonals of the faces; the rest was read only to hold the frame together.
    assertThat(control.uncontrolled()).hasSize(24);
    assertThat(readings).hasSize(30);
    assertThat(control.message())
        .startsWith("nothing could be checked: 0 readings to spare")
        .contains("take at least these before cutting: distance ");
    // With the proposed readings taken, every reading is controlled.
    assertThat(with(adjustment, control.proposed()).control().isAllControlled()).isTrue();
    assertThat(control.proposed()).noneMatch(CheckReading::repeats);
  }

  private static Adjustment with(Adjustment adjustment, List<CheckReading> checks) {
    List<Reading> readings = new ArrayList<>(adjustment.survey().readings());
    for (CheckReading c : checks) {
      readings.add(
          c.quantity() == Quantity.DISTANCE
              ? Reading.distance(
                  c.from(), c.to(), adjustment.distance(c.from(), c.to()).value(), 0.002)
              : new Reading.HeightDifference(
                  c.from(),
                  c.to(),
                  adjustment.heightDifference(c.from(), c.to()).value(),
                  0.002,
                  ""));
    }
    return Survey.of(adjustment.survey().shape(), readings).adjust().orThrow();
  }

  @Test
  void hipsOfAWholePyramidAreControlledByLevelsAlone() {
    Map<Node, Vector3D> nodes = TestFrames.bent(5, false, 2.5, 2.2, 0.02, 4);
    Adjustment adjustment =
        Survey.of(SurveyShape.whole(5), withoutLevels(nodes)).adjust().orThrow();
    assertThat(adjustment.degreesOfFreedom()).isEqualTo(5);
    SurveyControl control = adjustment.control();
    assertThat(control.uncontrolled())
        .extracting(r -> r.reading().name())
        .containsExactly("B1-A", "B2-A", "B3-A", "B4-A", "B5-A");
    assertThat(control.message())
        .startsWith("nothing controls B1-A, B2-A, B3-A, B4-A, B5-A: an error there goes unseen");
    assertThat(control.proposed())
        .extracting(CheckReading::text)
        .containsExactly(
            "height difference B1-B2",
            "height difference B1-B3",
            "height difference B1-B4",
            "height difference B1-B5");
    assertThat(with(adjustment, control.proposed()).control().isAllControlled()).isTrue();
  }

  @Test
  void aSoundSurveyIsControlledThroughout() {
    SurveyControl control =
        TestFrames.survey(8, false, 0.03, 0.002, 5).adjust().orThrow().control();
    assertThat(control.isAllControlled()).isTrue();
    assertThat(control.isNothingChecked()).isFalse();
    assertThat(control.proposed()).isEmpty();
    assertThat(control.message()).startsWith("every reading that a panel depends on is controlled");
  }

  /** The wrong hip is off the regular frame by decimetres, all else by centimetres. */
  @Test
  void aHipAFootTooLongIsNamedAndNoGoodReadingIsThrownOut() {
    for (int seed = 1; seed <= 10; seed++) {
      Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(5, false, 2.5, 2.2, 0.02, seed));
      List<Reading> readings = withoutLevels(nodes);
      Reading hip = readings.get(9);
      assertThat(hip.name()).isEqualTo("B5-A");
      readings.set(9, Reading.distance(Node.base(5), Node.APEX, hip.value() + 0.305, 0.002));
      BlunderReport report = Survey.of(SurveyShape.whole(5), readings).findBlunders();
      assertThat(report.undecided()).isTrue();
      assertThat(report.blunders()).extracting(b -> b.reading().name()).containsExactly("B5-A");
      Blunder blunder = report.blunders().get(0);
      assertThat(blunder.cause()).isEqualTo(Blunder.Cause.UNCONTROLLED);
      assertThat(blunder.isCertain()).isFalse();
      assertThat(String.join("; ", blunder.hints())).contains("one foot too long");
      // The accepted hip is uncertain by what such frames are bent, and right within that.
      double exact = nodes.get(Node.base(5)).distance(nodes.get(Node.APEX));
      var accepted = report.accepted().distance(Node.base(5), Node.APEX);
      assertThat(accepted.standardUncertainty()).isGreaterThan(0.005);
      assertThat(accepted.value()).isCloseTo(exact, within(4 * accepted.standardUncertainty()));
      assertThat(report.control().message()).contains("height difference B1-B2");
    }
  }

  @Test
  void predictionsByOthersAreScaledWhereUncertaintiesAreEstimated() {
    Survey known = TestFrames.survey(8, false, 0.03, 0.02, 6);
    List<Reading> tenth =
        known.readings().stream()
            .map(r -> r.withUncertainty(r.standardUncertainty() / 10))
            .toList();
    Adjustment a = known.adjust().orThrow();
    Adjustment b = new Survey(known.shape(), tenth, SigmaBasis.ESTIMATED).adjust().orThrow();
    double factor = Math.sqrt(a.weightedSquares() / a.degreesOfFreedom());
    for (int i = 0; i < a.readings().size(); i++) {
      var expected = a.readings().get(i).predictedByOthers().orElseThrow();
      var scaled = b.readings().get(i).predictedByOthers().orElseThrow();
      assertThat(scaled.value()).isCloseTo(expected.value(), within(1e-7));
      assertThat(scaled.standardUncertainty())
          .isCloseTo(factor * expected.standardUncertainty(), within(1e-7));
    }
  }
}
