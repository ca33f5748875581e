package io.github.seamstead.page.maths;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Rounding of decimal numbers to significant digits. The class library of the page leaves some
 * numbers that are one digit too long as they are, such as 1329.9 to four digits.
 */
public final class Decimals {

  private Decimals() {}

  /**
   * Rounds.
   *
   * @param number any number
   * @param context how many digits, and which way; no digits for all
   * @return the number of at most so many digits
   */
  public static BigDecimal round(BigDecimal number, MathContext context) {
    BigDecimal rounded = number;
    // Twice where all digits were nines.
    while (context.getPrecision() > 0 && rounded.precision() > context.getPrecision()) {
      int surplus = rounded.precision() - context.getPrecision();
      rounded = rounded.setScale(rounded.scale() - surplus, context.getRoundingMode());
    }
    return rounded;
  }
}
