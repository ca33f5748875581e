package io.github.seamstead.page.maths;

/**
 * The elementary functions of {@link StrictMath} and those of {@link Math} whose value the language
 * fixes to the last bit, in plain Java: a browser's own differ from engine to engine.
 *
 * <p>The library compiled for the page calls these instead. Source of the methods: fdlibm (Freely
 * Distributable LIBM), release 5.3, by whose results {@code StrictMath} is defined.
 */
public final class Elementary {

  private static final double DEGREE = 0.017453292519943295;
  private static final double RADIAN = 57.29577951308232;

  /** From here on every double is a whole number. */
  private static final double WHOLE = 0x1.0p52;

  private Elementary() {}

  /**
   * Sine.
   *
   * @param x radians
   * @return its sine
   */
  public static double sin(double x) {
    return Circular.sin(x);
  }

  /**
   * Cosine.
   *
   * @param x radians
   * @return its cosine
   */
  public static double cos(double x) {
    return Circular.cos(x);
  }

  /**
   * Tangent.
   *
   * @param x radians
   * @return its tangent
   */
  public static double tan(double x) {
    return Circular.tan(x);
  }

  /**
   * Arc sine.
   *
   * @param x from -1 to 1
   * @return radians from -pi/2 to pi/2
   */
  public static double asin(double x) {
    return Arcs.asin(x);
  }

  /**
   * Arc cosine.
   *
   * @param x from -1 to 1
   * @return radians from 0 to pi
   */
  public static double acos(double x) {
    return Arcs.acos(x);
  }

  /**
   * Arc tangent.
   *
   * @param x any number
   * @return radians from -pi/2 to pi/2
   */
  public static double atan(double x) {
    return Arcs.atan(x);
  }

  /**
   * The angle of a ray.
   *
   * @param y ordinate of a point on it
   * @param x abscissa
   * @return radians from -pi to pi
   */
  public static double atan2(double y, double x) {
    return Arcs.atan2(y, x);
  }

  /**
   * The exponential.
   *
   * @param x any number
   * @return e to its power
   */
  public static double exp(double x) {
    return Powers.exp(x);
  }

  /**
   * Natural logarithm.
   *
   * @param x a positive number
   * @return its logarithm
   */
  public static double log(double x) {
    return Logarithms.log(x);
  }

  /**
   * Logarithm to base 10.
   *
   * @param x a positive number
   * @return its logarithm
   */
  public static double log10(double x) {
    return Logarithms.log10(x);
  }

  /**
   * Natural logarithm of one more.
   *
   * @param x a number above -1
   * @return the logarithm of 1 + x
   */
  public static double log1p(double x) {
    return Logarithms.log1p(x);
  }

  /**
   * A power.
   *
   * @param x base
   * @param y exponent
   * @return x to the power of y
   */
  public static double pow(double x, double y) {
    return Power.of(x, y);
  }

  /**
   * Cube root.
   *
   * @param x any number
   * @return its cube root
   */
  public static double cbrt(double x) {
    return Powers.cbrt(x);
  }

  /**
   * The length of a vector.
   *
   * @param x one component
   * @param y the other
   * @return sqrt(x^2 + y^2) without overflow between
   */
  public static double hypot(double x, double y) {
    return Powers.hypot(x, y);
  }

  /**
   * The remainder of IEEE 754: from the nearest multiple, of two equally near the even one.
   *
   * @param x dividend
   * @param divisor divisor
   * @return what is left, of at most half the divisor's size
   */
  public static double IEEEremainder(double x, double divisor) {
    double p = Math.abs(divisor);
    if (Double.isNaN(x) || Double.isNaN(p) || Double.isInfinite(x) || p == 0) {
      return Double.NaN;
    }
    double left = Math.abs(x);
    if (p <= Double.MAX_VALUE / 2) {
      left = left % (p + p);
    }
    if (p < 0x1.0p-1021) {
      if (left + left > p) {
        left -= p;
        if (left + left >= p) {
          left -= p;
        }
      }
    } else {
      double half = 0.5 * p;
      if (left > half) {
        left -= p;
        if (left >= half) {
          left -= p;
        }
      }
    }
    return Words.high(x) < 0 ? -left : left;
  }

  /**
   * Rounds to the nearest whole number, of two equally near to the even one.
   *
   * @param x any number
   * @return a whole number; a zero keeps the sign
   */
  public static double rint(double x) {
    double size = Math.abs(x);
    if (!(size < WHOLE)) {
      return x;
    }
    double whole = (size + WHOLE) - WHOLE;
    return Words.high(x) < 0 ? -whole : whole;
  }

  /**
   * Rounds to the nearest whole number, of two equally near to the greater one.
   *
   * @param x any number
   * @return a whole number, within the range of {@code long}; 0 for no number
   */
  public static long round(double x) {
    if (!(Math.abs(x) < WHOLE)) {
      return (long) x;
    }
    double below = Math.floor(x);
    return (long) (x - below >= 0.5 ? below + 1 : below);
  }

  /**
   * The distance to the next greater size.
   *
   * @param x any number
   * @return a positive number; infinity for an infinite one
   */
  public static double ulp(double x) {
    double size = Math.abs(x);
    if (!(size <= Double.MAX_VALUE)) {
      return size;
    }
    return size == Double.MAX_VALUE ? size - Math.nextDown(size) : Math.nextUp(size) - size;
  }

  /**
   * Turns degrees into radians.
   *
   * @param degrees an angle in degrees
   * @return the angle in radians
   */
  public static double toRadians(double degrees) {
    return degrees * DEGREE;
  }

  /**
   * Turns radians into degrees.
   *
   * @param radians an angle in radians
   * @return the angle in degrees
   */
  public static double toDegrees(double radians) {
    return radians * RADIAN;
  }
}
