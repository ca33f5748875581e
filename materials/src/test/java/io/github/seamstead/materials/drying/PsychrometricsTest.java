package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PsychrometricsTest {

  private static final Source FAO = Psychrometrics.FAO_56;

  @ParameterizedTest
  @CsvSource({"15, 1.705", "18, 2.064", "24.5, 3.075", "25, 3.168"})
  void saturationPressure(double temperature, double kilopascals) {
    OutsideCheck.of(
            "materials.drying", "saturation vapour pressure at " + temperature + " degC, kPa", FAO)
        .expect(kilopascals)
        .within(0.0006)
        .got(Psychrometrics.saturationPressure(temperature) / 1000);
  }

  @Test
  void theMeanOfADayIsNotThePressureAtItsMean() {
    double mean = Psychrometrics.meanSaturationPressure(24.5, 15) / 1000;
    OutsideCheck.of(
            "materials.drying",
            "mean saturation pressure of a day 15 to 24.5 degC, kPa",
            FAO.at("example 3"))
        .expect(2.39)
        .within(0.005)
        .got(mean);
    assertThat(Psychrometrics.saturationPressure(19.75) / 1000).isCloseTo(2.30, within(0.005));
  }

  @Test
  void altitudeAndWetBulb() {
    OutsideCheck.of("materials.drying", "air pressure at 1800 m, kPa", FAO.at("example 2"))
        .expect(81.8)
        .within(0.05)
        .got(Psychrometrics.airPressure(1800) / 1000);
    StepRecorder steps = new StepRecorder();
    double vapour = Psychrometrics.vapourPressureFromWetBulb(25.6, 19.5, 87_900, steps);
    OutsideCheck.of(
            "materials.drying",
            "vapour pressure by wet bulb 19.5, dry 25.6 degC, kPa",
            FAO.at("example 4"))
        .expect(1.91)
        .within(0.005)
        .got(vapour / 1000);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.wet-bulb", "e"), vapour);
    Source army = Source.found("US Army", "TM 5-3610-285-14", "", "psychrometer table");
    double wet = (62 - 32) / 1.8;
    double dry = (68 - 32) / 1.8;
    double humid =
        Psychrometrics.relativeHumidity(
            Psychrometrics.vapourPressureFromWetBulb(dry, wet, 101_325, Steps.none()), dry);
    OutsideCheck.of("materials.drying", "relative humidity, dry 68 degF, wet 62 degF, %", army)
        .expect(71)
        .within(1.5)
        .got(humid * 100);
  }

  @Test
  void windDewPointAndSlope() {
    OutsideCheck.of("materials.drying", "3.2 m/s at 10 m brought to 2 m, m/s", FAO.at("example 14"))
        .expect(2.4)
        .within(0.05)
        .got(Psychrometrics.windAtTwoMetres(3.2, 10));
    OutsideCheck.of(
            "materials.drying",
            "slope of saturation pressure at 16.9 degC, kPa/K",
            FAO.at("example 18"))
        .expect(0.122)
        .within(0.0005)
        .got(Psychrometrics.saturationSlope(16.9) / 1000);
    assertThat(Psychrometrics.dewPoint(Psychrometrics.saturationPressure(12.3)))
        .isCloseTo(12.3, within(1e-9));
  }

  @Test
  void badAirIsNamed() {
    assertThatThrownBy(() -> new AirState(18, 1.2, 0.2))
        .hasMessageContaining("relative humidity: given 1.2");
    assertThatThrownBy(() -> new AirState(-2, 0.5, 0.2)).hasMessageContaining("frost");
    assertThatThrownBy(() -> new AirState(18, 0.5, 0)).hasMessageContaining("air speed: given 0");
    assertThatThrownBy(() -> new AirState(Double.NaN, 0.5, 0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Psychrometrics.vapourPressureFromWetBulb(40, 5, 101_325, Steps.none()))
        .hasMessageContaining("no air is that dry");
  }

  @Test
  void warmingKeepsTheVapour() {
    AirState air = new AirState(15, 0.8, 0.2);
    AirState warm = air.changed(5, 2);
    assertThat(warm.vapourPressure()).isCloseTo(air.vapourPressure(), within(1e-9));
    assertThat(warm.relativeHumidity()).isLessThan(0.6);
    assertThat(air.changed(-10, 1).relativeHumidity()).isEqualTo(1);
  }
}
