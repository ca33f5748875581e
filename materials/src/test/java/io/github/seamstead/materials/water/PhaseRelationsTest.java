package io.github.seamstead.materials.water;

import static io.github.seamstead.materials.water.PhaseQuantity.BULK_DENSITY;
import static io.github.seamstead.materials.water.PhaseQuantity.DRY_DENSITY;
import static io.github.seamstead.materials.water.PhaseQuantity.MOISTURE;
import static io.github.seamstead.materials.water.PhaseQuantity.SATURATION;
import static io.github.seamstead.materials.water.PhaseQuantity.SPECIFIC_GRAVITY;
import static io.github.seamstead.materials.water.PhaseQuantity.VOID_RATIO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PhaseRelationsTest {

  private static final double GAMMA = 9.81;
  private static final Source VENKATRAMAIAH =
      Source.found("Venkatramaiah", "Geotechnical Engineering", "", "example 2.1");
  private static final Source DERIVED =
      Source.derived("Craig, Soil Mechanics: printed sample, answers worked by hand");
  private static final Source ANSWERS =
      Source.found("", "Soil mechanics problem set with answers", "", "0.0183 m3 sample");
  private static final Source COURSE =
      new Source(
          "",
          "Course hand-out, 2040 kg/m3 at 20 %",
          "",
          "quoted on a secondary page",
          io.github.seamstead.shared.source.SourceStatus.FOUND);

  private static void check(
      String what, Source source, double expected, double tolerance, double got) {
    OutsideCheck.of("materials.water", what, source).expect(expected).within(tolerance).got(got);
  }

  @Test
  void bulkUnitWeightMoistureAndGravity() {
    StepRecorder steps = new StepRecorder();
    PhaseState state =
        PhaseRelations.solve(
            Map.of(
                BULK_DENSITY, 19_800 / GAMMA,
                MOISTURE, 0.11,
                SPECIFIC_GRAVITY, 2.70),
            1000,
            steps);
    check("dry unit weight, kN/m3", VENKATRAMAIAH, 17.84, 0.005, state.dryDensity() * GAMMA / 1000);
    check("void ratio", VENKATRAMAIAH, 0.485, 0.0005, state.voidRatio());
    check("saturation, %", VENKATRAMAIAH, 61.24, 0.02, state.saturation() * 100);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.water.phases", "phases"), state.saturation());
  }

  @Test
  void weighedSamples() {
    PhaseState answers = PhaseRelations.ofSample(30.6, 27.2, 0.0183, 2.65);
    check("30.6 kg sample: moisture, %", ANSWERS, 12.5, 0.05, answers.moisture() * 100);
    check("30.6 kg sample: void ratio", ANSWERS, 0.783, 0.0005, answers.voidRatio());
    check("30.6 kg sample: porosity", ANSWERS, 0.439, 0.0005, answers.porosity());
    check("30.6 kg sample: saturation, %", ANSWERS, 42.3, 0.05, answers.saturation() * 100);
    PhaseState craig = PhaseRelations.ofSample(2.290, 2.035, 1.15e-3, 2.68);
    check("2290 g sample: bulk density, t/m3", DERIVED, 1.991, 0.0005, craig.bulkDensity() / 1000);
    check("2290 g sample: void ratio", DERIVED, 0.514, 0.0006, craig.voidRatio());
    check("2290 g sample: saturation, %", DERIVED, 65.3, 0.06, craig.saturation() * 100);
    check("2290 g sample: air content", DERIVED, 0.118, 0.0005, craig.airContent());
  }

  @Test
  void removingWaterFromDensitySample() {
    PhaseState state =
        PhaseRelations.solve(Map.of(BULK_DENSITY, 2040.0, MOISTURE, 0.20, SPECIFIC_GRAVITY, 2.65));
    check("2040 kg/m3 at 20 %: void ratio", COURSE, 0.559, 0.0005, state.voidRatio());
    check("2040 kg/m3 at 20 %: saturation, %", COURSE, 94.8, 0.05, state.saturation() * 100);
    check(
        "600 g brought from 20 to 10 %: water to remove, g",
        COURSE, 50, 1e-9, -Moisture.waterToAdd(600, 0.20, 0.10, Steps.none()));
  }

  @Test
  void voidRatioMoistureAndGravityGiveTheDensity() {
    PhaseState state =
        PhaseRelations.solve(Map.of(MOISTURE, 0.175, VOID_RATIO, 0.87, SPECIFIC_GRAVITY, 2.69));
    Source problem = Source.derived("textbook problem w 17.5 %, e 0.87, G 2.69, worked by hand");
    check("w 17.5 %, e 0.87: saturation, %", problem, 54.1, 0.05, state.saturation() * 100);
    check(
        "w 17.5 %, e 0.87: bulk unit weight, kN/m3",
        problem, 16.58, 0.005, state.bulkDensity() * GAMMA / 1000);
    check(
        "w 17.5 %, e 0.87: water to saturate 10 m3, m3",
        problem, 2.14, 0.006, state.waterToSaturate() / 100);
  }

  @Test
  void setsThatOnlyAReckoningOfAllThreeSolves() {
    PhaseState state =
        PhaseRelations.solve(Map.of(SATURATION, 0.9, MOISTURE, 0.15, BULK_DENSITY, 2050.0));
    assertThat(state.bulkDensity()).isCloseTo(2050, within(1e-9));
    assertThat(state.saturation()).isCloseTo(0.9, within(1e-12));
    assertThat(state.moisture()).isCloseTo(0.15, within(1e-12));
  }

  @Test
  void tooLittleOrContradictingIsNamed() {
    assertThatThrownBy(
            () ->
                PhaseRelations.solve(
                    Map.of(BULK_DENSITY, 2000.0, MOISTURE, 0.1, DRY_DENSITY, 2000 / 1.1)))
        .hasMessageContaining("must be three quantities that do not follow from each other");
    assertThatThrownBy(() -> PhaseRelations.solve(Map.of())).hasMessageContaining("given nothing");
    assertThatThrownBy(
            () ->
                PhaseRelations.solve(
                    Map.of(
                        BULK_DENSITY,
                        2000.0,
                        MOISTURE,
                        0.1,
                        DRY_DENSITY,
                        1700.0,
                        SPECIFIC_GRAVITY,
                        2.65)))
        .hasMessageContaining("contradicts");
    assertThatThrownBy(
            () ->
                PhaseRelations.solve(
                    Map.of(BULK_DENSITY, 2200.0, MOISTURE, 0.3, SPECIFIC_GRAVITY, 2.65)))
        .hasMessageContaining("degree of saturation");
    assertThatThrownBy(() -> PhaseRelations.solve(Map.of(DRY_DENSITY, 0.2, MOISTURE, 3.0)))
        .hasMessageContaining("dry density: given 0.2 kg/m3");
  }
}
