package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.source.SourceStatus;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Published adjustments through the same network core, with some coordinates held. */
class PublishedNetworksTest {

  private static final Source MAHUN =
      Source.found("J. Mahun", "Least squares lite, chapter D: matrix method", "", "levelling");
  private static final Source RING =
      Source.found("", "Sample printout of a levelling network adjustment, 1-D", "", "");
  private static final Source GHILANI =
      new Source(
          "C. Ghilani, P. Wolf",
          "Adjustment computations",
          "",
          "chapter 14, first trilateration: inputs found, outputs recomputed",
          SourceStatus.DERIVED);

  private final Map<Node, Integer> places = new HashMap<>();
  private final List<double[]> coordinates = new ArrayList<>();
  private final List<boolean[]> held = new ArrayList<>();
  private final List<Reading> readings = new ArrayList<>();

  private static OutsideCheck check(String what, Source source) {
    return OutsideCheck.of("geometry.survey", what, source);
  }

  private Node height(Node node, double z, boolean fixed) {
    places.put(node, places.size());
    coordinates.add(new double[] {0, 0, z});
    held.add(new boolean[] {true, true, fixed});
    return node;
  }

  private Node plan(Node node, double x, double y, boolean fixed) {
    places.put(node, places.size());
    coordinates.add(new double[] {x, y, 0});
    held.add(new boolean[] {fixed, fixed, true});
    return node;
  }

  private void rise(Node from, Node to, double metres, double u) {
    readings.add(new Reading.HeightDifference(from, to, metres, u, ""));
  }

  private NetworkModel model() {
    return new NetworkModel(
        places, coordinates.toArray(double[][]::new), held.toArray(boolean[][]::new), readings);
  }

  private List<ReadingResult> results(NetworkModel model, GaussNewton.Solution solution, double s) {
    return ReadingTests.of(model, solution, readings, s, Optional.of(3.29));
  }

  @Test
  void eightLinesTwoUnknownsFourBenchmarks() {
    Node a = height(Node.base(1), 806.520, true);
    Node b = height(Node.base(2), 818.320, true);
    Node c = height(Node.base(3), 820.120, true);
    Node d = height(Node.base(4), 824.040, true);
    Node q = height(Node.opening(1), 815, false);
    Node r = height(Node.opening(2), 803, false);
    rise(a, q, 8.91, 1);
    rise(b, q, -2.92, 1);
    rise(c, q, -4.67, 1);
    rise(d, q, -8.66, 1);
    rise(a, r, -3.56, 1);
    rise(c, r, -17.12, 1);
    rise(d, r, -21.10, 1);
    rise(q, r, -12.47, 1);
    NetworkModel model = model();
    GaussNewton.Solution solution = GaussNewton.solve(model, new Cancellation()).orElseThrow();
    check("level net A, height Q, ft", MAHUN)
        .expect(815.418)
        .within(0.0005)
        .got(solution.unknowns()[0]);
    check("level net A, height R, ft", MAHUN)
        .expect(802.962)
        .within(0.0005)
        .got(solution.unknowns()[1]);
    double s0 = Math.sqrt(solution.weightedSquares() / 6);
    List<ReadingResult> results = results(model, solution, s0);
    double[] lines = {8.898, -2.902, -4.702, -8.622, -3.558, -17.158, -21.078, -12.456};
    double[] redundancy = {0.78947, 0.78947, 0.78947, 0.78947, 0.73684, 0.73684, 0.73684, 0.63158};
    Source recomputed = Source.derived("level net A, redundancy numbers recomputed");
    for (int i = 0; i < lines.length; i++) {
      check("level net A, adjusted line " + (i + 1) + ", ft", MAHUN)
          .expect(lines[i])
          .within(0.0005)
          .got(results.get(i).adjusted());
      check("level net A, redundancy of line " + (i + 1), recomputed)
          .expect(redundancy[i])
          .within(1e-5)
          .got(results.get(i).redundancy());
    }
    assertThat(solution.cofactors()[0][0]).isCloseTo(4 / 19.0, within(1e-12));
    assertThat(solution.cofactors()[0][1]).isCloseTo(1 / 19.0, within(1e-12));
    assertThat(solution.cofactors()[1][1]).isCloseTo(5 / 19.0, within(1e-12));
    check("level net A, s.d. of Q, ft", MAHUN)
        .expect(0.013)
        .within(0.001)
        .got(s0 * Math.sqrt(solution.cofactors()[0][0]));
    // Printed S0 0.028 and s.d. of R 0.014: the data give 0.0290 and 0.0149.
    assertThat(s0).isCloseTo(0.02905, within(1e-5)).isGreaterThan(0.0285);
    assertThat(s0 * Math.sqrt(solution.cofactors()[1][1]))
        .isCloseTo(0.01490, within(1e-5))
        .isGreaterThan(0.0145);
  }

  @Test
  void withoutLineEightTheMeansAreSimple() {
    Node a = height(Node.base(1), 806.520, true);
    Node b = height(Node.base(2), 818.320, true);
    Node c = height(Node.base(3), 820.120, true);
    Node d = height(Node.base(4), 824.040, true);
    Node q = height(Node.opening(1), 815, false);
    Node r = height(Node.opening(2), 803, false);
    rise(a, q, 8.91, 1);
    rise(b, q, -2.92, 1);
    rise(c, q, -4.67, 1);
    rise(d, q, -8.66, 1);
    rise(a, r, -3.56, 1);
    rise(c, r, -17.12, 1);
    rise(d, r, -21.10, 1);
    GaussNewton.Solution solution = GaussNewton.solve(model(), new Cancellation()).orElseThrow();
    Source chapterB =
        Source.found("J. Mahun", "Least squares lite, chapter B: brute force", "", "");
    check("seven lines, Q, ft", chapterB).expect(815.415).within(5e-4).got(solution.unknowns()[0]);
    check("seven lines, R, ft", chapterB).expect(802.967).within(5e-4).got(solution.unknowns()[1]);
    check("seven lines, sum of squares, ft²", chapterB)
        .expect(0.004767)
        .within(1e-6)
        .got(solution.weightedSquares());
  }

  @Test
  void closedRingLevelledBothWays() {
    Node one = height(Node.base(1), 1000, true);
    Node two = height(Node.base(2), 999, false);
    Node three = height(Node.base(3), 998, false);
    Node four = height(Node.base(4), 999, false);
    double u = 0.005;
    rise(one, four, -1.225, u);
    rise(four, three, -0.848, u);
    rise(three, two, 1.342, u);
    rise(two, one, 0.720, u);
    rise(one, two, -0.724, u);
    rise(two, three, -1.335, u);
    rise(three, four, 0.842, u);
    rise(four, one, 1.231, u);
    NetworkModel model = model();
    GaussNewton.Solution solution = GaussNewton.solve(model, new Cancellation()).orElseThrow();
    double[] heights = {999.27487, 997.93325, 998.77513};
    double[] sd = {3.1, 3.5, 3.1};
    for (int i = 0; i < 3; i++) {
      check("ring, height " + (i + 2) + ", m", RING)
          .expect(heights[i])
          .within(1e-5)
          .got(solution.unknowns()[i]);
      check("ring, s.d. of height " + (i + 2) + ", mm", RING)
          .expect(sd[i])
          .within(0.05)
          .got(1000 * Math.sqrt(solution.cofactors()[i][i]));
    }
    double sumMm = solution.weightedSquares() * 25;
    check("ring, [pvv] in mm²", RING).expect(146.625).within(0.001).got(sumMm);
    check("ring, m0 a posteriori, mm", RING).expect(5.42).within(0.005).got(Math.sqrt(sumMm / 5));
    List<ReadingResult> results = results(model, solution, 1);
    check("ring, normalised residual of 2 to 3", RING)
        .expect(1.68)
        .within(0.005)
        .got(Math.abs(results.get(5).statistic().get()));
    double[] lines = {-1.22488, -0.84187, 1.34163, 0.72513};
    for (int i = 0; i < 4; i++) {
      check("ring, adjusted line " + (i + 1) + ", m", RING)
          .expect(lines[i])
          .within(1e-5)
          .got(results.get(i).adjusted());
    }
    results.forEach(r -> assertThat(r.redundancy()).isCloseTo(0.625, within(1e-9)));
  }

  @Test
  void ringWithoutBenchmarkIsFree() {
    Node one = height(Node.base(1), 0, false);
    Node two = height(Node.base(2), 0, false);
    Node three = height(Node.base(3), 0, false);
    rise(one, two, 0.010, 0.002);
    rise(two, three, -0.004, 0.002);
    rise(three, one, -0.003, 0.002);
    NetworkModel model = model();
    assertThat(model.freeMotions(model.start()).length).isEqualTo(1);
    GaussNewton.Solution solution = GaussNewton.solve(model, new Cancellation()).orElseThrow();
    double sum = solution.unknowns()[0] + solution.unknowns()[1] + solution.unknowns()[2];
    assertThat(sum).isCloseTo(0, within(1e-12));
    assertThat(solution.unknowns()[1] - solution.unknowns()[0]).isCloseTo(0.009, within(1e-12));
  }

  @Test
  void trilateration() {
    Node a = plan(Node.base(1), 865.40, 4527.15, true);
    Node b = plan(Node.base(2), 2432.55, 2047.25, true);
    Node c = plan(Node.base(3), 2865.22, 27.15, true);
    Node u = plan(Node.APEX, 6800, 3700, false);
    readings.add(Reading.distance(a, u, 6049.00, 1));
    readings.add(Reading.distance(b, u, 4736.83, 1));
    readings.add(Reading.distance(c, u, 5446.49, 1));
    NetworkModel model = model();
    GaussNewton.Solution solution = GaussNewton.solve(model, new Cancellation()).orElseThrow();
    check("trilateration, x, ft", GHILANI)
        .expect(6861.3168)
        .within(1e-3)
        .got(solution.unknowns()[0]);
    check("trilateration, y, ft", GHILANI)
        .expect(3727.8186)
        .within(1e-3)
        .got(solution.unknowns()[1]);
    double s0 = Math.sqrt(solution.weightedSquares());
    check("trilateration, S0, ft", GHILANI).expect(0.0977).within(1e-4).got(s0);
    check("trilateration, s.d. x, ft", GHILANI)
        .expect(0.0775)
        .within(1e-4)
        .got(s0 * Math.sqrt(solution.cofactors()[0][0]));
    check("trilateration, s.d. y, ft", GHILANI)
        .expect(0.1542)
        .within(1e-4)
        .got(s0 * Math.sqrt(solution.cofactors()[1][1]));
    double[] residuals = {-0.0374, 0.0768, -0.0474};
    List<ReadingResult> results = results(model, solution, 1);
    for (int i = 0; i < 3; i++) {
      check("trilateration, residual " + (i + 1) + ", ft", GHILANI)
          .expect(residuals[i])
          .within(1e-3)
          .got(results.get(i).residual());
    }
  }

  @Test
  void theStartDecidesBetweenMirrorTwins() {
    Node a = plan(Node.base(1), 865.40, 4527.15, true);
    Node b = plan(Node.base(2), 2432.55, 2047.25, true);
    Node u = plan(Node.APEX, -2000, 0, false);
    readings.add(Reading.distance(a, u, 6049.00, 1));
    readings.add(Reading.distance(b, u, 4736.83, 1));
    GaussNewton.Solution west = GaussNewton.solve(model(), new Cancellation()).orElseThrow();
    assertThat(west.weightedSquares()).isCloseTo(0, within(1e-9));
    assertThat(west.unknowns()[0]).isLessThan(0);
    coordinates.set(2, new double[] {6800, 3700, 0});
    GaussNewton.Solution east = GaussNewton.solve(model(), new Cancellation()).orElseThrow();
    assertThat(east.weightedSquares()).isCloseTo(0, within(1e-9));
    assertThat(east.unknowns()[0]).isGreaterThan(6000);
  }
}
