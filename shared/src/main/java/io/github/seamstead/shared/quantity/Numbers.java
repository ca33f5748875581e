package io.github.seamstead.shared.quantity;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.internal.PlainNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same under every default locale: a decimal point and no grouping. */
public final class Numbers {

  private static final double PLAIN_LEAST = 1e-7;
  private static final double PLAIN_GREATEST = 1e15;
  private static final double NOISE = 1e-6;

  private Numbers() {}

  /**
   * Rounds up to a multiple of a step, for a least size that must not be told as less.
   *
   * @param value the least size
   * @param step what the reader's tape or scale tells apart, in the same unit; above 0
   * @return the multiple at or above it, but for a millionth of a step, which is noise
   * @throws IllegalArgumentException if a value is not finite or the step not above 0
   */
  public static double upTo(double value, double step) {
    Args.finite("value", value, "");
    Args.positive("step", step, "");
    return Math.ceil(value / step - NOISE) * step;
  }

  /**
   * Rounds down to a multiple of a step, for a limit that must not be told as more.
   *
   * @param value the greatest size
   * @param step what the reader's instrument tells apart, in the same unit; above 0
   * @return the multiple at or below it, but for a millionth of a step, which is noise
   * @throws IllegalArgumentException if a value is not finite or the step not above 0
   */
  public static double downTo(double value, double step) {
    Args.finite("value", value, "");
    Args.positive("step", step, "");
    return Math.floor(value / step + NOISE) * step;
  }

  /**
   * Writes a number for people to read: with at most nine significant digits, since what lies
   * beyond is noise of binary sums.
   *
   * @param value any number
   * @return for example {@code 5.2}, {@code -3}, {@code 0.3} for 0.1 + 0.2, {@code 1.0E-9}, {@code
   *     NaN}
   */
  public static String plain(double value) {
    return PlainNumber.shown(value);
  }

  /**
   * Writes a number for programs to read: with the fewest digits that read back as the same number.
   *
   * @param value any number
   * @return for example {@code 5.2}, {@code 0.30000000000000004} for 0.1 + 0.2
   */
  public static String exact(double value) {
    return PlainNumber.exact(value);
  }

  /**
   * Writes a number rounded half-up to a number of significant digits, without trailing zeros.
   *
   * @param value any number
   * @param digits significant digits, 1 to 17
   * @return for example {@code 0.0333} for 0.033333 and 3 digits
   */
  public static String significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    double size = rounded.abs().doubleValue();
    if (size < PLAIN_LEAST || size >= PLAIN_GREATEST) {
      return Double.toString(rounded.doubleValue());
    }
    return trimmed(rounded);
  }

  /**
   * Writes a number with a fixed count of decimals, rounded half-up.
   *
   * @param value any number
   * @param decimals digits after the decimal point, 0 or more
   * @return for example {@code 12.50} for 12.5 and 2 decimals; never {@code -0.00}
   */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }

  /**
   * Writes a limit with a fixed count of decimals, rounded down: see {@link #downTo}.
   *
   * @param value the greatest size; finite
   * @param decimals digits after the decimal point, 0 or more
   * @return for example {@code 10.8} for 10.89 and 1 decimal
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String fixedAtMost(double value, int decimals) {
    return fixed(downTo(value, StrictMath.pow(10, -decimals)), decimals);
  }

  /**
   * Writes a least size with a fixed count of decimals, rounded up: see {@link #upTo}.
   *
   * @param value the least size; finite
   * @param decimals digits after the decimal point, 0 or more
   * @return for example {@code 10.9} for 10.81 and 1 decimal
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String fixedAtLeast(double value, int decimals) {
    return fixed(upTo(value, StrictMath.pow(10, -decimals)), decimals);
  }

  private static String trimmed(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
