package io.github.seamstead.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors: foot 0.3048 m, pound 0.45359237 kg, US gallon 231 in³ (NIST SP 811, from memory). */
class ImperialTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "within 6 m of it | within 19 ft 8 in of it",
        "a circle of 6.1 m about | a circle of 20 ft about",
        "shorter than 80 cm or thinner than 30 mm. | shorter than 2 ft 7 1/2 in or thinner than 1"
            + " 3/16 in.",
        "Bundle 0.23 to 0.43 m across | Bundle 9 in to 1 ft 5 in across",
        "settled 12 / 30 / 110 mm | settled 1/2 in / 1 3/16 in / 4 5/16 in",
        "over about 25 kg, or | over about 55 lb, or",
        "of 1100 kg (2430 lb) long | of 2430 lb (1100 kg) long",
        "About 60 lb (27 kg) is | About 60 lb (27 kg) is",
        "above 4.3 m/s or 2.8 m/s | above 9.6 mph or 6.2 mph",
        "above 7.4 m/s, in 0.1 m/s | above 16.5 mph, in 0.2 mph",
        "from 0.01 to 30 m/s | from 0.02 mph to 67 mph",
        "cartridges of 310 ml | cartridges of 10.5 US fl oz",
        "down to 2 micrometres at 17 degC | down to 0.000079 in at 63 °F",
        "0.6 mm | 0.024 in",
        "490 Pa | 10.2 psf",
        "1.200 kg/m³ | 0.07491 lb/ft³",
        "428 N and 11.5 kN | 96.2 lbf and 2590 lbf",
        "levels 0 mm | levels 0 in",
        "-1124 mm | -3 ft 8 1/4 in"
      })
  void metricQuantitiesBecomeImperial(String metric, String imperial) {
    assertThat(ImperialText.of(metric).replace('\u00a0', ' ')).isEqualTo(imperial);
  }

  @Test
  void whatIsNoQuantityStays() {
    for (String text :
        new String[] {
          "",
          "12 panels",
          "B5-T6",
          "5 minutes",
          "7 days",
          "1-1 m",
          "3 min",
          "gravel-8-16 mmx",
          "4 km"
        }) {
      assertThat(ImperialText.of(text)).isEqualTo(text);
    }
  }
}
