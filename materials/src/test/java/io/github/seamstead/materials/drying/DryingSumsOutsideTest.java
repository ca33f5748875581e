package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Open time, slip and cracks by hand. */
class DryingSumsOutsideTest {

  private static final Source WATER =
      Source.derived(
          "hand sum from first principles: water of a skin of 2 mm over the evaporation as given");
  private static final Source VOLUME =
      Source.derived("hand sum from first principles: volume of cracks and skim, 15 % added");
  private static final Source STRAIN =
      Source.derived(
          "hand sum from first principles: held shrinkage less what the earth stretches");

  /** Water in the skin, g/m2: density times 2 mm times (w - PL). */
  @ParameterizedTest
  @CsvSource({
    "18,0.6,0.1,1750,0.20,0.14,210",
    "22,0.5,0.5,1800,0.22,0.16,216",
    "15,0.7,0.2,1600,0.25,0.20,160",
    "25,0.4,1,1700,0.18,0.15,102",
    "12,0.8,0.1,1750,0.3,0.2,350"
  })
  void openTime(
      double temperature,
      double humidity,
      double speed,
      double density,
      double moisture,
      double limit,
      double grams) {
    AirState air = new AirState(temperature, humidity, speed);
    double perHour = 3600 * 1000 * Evaporation.wetFloor(air, Steps.none());
    OutsideCheck.of(
            "materials.drying.open-time",
            temperature + " C, " + humidity + ", " + speed + " m/s: " + grams + " g/m2, h",
            WATER)
        .expect(Math.min(24, grams / perHour))
        .within(1e-9)
        .got(OpenTime.of(air, density, moisture, limit, Steps.none()) / 3600);
  }

  /** Share of cracks, area, coat in mm, skim in mm, litres. */
  @ParameterizedTest
  @CsvSource({"0.02,27,20,0,12.42", "0.01,27,20,1,37.26", "0.023,20,25,0.5,24.725", "0,10,20,2,23"})
  void slip(double share, double area, double coat, double skim, double litres) {
    OutsideCheck.of(
            "materials.drying.slip",
            share + " of " + area + " m2 cracked, coat " + coat + " mm, skim " + skim + " mm, L",
            VOLUME)
        .expect(litres)
        .within(1e-9)
        .got(1000 * SlipRepair.volume(share, area, coat / 1000, skim / 1000, Steps.none()));
  }

  /** Shrinkage, restraint, stretch, mm in a metre. */
  @ParameterizedTest
  @CsvSource({
    "0.02,0.8,0.0003,15.7",
    "0.01,1,0.001,9",
    "0.005,0.6,0.003,0",
    "0.03,0.5,0.0005,14.5"
  })
  void cracks(double shrinkage, double restraint, double stretch, double width) {
    OutsideCheck.of(
            "materials.drying.crack-width",
            shrinkage + " held by " + restraint + ", stretch " + stretch + ", mm/m",
            STRAIN)
        .expect(width)
        .within(1e-9)
        .got(1000 * Cracking.widthPerMetre(shrinkage, restraint, stretch, Steps.none()));
  }
}
