package io.github.seamstead.shared.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The estimates meet the exact indices of two published test functions. */
class SensitivityRunsTest {

  private static final Source ISHIGAMI =
      Source.fromMemory(
          "T. Ishigami, T. Homma",
          "An importance quantification technique in uncertainty analysis for computer models",
          "1990",
          "with a = 7, b = 0.1, as tabled in A. Saltelli and others, Sensitivity Analysis, 2000");
  private static final Source SOBOL_G =
      Source.fromMemory(
          "I. M. Sobol'",
          "Sensitivity estimates for nonlinear mathematical models",
          "1993",
          "the g-function: V_i = 1 / (3 (1 + a_i)^2)");

  private static final double A = 7;
  private static final double B = 0.1;
  private static final double[] G = {0, 1, 4.5, 9, 99, 99, 99, 99};

  private static double ishigami(double[] u) {
    double[] x = new double[3];
    for (int i = 0; i < 3; i++) {
      x[i] = Math.PI * (2 * u[i] - 1);
    }
    double sine = Math.sin(x[1]);
    return Math.sin(x[0]) + A * sine * sine + B * Math.pow(x[2], 4) * Math.sin(x[0]);
  }

  private static double g(double[] u) {
    double product = 1;
    for (int i = 0; i < G.length; i++) {
      product *= (Math.abs(4 * u[i] - 2) + G[i]) / (1 + G[i]);
    }
    return product;
  }

  private static SensitivityRuns run(SensitivityDesign design, ToDoubleFunction<double[]> model) {
    SensitivityDesign.Samples samples = design.samples();
    int n = design.points();
    double[] a = new double[n];
    double[] b = new double[n];
    double[][] mixed = new double[design.groups().size()][n];
    for (int i = 0; i < n; i++) {
      a[i] = model.applyAsDouble(samples.a(i));
      b[i] = model.applyAsDouble(samples.b(i));
      for (int group = 0; group < mixed.length; group++) {
        mixed[group][i] = model.applyAsDouble(samples.mixed(group, i));
      }
    }
    return new SensitivityRuns(a, b, mixed, design.seed());
  }

  /** The exact indices from the published variances, not the printed roundings of them. */
  private static double[][] exactIshigami() {
    double pi4 = Math.pow(Math.PI, 4);
    double v1 = 0.5 * Math.pow(1 + B * pi4 / 5, 2);
    double v2 = A * A / 8;
    double v13 = B * B * pi4 * pi4 * 8 / 225;
    double v = v1 + v2 + v13;
    return new double[][] {{v1 / v, v2 / v, 0}, {(v1 + v13) / v, v2 / v, v13 / v}, {v}};
  }

  @Test
  void ishigamiIsMetWithinItsStandardErrors() {
    SensitivityRuns runs = run(SensitivityDesign.of(3, 16_384, 1), SensitivityRunsTest::ishigami);
    double[][] exact = exactIshigami();
    List<SensitivityIndex> indices = runs.indices();
    assertThat(runs.variance()).isCloseTo(exact[2][0], within(0.02 * exact[2][0]));
    for (int i = 0; i < 3; i++) {
      SensitivityIndex index = indices.get(i);
      assertThat(index.first().standardUncertainty()).isBetween(1e-4, 0.03);
      assertThat(index.total().standardUncertainty()).isBetween(1e-4, 0.02);
      assertThat(index.first().value())
          .isCloseTo(exact[0][i], within(4 * index.first().standardUncertainty()));
      assertThat(index.total().value())
          .isCloseTo(exact[1][i], within(4 * index.total().standardUncertainty()));
    }
  }

  @Test
  void theExactIndicesAreThePrintedOnes() {
    double[][] exact = exactIshigami();
    OutsideCheck.of("shared.sensitivity", "Ishigami function: first-order index of x1", ISHIGAMI)
        .expect(0.3139)
        .within(5e-5)
        .got(exact[0][0]);
    OutsideCheck.of("shared.sensitivity", "Ishigami function: first-order index of x2", ISHIGAMI)
        .expect(0.4424)
        .within(5e-5)
        .got(exact[0][1]);
    OutsideCheck.of("shared.sensitivity", "Ishigami function: total index of x1", ISHIGAMI)
        .expect(0.5576)
        .within(5e-5)
        .got(exact[1][0]);
    OutsideCheck.of("shared.sensitivity", "Ishigami function: total index of x3", ISHIGAMI)
        .expect(0.2437)
        .within(5e-5)
        .got(exact[1][2]);
  }

  @Test
  void theEstimateOfTheLargestIshigamiIndexIsThePublishedOne() {
    SensitivityRuns runs = run(SensitivityDesign.of(3, 32_768, 7), SensitivityRunsTest::ishigami);
    double scatter = 3 * runs.indices().get(0).total().standardUncertainty();
    assertThat(scatter).as("narrow enough to tell a wrong estimate").isLessThan(0.03);
    OutsideCheck.of("shared.sensitivity", "Ishigami function: estimate of the total of x1", ISHIGAMI)
        .expect(0.5576)
        .within(scatter)
        .got(runs.indices().get(0).total().value());
  }

  @Test
  void sobolsGFunctionIsMetWithinItsStandardErrors() {
    SensitivityRuns runs = run(SensitivityDesign.of(G.length, 16_384, 3), SensitivityRunsTest::g);
    double all = 1;
    for (double a : G) {
      all *= 1 + partial(a);
    }
    double variance = all - 1;
    for (int i = 0; i < G.length; i++) {
      double first = partial(G[i]) / variance;
      double total = partial(G[i]) * (all / (1 + partial(G[i]))) / variance;
      SensitivityIndex index = runs.indices().get(i);
      assertThat(index.first().value())
          .isCloseTo(first, within(4 * index.first().standardUncertainty() + 1e-4));
      assertThat(index.total().value())
          .isCloseTo(total, within(4 * index.total().standardUncertainty() + 1e-5));
    }
    OutsideCheck.of("shared.sensitivity", "g-function of 8 inputs: first-order index of x1", SOBOL_G)
        .expect(0.7165)
        .within(4 * runs.indices().get(0).first().standardUncertainty())
        .got(runs.indices().get(0).first().value());
  }

  private static double partial(double a) {
    return 1 / (3 * (1 + a) * (1 + a));
  }

  @Test
  void aGroupOfInputsCountsAsOne() {
    SensitivityDesign grouped = new SensitivityDesign(List.of(1, 2), 16_384, 5);
    SensitivityRuns runs = run(grouped, SensitivityRunsTest::ishigami);
    double[][] exact = exactIshigami();
    // The second group holds x2 and x3: first order V2, total 1 - V1.
    SensitivityIndex index = runs.indices().get(1);
    assertThat(index.first().value())
        .isCloseTo(exact[0][1], within(4 * index.first().standardUncertainty()));
    assertThat(index.total().value())
        .isCloseTo(1 - exact[0][0], within(4 * index.total().standardUncertainty()));
  }

  @Test
  void standardErrorsFallWithTheRootOfThePoints() {
    double few =
        run(SensitivityDesign.of(3, 1_024, 2), SensitivityRunsTest::ishigami)
            .indices()
            .get(0)
            .total()
            .standardUncertainty();
    double many =
        run(SensitivityDesign.of(3, 16_384, 2), SensitivityRunsTest::ishigami)
            .indices()
            .get(0)
            .total()
            .standardUncertainty();
    assertThat(few / many).isBetween(2.5, 6.5);
  }

  @Test
  void equalSeedsGiveEqualPointsAndOthersDoNot() {
    double[] point = SensitivityDesign.of(4, 64, 9).samples().a(5);
    assertThat(SensitivityDesign.of(4, 64, 9).samples().a(5)).isEqualTo(point);
    assertThat(SensitivityDesign.of(4, 64, 10).samples().a(5)).isNotEqualTo(point);
  }

  @Test
  void aConstantHasNoIndices() {
    SensitivityRuns runs = run(SensitivityDesign.of(2, 32, 1), point -> 12.5);
    assertThat(runs.moves()).isFalse();
    assertThat(runs.indices())
        .allSatisfy(
            index -> {
              assertThat(index.first().value()).isZero();
              assertThat(index.total().value()).isZero();
            });
  }

  @Test
  void theStepsFollowToTheIndices() {
    SensitivityRuns runs = run(SensitivityDesign.of(3, 256, 1), SensitivityRunsTest::ishigami);
    StepRecorder first = new StepRecorder();
    double s = runs.first(1, first);
    DerivationChecks.assertFollowsTo(first.derivation("shared.sensitivity.first", "first"), s);
    StepRecorder total = new StepRecorder();
    double t = runs.total(1, total);
    DerivationChecks.assertFollowsTo(total.derivation("shared.sensitivity.total", "total"), t);
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThatThrownBy(
            () ->
                new SensitivityRuns(
                    new double[] {1, Double.NaN}, new double[] {1, 2}, new double[0][], 1))
        .hasMessageContaining("result of the model");
    assertThatThrownBy(
            () -> new SensitivityRuns(new double[] {1, 2}, new double[] {1}, new double[0][], 1))
        .hasMessageContaining("points of B");
  }
}
