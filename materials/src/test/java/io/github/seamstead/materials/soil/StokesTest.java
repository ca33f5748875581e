package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StokesTest {

  private static final Source TABLE = Source.derived("Stokes' law with IAPWS 2008 viscosity");
  private static final Source PIPETTE =
      Source.fromMemory("", "International pipette method", "", "sampling times");

  @ParameterizedTest
  @CsvSource({
    "10,2,0.10,36310", "10,2,0.05,18155", "15,2,0.10,31619", "20,2,0.10,27825", "20,2,0.05,13912",
    "25,2,0.10,24708", "30,2,0.10,22113", "20,20,0.10,278", "20,50,0.10,44.5", "10,50,0.10,58.1",
    "30,63,0.10,22.3", "20,63,0.10,28.0"
  })
  void settlingTimes(double celsius, double micrometres, double depth, double seconds) {
    OutsideCheck.of(
            "materials.soil",
            "settling time, s: "
                + micrometres
                + " micrometres, "
                + depth
                + " m, "
                + celsius
                + " degC",
            TABLE)
        .expect(seconds)
        .withinRatio(0.005)
        .got(Stokes.settlingTime(depth, micrometres * 1e-6, celsius, 2650));
  }

  @Test
  void pipetteConventionHoldsForGrainsOf2600() {
    OutsideCheck.of("materials.soil", "20 micrometres, 10 cm, 20 degC, 2600 kg/m3: s", PIPETTE)
        .expect(288)
        .withinRatio(0.005)
        .got(Stokes.settlingTime(0.1, 20e-6, 20, 2600));
  }

  @Test
  void jarExampleAgreesDespiteItsRoundViscosity() {
    Source source = Source.found("", "Hydrometer question, 30 cm, 4 micrometres", "", "answer");
    // The page takes a viscosity of 1.0 mPa s, that of 20 degC within 0.2 %.
    OutsideCheck.of("materials.soil", "30 cm, 4 micrometres, G 2.7: s", source)
        .expect(20215)
        .withinRatio(0.005)
        .got(Stokes.settlingTime(0.3, 4e-6, 20.07, 2700));
  }

  @ParameterizedTest
  @CsvSource({
    "40,0.05,37",
    "40,0.10,53",
    "60,0.10,43",
    "1800,0.10,7.9",
    "3600,0.15,6.8",
    "7200,0.05,2.8",
    "21600,0.10,2.3",
    "86400,0.15,1.4"
  })
  void smallestSettledGrainOfPublishedJarTimes(double seconds, double depth, double micrometres) {
    OutsideCheck.of(
            "materials.soil",
            "smallest settled grain, micrometres: " + seconds + " s, " + depth + " m",
            TABLE)
        .expect(micrometres)
        .within(micrometres < 10 ? 0.05 : 0.6)
        .got(Stokes.smallestSettled(depth, seconds, 20, 2650) * 1e6);
  }

  @Test
  void viscosityAgreesWithIapws() {
    Source source = Source.derived("IAPWS 2008 viscosity at the ICT density");
    double[][] rows = {{0, 1.7916}, {10, 1.3059}, {20, 1.0016}, {30, 0.7972}, {35, 0.7191}};
    for (double[] row : rows) {
      OutsideCheck.of("materials.soil", "viscosity of water, mPa s, at " + row[0] + " degC", source)
          .expect(row[1])
          .withinRatio(0.0005)
          .got(StillWater.viscosity(row[0]) * 1000);
    }
    OutsideCheck.of(
            "materials.soil",
            "density of water, kg/m3, 20 degC",
            Source.found("ICT", "International Critical Tables", "1928", "water"))
        .expect(998.23)
        .within(0.03)
        .got(StillWater.density(20));
  }

  @Test
  void timeGoesWithDepthAndInverseSquareOfDiameter() {
    double t = Stokes.settlingTime(0.1, 2e-6, 17, 2650);
    assertThat(Stokes.settlingTime(0.2, 2e-6, 17, 2650)).isCloseTo(2 * t, within(1e-6));
    assertThat(Stokes.settlingTime(0.1, 20e-6, 17, 2650)).isCloseTo(t / 100, within(1e-6));
    assertThat(Stokes.smallestSettled(0.1, t, 17, 2650)).isCloseTo(2e-6, within(1e-15));
  }

  @Test
  void refusesGrainsTooLargeForTheLaw() {
    // A question in print has 0.05 cm for 0.005 cm and answers with a Reynolds number of 114.
    assertThatThrownBy(() -> Stokes.settlingTime(0.1, 0.5e-3, 20, 2670))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Reynolds number 11")
        .hasMessageContaining("must be 1 or less");
  }

  @Test
  void derivationsFollow() {
    StepRecorder time = new StepRecorder();
    double t = Stokes.settlingTime(0.12, 2e-6, 18, 2650, time);
    DerivationChecks.assertFollowsTo(
        time.derivation("materials.soil.settling_time", "settling time"), t);
    StepRecorder grain = new StepRecorder();
    double d = Stokes.smallestSettled(0.12, 1800, 18, 2650, grain);
    DerivationChecks.assertFollowsTo(
        grain.derivation("materials.soil.smallest_settled_grain", "smallest settled grain"), d);
  }
}
