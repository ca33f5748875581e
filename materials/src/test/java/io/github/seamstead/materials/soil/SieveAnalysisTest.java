package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SieveAnalysisTest {

  private static final Source DAS =
      Source.found("Das", "Principles of Geotechnical Engineering", "", "examples of chapter 2");
  private static final double[] EIGHT = {4.75, 2.0, 0.85, 0.425, 0.25, 0.18, 0.15, 0.075};
  private static final double[] SEVEN = {4.75, 2.0, 0.85, 0.425, 0.25, 0.15, 0.075};

  @Test
  void dasExample() {
    check(
        analysis(EIGHT, 12, 0, 40, 60, 89, 140, 122, 210, 56),
        100,
        94.5,
        86.3,
        74.1,
        54.9,
        38.1,
        9.3,
        1.7);
  }

  @Test
  void dasProblem() {
    check(
        analysis(SEVEN, 31.2, 0, 21.6, 49.5, 102.6, 89.1, 95.6, 60.4),
        100,
        95.2,
        84.2,
        61.4,
        41.6,
        20.4,
        7.0);
  }

  @Test
  void diametersReadOnTheLogarithmicAxis() {
    GradingCurve curve = analysis(EIGHT, 12, 0, 40, 60, 89, 140, 122, 210, 56).curve();
    double[][] rows = {{0.1, 0.1506}, {0.3, 0.1710}, {0.6, 0.2881}};
    Source derived = Source.derived("log-linear reading of Das, example 2.1");
    for (double[] row : rows) {
      OutsideCheck.of("materials.soil", "D" + (int) (row[0] * 100) + ", mm", derived)
          .expect(row[1])
          .within(0.0002)
          .got(curve.diameterAt(row[0]) * 1000);
    }
    GradingCurve problem = analysis(SEVEN, 31.2, 0, 21.6, 49.5, 102.6, 89.1, 95.6, 60.4).curve();
    // Read off by eye in the book (0.41, 0.185 and 0.09 mm), hence a tenth.
    OutsideCheck.of("materials.soil", "Cu of Das, problem 2.1", DAS)
        .expect(4.56)
        .withinRatio(0.10)
        .got(problem.uniformity());
    OutsideCheck.of("materials.soil", "Cc of Das, problem 2.1", DAS)
        .expect(0.928)
        .withinRatio(0.10)
        .got(problem.curvature());
  }

  @Test
  void finesTellTheSandShare() {
    SieveAnalysis sieves =
        new SieveAnalysis(
            List.of(
                new SieveAnalysis.Sieve(0.004, 0.2),
                new SieveAnalysis.Sieve(0.002, 0.1),
                new SieveAnalysis.Sieve(0.063e-3, 0.42)),
            0.28,
            true);
    SoilFinding finding = SoilAssessment.assess(List.of(sieves));
    assertThat(finding.gravelRatio().orElseThrow().value()).isCloseTo(0.3, within(1e-12));
    // 0.42 of 0.70 is coarser than 0.063 mm; a little more than 0.05 mm.
    assertThat(finding.texture().sand().value()).isBetween(0.60, 0.66);
  }

  @Test
  void derivationFollows() {
    StepRecorder steps = new StepRecorder();
    List<Double> finer =
        analysis(SEVEN, 31.2, 0, 21.6, 49.5, 102.6, 89.1, 95.6, 60.4).finerRatios(steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.soil.sieve_analysis", "sieve analysis"),
        finer.get(finer.size() - 1));
  }

  @Test
  void sievesOutOfOrderAreNamed() {
    assertThatThrownBy(() -> analysis(new double[] {0.5, 2}, 1, 1, 1))
        .hasMessageContaining("sieve 2 (2 mm) must be finer");
  }

  private static void check(SieveAnalysis analysis, double... percent) {
    List<Double> finer = analysis.finerRatios();
    for (int i = 0; i < percent.length; i++) {
      OutsideCheck.of("materials.soil", "per cent finer, sieve " + (i + 1), DAS)
          .expect(percent[i])
          .within(0.1)
          .got(finer.get(i) * 100);
    }
  }

  private static SieveAnalysis analysis(double[] openingsMm, double pan, double... held) {
    List<SieveAnalysis.Sieve> sieves = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      sieves.add(new SieveAnalysis.Sieve(openingsMm[i] / 1000, held[i] / 1000));
    }
    return new SieveAnalysis(sieves, pan / 1000, true);
  }
}
