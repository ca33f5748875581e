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

  /** In kg/(m² s), with the surface as warm as the air (Uno, ACI Materials J. 95, 1998). */
  private static double uno(AirState air) {
    double dry = Math.pow(air.temperature() + 18, 2.5);
    return 5 * dry * (1 - air.relativeHumidity()) * (3.6 * air.speed() + 4) * 1e-6 / 3600;
  }

  @Test
  void unoIsWrittenDownRightly() {
    OutsideCheck.of(
            "materials.drying",
            "evaporation by Uno, 20 degC, 50 %, 10 km/h, kg/(m2 h)",
            Source.derived("Uno's formula (ACI Materials J. 95, 1998) worked by hand"))
        .expect(0.3115)
        .within(0.0005)
        .got(uno(new AirState(20, 0.5, 10 / 3.6)) * 3600);
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
    double uno = uno(air);
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
