package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProctorCurveTest {

  private static final double GAMMA = 9.81;
  private static final double MOULD = 943.3e-6;
  private static final Source DAS =
      Source.found("Das", "Principles of Geotechnical Engineering", "9th ed. SI", "problem 6.4");
  private static final Source DAS_66 = DAS.at("problem 6.6");
  private static final double[][] PROBLEM_64 = {
    {1.68, 8.6, 1640.0},
    {1.88, 10.6, 1802.0},
    {2.13, 12.5, 2007.1},
    {2.10, 14.9, 1937.5},
    {1.83, 16.7, 1662.4},
    {1.65, 18.3, 1478.6}
  };
  private static final double[][] PROBLEM_66 = {
    {1.668, 7.0, 1652.5},
    {1.723, 8.9, 1677.2},
    {1.800, 12.3, 1699.2},
    {1.850, 14.8, 1708.3},
    {1.873, 17.3, 1692.7},
    {1.868, 18.5, 1671.1}
  };

  private static List<ProctorPoint> points(double[][] rows, Source source) {
    List<ProctorPoint> points = new ArrayList<>();
    for (double[] row : rows) {
      ProctorPoint point = ProctorPoint.ofCylinder(row[0], MOULD, row[1] / 100);
      OutsideCheck.of("materials.water", "dry density at " + row[1] + " %, kg/m3", source)
          .expect(row[2])
          .within(0.11)
          .got(point.dryDensity());
      points.add(point);
    }
    return points;
  }

  @Test
  void aTopAboveTheZeroAirVoidsLineGivesWayToTheDensestPossiblePoint() {
    ProctorCurve curve = ProctorCurve.fit(points(PROBLEM_64, DAS), Optional.of(2.69));
    OutsideCheck.of("materials.water", "optimum moisture, %", DAS)
        .expect(12.5)
        .within(0.05)
        .got(curve.optimumMoisture().likely() * 100);
    OutsideCheck.of("materials.water", "maximum dry density, kg/m3", DAS)
        .expect(2010)
        .within(5)
        .got(curve.maximumDryDensity().likely());
    assertThat(curve.fittedLine(5)).isEmpty();
    // The problem's own cylinder at 14.9 % lies above the line for G 2.69.
    assertThat(curve.remarks()).anyMatch(r -> r.contains("14.9 %"));
    PhaseState top =
        PhaseRelations.solve(
            java.util.Map.of(
                PhaseQuantity.DRY_DENSITY, curve.maximumDryDensity().likely(),
                PhaseQuantity.MOISTURE, curve.optimumMoisture().likely(),
                PhaseQuantity.SPECIFIC_GRAVITY, 2.69));
    OutsideCheck.of("materials.water", "void ratio at the optimum", DAS)
        .expect(0.34)
        .within(0.005)
        .got(top.voidRatio());
    OutsideCheck.of("materials.water", "saturation at the optimum, %", DAS)
        .expect(98.8)
        .within(0.7)
        .got(top.saturation() * 100);
    OutsideCheck.of(
            "materials.water",
            "relative compaction of 19.46 kN/m3 at 13.7 %, %",
            DAS.at("problem 6.5"))
        .expect(86.8)
        .within(0.2)
        .got(100 * curve.relativeCompaction(19_460 / GAMMA / 1.137));
  }

  @Test
  void theOptimumIsNotTheHeaviestCylinder() {
    StepRecorder steps = new StepRecorder();
    ProctorCurve curve = ProctorCurve.fit(points(PROBLEM_66, DAS_66), Optional.empty(), steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.water.proctor", "test"), curve.maximumDryDensity().likely());
    assertThat(curve.optimumMoisture().likely()).isBetween(0.14, 0.15);
    assertThat(curve.maximumDryDensity().likely()).isBetween(1708.0, 1712.0);
    assertThat(curve.zeroAirVoidsLine(5)).isEmpty();
  }

  @Test
  void aSecondSetWhoseHeaviestCylinderIsWetter() {
    double[][] rows = {
      {1.68, 9.9, 1620.5},
      {1.71, 10.6, 1639.0},
      {1.77, 12.1, 1673.9},
      {1.83, 13.8, 1704.7},
      {1.86, 15.1, 1713.1},
      {1.88, 17.4, 1697.6},
      {1.87, 19.4, 1660.3},
      {1.85, 21.2, 1618.2}
    };
    Source set = Source.derived("compaction data set with a 943.3 cm3 mould, worked by hand");
    ProctorCurve curve = ProctorCurve.fit(points(rows, set), Optional.empty());
    assertThat(curve.optimumMoisture().likely()).isBetween(0.148, 0.160);
    OutsideCheck.of("materials.water", "field 1705 kg/m3 at 10.5 %, relative compaction, %", set)
        .expect(90.1)
        .within(0.2)
        .got(100 * curve.relativeCompaction(1705 / 1.105));
  }

  @ParameterizedTest
  @CsvSource({"2.66, 11, 20.18", "2.66, 15, 18.65", "2.66, 19, 17.33", "2.66, 23, 16.18"})
  void zeroAirVoids(double gravity, double percent, double unitWeight) {
    StepRecorder steps = new StepRecorder();
    double density = ProctorCurve.zeroAirVoids(gravity, percent / 100, 1, steps);
    OutsideCheck.of(
            "materials.water",
            "zero-air-voids unit weight at " + percent + " %, kN/m3",
            DAS.at("problem 6.3"))
        .expect(unitWeight)
        .within(0.012)
        .got(density * GAMMA / 1000);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.water.zero-air-voids", "line"), density);
  }

  @Test
  void aParabolaIsFoundExactly() {
    List<ProctorPoint> points = new ArrayList<>();
    for (double w : new double[] {0.08, 0.11, 0.125, 0.15, 0.17}) {
      points.add(new ProctorPoint(w, 1900 - 60_000 * (w - 0.13) * (w - 0.13)));
    }
    ProctorCurve curve = ProctorCurve.fit(points, Optional.of(2.65));
    assertThat(curve.optimumMoisture().likely()).isCloseTo(0.13, within(1e-12));
    assertThat(curve.maximumDryDensity().likely()).isCloseTo(1900, within(1e-8));
    assertThat(curve.zeroAirVoidsLine(9)).hasSize(9);
    assertThat(curve.fittedLine(21))
        .hasSize(21)
        .allSatisfy(
            p ->
                assertThat(p.dryDensity())
                    .isCloseTo(1900 - 60_000 * Math.pow(p.moisture() - 0.13, 2), within(1e-8)));
    assertThat(curve.remarks()).isEmpty();
  }

  @Test
  void anOptimumOutsideTheTestIsRefused() {
    List<ProctorPoint> rising =
        List.of(
            new ProctorPoint(0.08, 1700),
            new ProctorPoint(0.1, 1750),
            new ProctorPoint(0.12, 1790));
    assertThatThrownBy(() -> ProctorCurve.fit(rising, Optional.empty()))
        .hasMessageContaining("must have a wetter one beside it");
    assertThatThrownBy(() -> ProctorCurve.fit(rising.subList(0, 2), Optional.empty()))
        .hasMessageContaining("3 or more");
  }
}
