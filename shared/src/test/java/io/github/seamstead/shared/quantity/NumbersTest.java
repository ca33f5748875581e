package io.github.seamstead.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NumbersTest {

  @Test
  void writesPlainNumbersUnderAnyLocale() {
    assertThat(Numbers.plain(5.2)).isEqualTo("5.2");
    assertThat(Numbers.plain(-3)).isEqualTo("-3");
    assertThat(Numbers.plain(1234567.5)).isEqualTo("1234567.5");
    assertThat(Numbers.plain(0.00001)).isEqualTo("0.00001");
    assertThat(Numbers.plain(1e-9)).isEqualTo("1.0E-9");
    assertThat(Numbers.plain(-0.0)).isEqualTo("0");
    assertThat(Numbers.plain(Double.NaN)).isEqualTo("NaN");
  }

  @Test
  void noiseOfBinarySumsIsShownToProgramsAlone() {
    assertThat(Numbers.plain(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Numbers.plain(0.14 * 100)).isEqualTo("14");
    assertThat(Numbers.plain(-1234567.125)).isEqualTo("-1234567.13");
    assertThat(Numbers.plain(Double.MAX_VALUE)).isEqualTo("1.79769313E308");
    assertThat(Numbers.exact(0.1 + 0.2)).isEqualTo("0.30000000000000004");
    assertThat(Double.parseDouble(Numbers.exact(Math.PI))).isEqualTo(Math.PI);
  }

  @Test
  void roundsHalfUp() {
    assertThat(Numbers.significant(0.033333, 3)).isEqualTo("0.0333");
    assertThat(Numbers.significant(2.5, 1)).isEqualTo("3");
    assertThat(Numbers.significant(1500, 2)).isEqualTo("1500");
    assertThat(Numbers.fixed(12.5, 2)).isEqualTo("12.50");
    assertThat(Numbers.fixed(-0.001, 2)).isEqualTo("0.00");
    assertThat(Numbers.fixed(0.125, 2)).isEqualTo("0.13");
  }

  @Test
  void aLeastSizeIsRoundedUp() {
    assertThat(Numbers.upTo(0.0054, 0.001)).isCloseTo(0.006, within(1e-12));
    assertThat(Numbers.upTo(13.11, 0.1)).isCloseTo(13.2, within(1e-12));
    // 13.1 m is held as a hair more or less than 131 decimetres.
    assertThat(Numbers.upTo(13.1, 0.1)).isCloseTo(13.1, within(1e-12));
    assertThat(Numbers.upTo(0.1 + 0.2, 0.1)).isCloseTo(0.3, within(1e-12));
    assertThat(Numbers.upTo(0, 0.1)).isZero();
    assertThatThrownBy(() -> Numbers.upTo(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aLimitIsRoundedDown() {
    assertThat(Numbers.downTo(10.89, 0.1)).isCloseTo(10.8, within(1e-12));
    // 0.7 is held as a hair less than seven tenths.
    assertThat(Numbers.downTo(0.7, 0.1)).isCloseTo(0.7, within(1e-12));
    assertThat(Numbers.downTo(0.1 + 0.2, 0.1)).isCloseTo(0.3, within(1e-12));
    assertThat(Numbers.downTo(0, 0.1)).isZero();
    assertThatThrownBy(() -> Numbers.downTo(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void limitsAndLeastSizesAreWrittenTheSafeWay() {
    assertThat(Numbers.fixedAtMost(10.89, 1)).isEqualTo("10.8");
    assertThat(Numbers.fixedAtMost(10.8, 1)).isEqualTo("10.8");
    assertThat(Numbers.fixedAtMost(24.96, 0)).isEqualTo("24");
    assertThat(Numbers.fixedAtLeast(10.81, 1)).isEqualTo("10.9");
    assertThat(Numbers.fixedAtLeast(10.8, 1)).isEqualTo("10.8");
    assertThatThrownBy(() -> Numbers.fixedAtMost(Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
