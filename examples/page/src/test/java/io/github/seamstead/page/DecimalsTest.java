package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.page.maths.Decimals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Holds the rounding to that of the platform. */
class DecimalsTest {

  @Test
  void roundsAsThePlatform() {
    SplittableRandom random = new SplittableRandom(19);
    for (int i = 0; i < 20_000; i++) {
      compare(Math.scalb(random.nextDouble() - 0.5, random.nextInt(-30, 60)));
      compare(random.nextInt(100_000) / 10.0);
    }
    List.of(0.0, 9999.9, 99_995.0, 1329.9, -9.99e22).forEach(DecimalsTest::compare);
  }

  private static void compare(double value) {
    BigDecimal number = BigDecimal.valueOf(value);
    for (int digits = 0; digits <= 17; digits++) {
      for (RoundingMode mode : List.of(RoundingMode.HALF_UP, RoundingMode.HALF_EVEN)) {
        MathContext context = new MathContext(digits, mode);
        assertThat(Decimals.round(number, context)).isEqualTo(number.round(context));
      }
    }
  }
}
