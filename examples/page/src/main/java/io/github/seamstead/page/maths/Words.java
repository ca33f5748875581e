package io.github.seamstead.page.maths;

/**
 * The two halves of a double, by which the functions of this package tell where a number lies.
 *
 * <p>In a browser {@link BrowserWords} stands in for it: its 64-bit whole numbers are slow.
 */
final class Words {

  private static final long LOW = 0xFFFF_FFFFL;

  private Words() {}

  /** Sign, exponent and the first 20 bits of the significand. */
  static int high(double x) {
    return (int) (Double.doubleToRawLongBits(x) >>> 32);
  }

  /** The last 32 bits of the significand. */
  static int low(double x) {
    return (int) Double.doubleToRawLongBits(x);
  }

  static double of(int high, int low) {
    return Double.longBitsToDouble((long) high << 32 | (low & LOW));
  }

  /** The number with another high half. */
  static double withHigh(double x, int high) {
    return of(high, low(x));
  }

  /** The number with a low half of zero. */
  static double cut(double x) {
    return of(high(x), 0);
  }
}
