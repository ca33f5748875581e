package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Small nets whose sums stand in handbooks or follow from their symmetry. */
class SurveyByHandTest {

  private static final Source LEVEL_NET =
      Source.fromMemory(
          "C. Ghilani, P. Wolf",
          "Adjustment computations",
          "",
          "chapter 12, seven-line level net, recomputed");
  private static final Source THREE_SUMS =
      Source.fromMemory(
          "C. Ghilani, P. Wolf", "Adjustment computations", "", "chapter 11, recomputed");
  private static final Source COMPLETE =
      Source.derived(
          "redundancy of a complete net of equal weights, from its states of self-stress");

  private final Map<Node, Integer> places = new HashMap<>();
  private final List<double[]> coordinates = new ArrayList<>();
  private final List<boolean[]> held = new ArrayList<>();
  private final List<Reading> readings = new ArrayList<>();

  private Node node(Node node, Vector3D at, boolean x, boolean y, boolean z) {
    places.put(node, places.size());
    coordinates.add(at.toArray());
    held.add(new boolean[] {x, y, z});
    return node;
  }

  private Node height(Node node, double z, boolean fixed) {
    return node(node, Vector3D.of(0, 0, z), true, true, fixed);
  }

  private void rise(Node from, Node to, double metres, double u) {
    readings.add(new Reading.HeightDifference(from, to, metres, u, ""));
  }

  private NetworkModel model() {
    return new NetworkModel(
        places, coordinates.toArray(double[][]::new), held.toArray(boolean[][]::new), readings);
  }

  private static GaussNewton.Solution solve(ObservationModel model) {
    return GaussNewton.solve(model, new Cancellation()).orElseThrow();
  }

  private List<ReadingResult> results() {
    NetworkModel model = model();
    return ReadingTests.of(model, solve(model), readings, 1, Optional.of(3.29));
  }

  private static OutsideCheck check(String what, Source source) {
    return OutsideCheck.of("geometry.survey", what, source);
  }

  private void levelNet(double... miles) {
    Node x = height(Node.base(1), 100, true);
    Node y = height(Node.base(2), 107.5, true);
    Node a = height(Node.opening(1), 105, false);
    Node b = height(Node.opening(2), 104, false);
    Node c = height(Node.opening(3), 106, false);
    double[] u = new double[7];
    for (int i = 0; i < 7; i++) {
      u[i] = Math.sqrt(miles[i] / 12);
    }
    rise(x, a, 5.10, u[0]);
    rise(a, y, 2.34, u[1]);
    rise(y, c, -1.25, u[2]);
    rise(c, x, -6.13, u[3]);
    rise(a, b, -0.68, u[4]);
    rise(y, b, -3.00, u[5]);
    rise(b, c, 1.70, u[6]);
  }

  @Test
  void sevenLinesWeightedByTheirLength() {
    levelNet(4, 3, 2, 3, 2, 2, 2);
    GaussNewton.Solution solution = solve(model());
    double[] heights = {105.150, 104.489, 106.197};
    for (int i = 0; i < 3; i++) {
      check("seven lines weighted, height " + "ABC".charAt(i) + ", ft", LEVEL_NET)
          .expect(heights[i])
          .within(5e-4)
          .got(solution.unknowns()[i]);
    }
    check("seven lines weighted, S0, ft", LEVEL_NET)
        .expect(0.107)
        .within(5e-4)
        .got(Math.sqrt(solution.weightedSquares() / 4));
  }

  @Test
  void sevenLinesOfEqualWeight() {
    levelNet(12, 12, 12, 12, 12, 12, 12);
    double[] residuals = {0.0410, 0.0190, -0.0624, -0.0576, 0.0219, -0.0171, 0.0048};
    int[] redundancies = {13, 13, 13, 13, 10, 12, 10};
    List<ReadingResult> results = results();
    Source derived = Source.derived("normal equations of the seven-line level net by hand");
    for (int i = 0; i < 7; i++) {
      ReadingResult r = results.get(i);
      check("seven lines, residual " + (i + 1) + ", ft", derived)
          .expect(residuals[i])
          .within(5e-5)
          .got(r.residual());
      check("seven lines, redundancy " + (i + 1), derived)
          .expect(redundancies[i] / 21.0)
          .within(1e-9)
          .got(r.redundancy());
      // w = v / (u sqrt r), and the error that shows with 80 % power.
      assertThat(r.statistic().orElseThrow())
          .isCloseTo(residuals[i] / Math.sqrt(redundancies[i] / 21.0), within(1e-4));
      assertThat(r.minimalDetectableError().orElseThrow())
          .isCloseTo(4.1321 / Math.sqrt(redundancies[i] / 21.0), within(1e-3));
      assertThat(r.suspect()).isFalse();
      // Without the reading its line comes out at v / r from it.
      Uncertain others = r.predictedByOthers().orElseThrow();
      double part = redundancies[i] / 21.0;
      assertThat(others.value() - r.reading().value()).isCloseTo(residuals[i] / part, within(2e-4));
      assertThat(others.standardUncertainty())
          .isCloseTo(Math.sqrt((1 - part) / part), within(1e-9));
    }
  }

  /** x + y = 3.0, 2x - y = 1.5, x - y = 0.2: 6x - 2y = 6.2 and -2x + 3y = 1.3. */
  @Test
  void threeSumsOfTwoUnknowns() {
    double[][] rows = {{1, 1}, {2, -1}, {1, -1}};
    double[] right = {3.0, 1.5, 0.2};
    GaussNewton.Solution solution = solve(new Linear(rows, right, new double[0][]));
    double[] expected = {1.514, 1.443};
    for (int i = 0; i < 2; i++) {
      check("three equations, " + "xy".charAt(i), THREE_SUMS)
          .expect(expected[i])
          .within(5e-4)
          .got(solution.unknowns()[i]);
    }
    assertThat(solution.unknowns()[0]).isCloseTo(21.2 / 14, within(1e-12));
    assertThat(solution.unknowns()[1]).isCloseTo(20.2 / 14, within(1e-12));
    assertThat(solution.weightedSquares()).isCloseTo(0.36 / 14, within(1e-12));
    // The inverse of the normal matrix 6 -2 -2 3.
    assertThat(solution.cofactors()[0]).containsExactly(new double[] {3 / 14.0, 2 / 14.0}, CLOSE);
    assertThat(solution.cofactors()[1]).containsExactly(new double[] {2 / 14.0, 6 / 14.0}, CLOSE);
    assertThat(solution.steps()).isLessThanOrEqualTo(2);
  }

  /** x + y = 2 alone: of all solutions the one nearest to where it starts, at 0, 0. */
  @Test
  void oneSumOfTwoUnknowns() {
    double half = Math.sqrt(0.5);
    double[][] motions = {{half, -half}};
    GaussNewton.Solution solution =
        solve(new Linear(new double[][] {{1, 1}}, new double[] {2}, motions));
    assertThat(solution.unknowns()).containsExactly(new double[] {1, 1}, within(1e-9));
    // The sum is known to 1, so each half of it to a half; their difference not at all.
    assertThat(solution.cofactors()[0]).containsExactly(new double[] {0.25, 0.25}, CLOSE);
  }

  private static final org.assertj.core.data.Offset<Double> CLOSE = within(1e-12);

  /** Sums of unknowns, of unit weight. */
  private record Linear(double[][] rows, double[] right, double[][] motions)
      implements ObservationModel {

    @Override
    public int unknowns() {
      return rows[0].length;
    }

    @Override
    public int observations() {
      return rows.length;
    }

    @Override
    public int mostPerObservation() {
      return unknowns();
    }

    @Override
    public double[] start() {
      return new double[unknowns()];
    }

    @Override
    public double weight(int observation) {
      return 1;
    }

    @Override
    public double evaluate(int observation, double[] x, DesignRow row) {
      row.clear();
      double sum = 0;
      for (int i = 0; i < x.length; i++) {
        row.add(i, rows[observation][i]);
        sum += rows[observation][i] * x[i];
      }
      return right[observation] - sum;
    }

    @Override
    public double[][] freeMotions(double[] x) {
      return motions;
    }
  }

  /** Every corner of a regular polygon in the plane with every other, as built. */
  private void completePolygon(int sides) {
    for (int i = 1; i <= sides; i++) {
      double turn = 2 * Math.PI * i / sides;
      node(Node.base(i), Vector3D.of(Math.cos(turn), Math.sin(turn), 0), false, false, true);
    }
    for (int i = 1; i <= sides; i++) {
      for (int j = i + 1; j <= sides; j++) {
        double length = 2 * Math.sin(Math.PI * (j - i) / sides);
        readings.add(Reading.distance(Node.base(i), Node.base(j), length, 0.001));
      }
    }
  }

  private void assertRedundancies(int sides, double... byChord) {
    completePolygon(sides);
    double sum = 0;
    for (ReadingResult r : results()) {
      int steps = r.reading().nodes().get(1).number() - r.reading().nodes().get(0).number();
      int chord = Math.min(steps, sides - steps);
      check("polygon of " + sides + ", " + r.reading().name() + ": redundancy", COMPLETE)
          .expect(byChord[chord - 1])
          .within(5e-7)
          .got(r.redundancy());
      sum += r.redundancy();
    }
    // Two coordinates a corner, less the three motions of the plane.
    assertThat(sum).isCloseTo(sides * (sides - 1) / 2.0 - 2 * sides + 3, within(1e-9));
  }

  @Test
  void redundanciesOfASquare() {
    assertRedundancies(4, 1 / 8.0, 1 / 4.0);
    for (ReadingResult r : results()) {
      boolean side = r.reading().value() < 1.5;
      check("square, " + r.reading().name() + ": minimal detectable error over sigma", COMPLETE)
          .expect(side ? 11.69 : 8.26)
          .within(0.005)
          .got(r.minimalDetectableError().orElseThrow() / 0.001);
    }
  }

  @Test
  void redundanciesOfAHexagon() {
    assertRedundancies(6, 13 / 36.0, 15 / 36.0, 16 / 36.0);
  }

  @Test
  void redundanciesOfAnOctagon() {
    assertRedundancies(8, 0.509153, 0.531250, 0.553347, 0.5625);
  }

  /** All base distances, all hips, and levels of the base from one instrument. */
  private List<ReadingResult> pyramid(int sides, double height) {
    completePolygon(sides);
    for (int i = 0; i < sides; i++) {
      held.get(i)[2] = false;
    }
    node(Node.APEX, Vector3D.of(0, 0, height), false, false, false);
    node(Node.CENTRE, Vector3D.of(0, 0, 1), true, true, false);
    for (int i = 1; i <= sides; i++) {
      readings.add(Reading.distance(Node.base(i), Node.APEX, Math.hypot(1, height), 0.001));
      rise(Node.CENTRE, Node.base(i), -1, 0.001);
    }
    return results();
  }

  private void assertPyramid(int sides, double height, double hip, double level, double within) {
    places.clear();
    coordinates.clear();
    held.clear();
    readings.clear();
    for (ReadingResult r : pyramid(sides, height)) {
      if (r.reading() instanceof Reading.HeightDifference) {
        check("pyramid of " + sides + ", height " + height + ", level: redundancy", COMPLETE)
            .expect(level)
            .within(within)
            .got(r.redundancy());
      } else if (r.reading().nodes().contains(Node.APEX)) {
        check("pyramid of " + sides + ", height " + height + ", hip: redundancy", COMPLETE)
            .expect(hip)
            .within(within)
            .got(r.redundancy());
      }
    }
  }

  @Test
  void levelsControlHips() {
    assertPyramid(4, 0.5, 5 / 32.0, 1 / 32.0, 1e-9);
    assertPyramid(4, 1, 1 / 7.0, 1 / 14.0, 1e-9);
    assertPyramid(4, 2, 5 / 38.0, 2 / 19.0, 1e-9);
    assertPyramid(5, 1, 0.23529, 0.11765, 5e-6);
    assertPyramid(6, 0.5, 0.34091, 0.06818, 5e-6);
    assertPyramid(8, 2, 0.33784, 0.27027, 5e-6);
  }

  /** Without levels nothing controls a hip, at any height. */
  @Test
  void withoutLevelsNothingControlsAHip() {
    completePolygon(5);
    for (int i = 0; i < 5; i++) {
      held.get(i)[2] = false;
    }
    node(Node.APEX, Vector3D.of(0, 0, 1.5), false, false, false);
    for (int i = 1; i <= 5; i++) {
      readings.add(Reading.distance(Node.base(i), Node.APEX, Math.hypot(1, 1.5), 0.001));
    }
    assertThat(results().stream().filter(r -> r.reading().nodes().contains(Node.APEX)))
        .hasSize(5)
        .allSatisfy(
            r -> {
              assertThat(r.redundancy()).isCloseTo(0, within(1e-9));
              assertThat(r.statistic()).isEmpty();
              assertThat(r.minimalDetectableError()).isEmpty();
              assertThat(r.predictedByOthers()).isEmpty();
              assertThat(r.isControlled()).isFalse();
            });
  }

  /** 4 2 2 3: the factor is 2 0 1 sqrt 2, its inverse 3/8 -1/4 -1/4 1/2. */
  @Test
  void aMatrixOfTwoRows() {
    double[][] matrix = {{4, 2}, {2, 3}};
    Cholesky factor = Cholesky.of(matrix, new Cancellation()).orElseThrow();
    assertThat(factor.solve(new double[] {10, 9})).containsExactly(new double[] {1.5, 2}, CLOSE);
    double[][] inverse = factor.inverse();
    assertThat(inverse[0]).containsExactly(new double[] {0.375, -0.25}, CLOSE);
    assertThat(inverse[1]).containsExactly(new double[] {-0.25, 0.5}, CLOSE);
    assertThat(matrix[1]).as("left as it was").containsExactly(2, 3);
    assertThat(Cholesky.of(new double[][] {{4, 2}, {2, 1}}, new Cancellation())).isEmpty();
    assertThat(Cholesky.of(new double[][] {{4, 2}, {2, 0.5}}, new Cancellation())).isEmpty();
    // 4 2 0, 2 5 2, 0 2 5: rows of the factor 2; 1 2; 0 1 2.
    Cholesky three =
        Cholesky.of(new double[][] {{4, 2, 0}, {2, 5, 2}, {0, 2, 5}}, new Cancellation())
            .orElseThrow();
    assertThat(three.solve(new double[] {8, 18, 19}))
        .containsExactly(new double[] {1, 2, 3}, CLOSE);
    assertThat(three.inverse()[2])
        .containsExactly(new double[] {4 / 64.0, -8 / 64.0, 16 / 64.0}, CLOSE);
  }

  @Test
  void aRowOfDerivatives() {
    DesignRow row = new DesignRow(3);
    row.add(2, 3);
    row.add(-1, 7);
    row.add(0, -1);
    assertThat(row.size()).isEqualTo(2);
    assertThat(row.dot(new double[] {10, 20, 30})).isEqualTo(80);
    double[][] q = {{2, 0, 1}, {0, 5, 0}, {1, 0, 4}};
    assertThat(row.times(q)).containsExactly(1, 0, 11);
    assertThat(row.form(q, row)).isEqualTo(32);
    double[][] lower = {{0}, {0, 0}, {0, 0, 0}};
    double[] right = new double[3];
    row.accumulate(2, 5, lower, right);
    assertThat(right).containsExactly(-10, 0, 30);
    assertThat(lower[0]).containsExactly(2);
    assertThat(lower[2]).containsExactly(-6, 0, 18);
    row.clear();
    assertThat(row.size()).isZero();
  }
}
