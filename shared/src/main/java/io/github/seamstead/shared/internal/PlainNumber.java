package io.github.seamstead.shared.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A number as plain text, apart from the packages that need it so that they form no cycle. */
public final class PlainNumber {

  private static final double LEAST = 1e-7;
  private static final double GREATEST = 1e15;

  /** What lies beyond is noise of the machine's sums: a nanometre in a metre. */
  private static final MathContext SHOWN = new MathContext(9, RoundingMode.HALF_UP);

  private PlainNumber() {}

  /**
   * Writes a number for people: at most nine significant digits, so that 0.1 + 0.2 is 0.3.
   *
   * @param value any number
   * @return for example {@code 5.2}, {@code -3}, {@code 1.0E-9}, {@code NaN}
   */
  public static String shown(double value) {
    return Double.isFinite(value)
        ? exact(BigDecimal.valueOf(value).round(SHOWN).doubleValue())
        : exact(value);
  }

  /**
   * Writes a number with the fewest digits that read back as the same number.
   *
   * @param value any number
   * @return for example {@code 5.2}, {@code -3}, {@code 1.0E-9}, {@code NaN}
   */
  public static String exact(double value) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (!Double.isFinite(value) || size < LEAST || size >= GREATEST) {
      return Double.toString(value);
    }
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
