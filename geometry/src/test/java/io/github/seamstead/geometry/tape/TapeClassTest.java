package io.github.seamstead.geometry.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

class TapeClassTest {

  private static final Source GUIDE =
      Source.found("", "Tape measure guide, accuracy classes by length", "", "table");

  @Test
  void publishedTable() {
    double[][] rows = {
      {2, 0.3, 0.7, 1.4},
      {3, 0.4, 0.9, 1.8},
      {5, 0.6, 1.3, 2.6},
      {8, 0.9, 1.9, 3.8},
      {10, 1.1, 2.3, 4.6}
    };
    for (double[] row : rows) {
      for (TapeClass tape : TapeClass.values()) {
        OutsideCheck.of("geometry.tape", "class " + tape + ", " + (int) row[0] + " m, mm", GUIDE)
            .expect(row[tape.ordinal() + 1])
            .within(1e-9)
            .got(tape.maximumPermissibleError(row[0]) * 1000);
      }
    }
  }

  /** A tape guide prints 0.001 % for 1.1 mm in 10 m; it is 0.011 %. */
  @Test
  void printedPercentageIsTenTimesTooSmall() {
    double percent = TapeClass.I.maximumPermissibleError(10) / 10 * 100;
    assertThat(percent).isCloseTo(0.011, within(1e-12));
    assertThat(percent).isGreaterThan(0.005);
  }

  @Test
  void lengthIsRoundedUpAndTheEndFaceAdded() {
    assertThat(TapeClass.II.maximumPermissibleError(4.01)).isEqualTo(1.3e-3, within(1e-15));
    assertThat(TapeClass.II.maximumPermissibleErrorFromEndFace(5)).isEqualTo(1.5e-3, within(1e-15));
    assertThat(TapeClass.II.readingUncertainty(5))
        .isEqualTo(Math.hypot(1.3e-3 / Math.sqrt(3), 1e-3), within(1e-15));
    assertThatThrownBy(() -> TapeClass.I.maximumPermissibleError(0))
        .hasMessageContaining("length: given 0 m");
  }
}
