package io.github.seamstead.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {

  private static final Source SP_811 =
      Source.fromMemory(
          "NIST", "Special Publication 811, Guide for the Use of the SI", "2008", "app. B.8");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH | 5.2 m | 5.2",
        "LENGTH | 5.2m | 5.2",
        "LENGTH | 350 mm | 0.35",
        "LENGTH | 17 ft 3 in | 5.2578",
        "LENGTH | 17ft 3in | 5.2578",
        "LENGTH | 17' 3\" | 5.2578",
        "LENGTH | 17'3\" | 5.2578",
        "LENGTH | 3 1/2 in | 0.0889",
        "LENGTH | 3-1/2 in | 0.0889",
        "LENGTH | 3½ in | 0.0889",
        "LENGTH | 1/16 in | 0.0015875",
        "LENGTH | 6 ft 0 3/8 in | 1.838325",
        "LENGTH | -0.5 m | -0.5",
        "LENGTH | -1 ft 6 in | -0.4572",
        "LENGTH | 1.2e3 mm | 1.2",
        "AREA | 2 m² | 2",
        "AREA | 2 m^2 | 2",
        "VOLUME | 140 l | 0.14",
        "VOLUME | 1 yd3 | 0.764554857984",
        "MASS | 2 lb 8 oz | 1.133980925",
        "MASS_PER_AREA | 680 g/m2 | 0.68",
        "DENSITY | 1.6 t/m3 | 1600",
        "TIME | 1 h 20 min | 4800",
        "TEMPERATURE | -5 degC | -5",
        "TEMPERATURE | 293.15 K | 20",
        "TEMPERATURE | 68 degF | 20",
        "SPEED | 36 km/h | 10",
        "RATIO | 12 % | 0.12",
        "RATIO | 0.12 | 0.12",
        "ANGLE | 180° | 3.141592653589793",
      })
  void readsText(Dimension dimension, String text, double si) {
    assertThat(QuantityText.parse(text, dimension)).isCloseTo(si, within(1e-12 * (1 + si * si)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH | 5,2 m | write a decimal point",
        "LENGTH | 5.2 | the unit is missing",
        "LENGTH | m | not a number with a unit",
        "LENGTH | `` | not a number with a unit",
        "LENGTH | 5.2 kg | kg is a unit of mass",
        "LENGTH | 5.2 furlong | the unit furlong is not known",
        "LENGTH | 3 in 2 ft | these units do not follow each other",
        "LENGTH | 1/0 in | a fraction over zero",
        "LENGTH | 1e400 m | the number is too large",
        "LENGTH | --5 m | not a number with a unit",
        "LENGTH | five m | not a number with a unit",
        "MASS | 3 m | m is a unit of length",
      })
  void refusesTextAndSaysWhatToWrite(Dimension dimension, String text, String why) {
    assertThatThrownBy(() -> QuantityText.parse(text, dimension))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessageContaining("given \"" + text)
        .hasMessageContaining(why)
        .hasMessageContaining("write a number and one of: " + dimension.siSymbol());
  }

  @Test
  void refusesLongTextAtOnce() {
    assertThatThrownBy(() -> QuantityText.parse("1 ".repeat(1_000_000), Dimension.LENGTH))
        .hasMessageContaining("too long");
  }

  @Test
  void readsUncertainText() {
    assertThat(QuantityText.parseUncertain("5.204 m ± 2 mm", Dimension.LENGTH))
        .isEqualTo(new Uncertain(5.204, 0.002));
    assertThat(QuantityText.parseUncertain("5.204 m +/- 2 mm", Dimension.LENGTH))
        .isEqualTo(new Uncertain(5.204, 0.002));
    assertThat(QuantityText.parseUncertain("20 degC ± 0.5 K", Dimension.TEMPERATURE))
        .satisfies(u -> assertThat(u.standardUncertainty()).isCloseTo(0.5, within(1e-12)));
    assertThat(QuantityText.parseUncertain("0.2 ± 0.01", Dimension.RATIO))
        .isEqualTo(new Uncertain(0.2, 0.01));
    assertThat(QuantityText.parseUncertain("3 m", Dimension.LENGTH).standardUncertainty()).isZero();
    assertThatThrownBy(() -> QuantityText.parseUncertain("3 m ± -1 mm", Dimension.LENGTH))
        .hasMessageContaining("cannot be negative");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5.2578 | 16 | 17 ft 3 in",
        "0.0889 | 16 | 3 1/2 in",
        "0.0015875 | 16 | 1/16 in",
        "0.3048 | 8 | 1 ft",
        "0 | 8 | 0 in",
        "-0.4572 | 8 | -1 ft 6 in",
        "0.30479 | 8 | 1 ft",
      })
  void writesFeetAndInches(double metres, int denominator, String text) {
    assertThat(QuantityText.feetAndInches(metres, denominator)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 12, 128, -1})
  void refusesADivisionThatNoTapeHas(int denominator) {
    assertThatThrownBy(() -> QuantityText.feetAndInches(1, denominator))
        .hasMessageContaining("division of the inch");
  }

  @Test
  void writesUnits() {
    assertThat(QuantityText.write(0.68, Dimension.MASS_PER_AREA, "g/m2", 0)).isEqualTo("680 g/m2");
    assertThat(QuantityText.write(0.125, Dimension.RATIO, "%", 1)).isEqualTo("12.5 %");
    assertThat(QuantityText.write(0.5, Dimension.RATIO, "1", 2)).isEqualTo("0.50");
  }

  @Test
  void factorsAgreeWithPublishedConversions() {
    check("1 yd3 in m3", "1 yd3", Dimension.VOLUME, 0.7645549, 5e-8);
    check("1 ft2 in m2", "1 ft2", Dimension.AREA, 0.09290304, 5e-9);
    check("1 oz/yd2 in kg/m2", "1 oz/yd2", Dimension.MASS_PER_AREA, 0.03390575, 5e-9);
    check("1 lb/ft3 in kg/m3", "1 lb/ft3", Dimension.DENSITY, 16.01846, 5e-6);
    check("1 psi in Pa", "1 psi", Dimension.PRESSURE, 6894.757, 5e-4);
    check("1 psf in Pa", "1 psf", Dimension.PRESSURE, 47.88026, 5e-6);
    check("1 lbf in N", "1 lbf", Dimension.FORCE, 4.448222, 5e-7);
    check("1 mph in m/s", "1 mph", Dimension.SPEED, 0.44704, 5e-9);
    check("1 kn in m/s", "1 kn", Dimension.SPEED, 0.5144444, 5e-8);
    check("1 US gal in m3", "1 US gal", Dimension.VOLUME, 0.003785412, 5e-10);
    check("1 imp gal in m3", "1 imp gal", Dimension.VOLUME, 0.00454609, 5e-12);
  }

  private static void check(
      String what, String text, Dimension dimension, double printed, double tolerance) {
    OutsideCheck.of("shared.quantity", what, SP_811)
        .expect(printed)
        .within(tolerance)
        .got(QuantityText.parse(text, dimension));
  }
}
