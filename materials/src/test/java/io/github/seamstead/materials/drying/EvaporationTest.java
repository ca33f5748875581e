package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvaporationTest {

  private static final Source UNO =
      Source.derived("Uno's formula (ACI Materials J. 95, 1998) worked by hand");

  @ParameterizedTest
  @CsvSource({"20, 20, 0.5, 10, 0.3115", "25, 30, 0.4, 20, 0.689"})
  void uno(double surface, double air, double humidity, double kmh, double expected) {
    StepRecorder steps = new StepRecorder();
    double e = Evaporation.uno(surface, new AirState(air, humidity, kmh / 3.6), steps);
    OutsideCheck.of(
            "materials.drying",
            "evaporation by Uno, surface " + surface + ", air " + air + " degC, kg/(m2 h)",
            UNO)
        .expect(expected)
        .within(0.0005)
        .got(e * 3600);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.uno", "E"), e);
  }

  @ParameterizedTest
  @CsvSource({"20, 0.5, 2.78", "25, 0.4, 5.0", "15, 0.7, 0.5", "10, 0.6, 0.1"})
  void theMassTransferOfAnUncooledSurfaceAgreesWithUnoWithinItsScatter(
      double temperature, double humidity, double speed) {
    AirState air = new AirState(temperature, humidity, speed);
    double uncooled =
        Evaporation.massTransferCoefficient(speed)
            * Psychrometrics.vapourDensity(
                Psychrometrics.saturationPressure(temperature) * (1 - humidity), temperature);
    double uno = Evaporation.uno(temperature, air, Steps.none());
    assertThat(uncooled / uno).isBetween(1 / Evaporation.SCATTER, Evaporation.SCATTER);
    assertThat(Evaporation.wetFloor(air, Steps.none())).isLessThan(uncooled);
  }

  @Test
  void theCooledSurfaceBalancesHeatAndVapour() {
    // Oracle: the surface temperature at which convection and radiation bring the heat that
    // evaporation takes, by bisection on the full saturation curve.
    AirState air = new AirState(20, 0.5, 0.1);
    double h = 2.8 + 3.0 * 0.1;
    double beta = Evaporation.massTransferCoefficient(0.1);
    double vapour = Psychrometrics.vapourDensity(air.vapourPressure(), 20);
    double low = 5;
    double high = 20;
    double flux = 0;
    for (int i = 0; i < 60; i++) {
      double surface = (low + high) / 2;
      flux =
          beta
              * (Psychrometrics.vapourDensity(Psychrometrics.saturationPressure(surface), surface)
                  - vapour);
      if (flux * (2_501_000 - 2361 * 20) > (h + 5.4) * (20 - surface)) {
        high = surface;
      } else {
        low = surface;
      }
    }
    assertThat(Evaporation.wetFloor(air, Steps.none()) / flux).isBetween(0.9, 1.0);
  }

  @Test
  void theStepsFollow() {
    AirState air = new AirState(17, 0.65, 0.3);
    StepRecorder steps = new StepRecorder();
    double e = Evaporation.wetFloor(air, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.evaporation", "E"), e);
    assertThat(Evaporation.wetFloor(new AirState(17, 1, 0.3), Steps.none())).isZero();
  }
}
