package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class DeficiencyTest {

  private static final double U = 0.002;

  private final Map<Node, Vector3D> frame = TestFrames.bent(6, false, 3, 3.5, 0.05, 3);

  private Reading tape(Node a, Node b) {
    return Reading.distance(a, b, frame.get(a).distance(frame.get(b)), U);
  }

  /** Sides and hips of a hexagonal frame: it can rack in 6 - 3 ways. */
  private List<Reading> sidesAndHips() {
    List<Reading> readings = new ArrayList<>();
    SurveyShape shape = SurveyShape.whole(6);
    for (int i = 1; i <= 6; i++) {
      readings.add(tape(shape.baseCorner(i), shape.baseCorner(i + 1)));
      readings.add(tape(shape.baseCorner(i), Node.APEX));
    }
    return readings;
  }

  @Test
  void aWireFrameCanRack() {
    SurveyOutcome outcome = Survey.of(SurveyShape.whole(6), sidesAndHips()).adjust();
    assertThat(outcome).isInstanceOf(Deficiency.class);
    Deficiency deficiency = (Deficiency) outcome;
    assertThat(deficiency.missing()).isEqualTo(3);
    assertThat(deficiency.suggestions()).hasSize(3);
    assertThat(deficiency.looseNodes()).contains(Node.base(1));
    assertThat(deficiency.message()).contains("3 more are needed").contains("distance B");
    assertThatThrownBy(outcome::orThrow).hasMessage(deficiency.message());
  }

  /** What is suggested does fix it: an independent count of the rank by taking the readings. */
  @Test
  void takingTheSuggestionsFixesTheFrame() {
    List<Reading> readings = sidesAndHips();
    Deficiency deficiency = (Deficiency) Survey.of(SurveyShape.whole(6), readings).adjust();
    for (Deficiency.Suggestion suggestion : deficiency.suggestions()) {
      assertThat(Survey.of(SurveyShape.whole(6), readings).adjust()).isInstanceOf(Deficiency.class);
      assertThat(suggestion.quantity()).isEqualTo(Deficiency.Quantity.DISTANCE);
      readings.add(tape(suggestion.from(), suggestion.to()));
    }
    Adjustment adjustment = Survey.of(SurveyShape.whole(6), readings).adjust().orThrow();
    assertThat(adjustment.degreesOfFreedom()).isZero();
    assertThat(adjustment.globalTest()).isEmpty();
    assertThat(adjustment.outlierTest().kind()).isEqualTo(OutlierTest.Kind.NONE);
    for (EdgeLength edge : adjustment.edges()) {
      double exact = frame.get(edge.edge().from()).distance(frame.get(edge.edge().to()));
      assertThat(edge.length().value())
          .isEqualTo(exact, org.assertj.core.api.Assertions.within(1e-8));
    }
  }

  /** The first suggestion is the best single one: no other pair fixes the last freedom better. */
  @Test
  void theSuggestionIsTheSharpest() {
    List<Reading> readings = sidesAndHips();
    readings.add(tape(Node.base(1), Node.base(3)));
    readings.add(tape(Node.base(3), Node.base(5)));
    Deficiency deficiency = (Deficiency) Survey.of(SurveyShape.whole(6), readings).adjust();
    assertThat(deficiency.missing()).isEqualTo(1);
    Deficiency.Suggestion best = deficiency.suggestions().get(0);
    double bestWorst = worstWith(readings, best.from(), best.to());
    for (SurveyShape.PanelEdge pair : ReadingPlanner.pairs(SurveyShape.whole(6).panelNodes())) {
      List<Reading> more = new ArrayList<>(readings);
      more.add(tape(pair.from(), pair.to()));
      if (Survey.of(SurveyShape.whole(6), more).adjust() instanceof Adjustment) {
        // Trace of the covariance up to the bend of the frame.
        assertThat(bestWorst).isLessThan(1.1 * worstWith(readings, pair.from(), pair.to()));
      }
    }
  }

  private double worstWith(List<Reading> readings, Node a, Node b) {
    List<Reading> more = new ArrayList<>(readings);
    more.add(tape(a, b));
    Adjustment adjustment = Survey.of(SurveyShape.whole(6), more).adjust().orThrow();
    double trace = 0;
    for (int i = 0; i < adjustment.cofactors().length; i++) {
      trace += adjustment.cofactors()[i][i];
    }
    return trace;
  }

  @Test
  void aCornerWithoutReadingsIsNamed() {
    List<Reading> readings =
        TestFrames.readings(frame, 6, false, 0.001, 1).stream()
            .filter(r -> !r.nodes().contains(Node.base(4)))
            .toList();
    Deficiency deficiency = (Deficiency) Survey.of(SurveyShape.whole(6), readings).adjust();
    assertThat(deficiency.missing()).isEqualTo(3);
    assertThat(deficiency.looseNodes()).containsExactly(Node.base(4));
    assertThat(deficiency.suggestions()).allSatisfy(s -> assertThat(s.text()).contains("B4"));
  }

  @Test
  void theCentreOfAFlatBaseNeedsMoreThanSpokes() {
    List<Reading> readings = sidesAndHips();
    readings.add(tape(Node.base(1), Node.base(3)));
    readings.add(tape(Node.base(3), Node.base(5)));
    readings.add(tape(Node.base(2), Node.base(4)));
    readings.add(tape(Node.base(1), Node.base(4)));
    for (int i = 1; i <= 6; i++) {
      readings.add(tape(Node.base(i), Node.CENTRE));
    }
    Deficiency deficiency = (Deficiency) Survey.of(SurveyShape.whole(6), readings).adjust();
    assertThat(deficiency.missing()).isEqualTo(1);
    assertThat(deficiency.looseNodes()).containsExactly(Node.CENTRE);
    assertThat(deficiency.suggestions().get(0).text()).contains("A-C");
  }

  @Test
  void twinsAreFoundWhereOnlyDistancesFromOnePlaneFixANode() {
    List<Reading> readings = new ArrayList<>(TestFrames.readings(frame, 6, false, 0.001, 1));
    Adjustment adjustment = Survey.of(SurveyShape.whole(6), readings).adjust().orThrow();
    assertThat(adjustment.position(Node.APEX).getZ()).isGreaterThan(3);
    // The bent base is no plane, so a hip reading would tell; on a flat one the twin fits.
    Map<Node, Vector3D> flat = TestFrames.bent(6, false, 3, 3.5, 0, 3);
    Adjustment regular =
        Survey.of(SurveyShape.whole(6), TestFrames.readings(flat, 6, false, 0, 1))
            .adjust()
            .orThrow();
    assertThat(regular.mirrorTwins()).hasSize(1);
    MirrorTwin twin = regular.mirrorTwins().get(0);
    assertThat(twin.node()).isEqualTo(Node.APEX);
    assertThat(twin.apart()).isEqualTo(7.0, org.assertj.core.api.Assertions.within(1e-6));
    assertThat(twin.twin().getZ()).isNegative();
  }

  @Test
  void badInputIsNamed() {
    SurveyShape six = SurveyShape.whole(6);
    assertThatThrownBy(() -> Survey.of(six, List.of()))
        .hasMessageContaining("readings: given none");
    assertThatThrownBy(
            () -> Survey.of(six, List.of(Reading.distance(Node.base(7), Node.base(1), 3, U))))
        .hasMessage("reading 1 (B7-B1): given node B7, corners go from 1 to 6");
    assertThatThrownBy(
            () -> Survey.of(six, List.of(Reading.distance(Node.opening(2), Node.base(1), 3, U))))
        .hasMessageContaining("no opening");
    assertThatThrownBy(() -> Reading.distance(Node.base(1), Node.base(1), 3, U))
        .hasMessageContaining("must be two different nodes");
    assertThatThrownBy(() -> Reading.distance(Node.base(1), Node.base(2), -3, U))
        .hasMessage("distance B1-B2: given -3 m, must be greater than 0 m");
    assertThatThrownBy(() -> Reading.distance(Node.base(1), Node.base(2), 3, Double.NaN))
        .hasMessageContaining("standard uncertainty of B1-B2");
    assertThatThrownBy(() -> Node.parse("D4")).hasMessageContaining("node: given \"D4\"");
    assertThatThrownBy(() -> SurveyShape.whole(2)).hasMessageContaining("sides: given 2");
    assertThatThrownBy(() -> new SurveyShape.Ideal(3, 3, 3)).hasMessageContaining("below the apex");
    assertThat(Node.parse(" b12 ")).isEqualTo(Node.base(12));
    assertThat(Node.parse("apex")).isEqualTo(Node.APEX);
    assertThat(Node.parse("Center")).isEqualTo(Node.CENTRE);
  }
}
