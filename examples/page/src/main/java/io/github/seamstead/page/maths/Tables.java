package io.github.seamstead.page.maths;

/**
 * The tables of exponentials and logarithms of {@code FastMath} of Apache Commons Math 3.6.1,
 * worked out at the start as that library itself once did to write them down: 165,000 letters of
 * digits less in the page. They are the same bit for bit, but for the exponentials of whole numbers
 * below -500, whose two parts are split elsewhere.
 */
public final class Tables {

  private static final int WHOLE = 750;
  private static final int PARTS = 1024;

  private Tables() {}

  /**
   * Works out the exponentials of whole numbers.
   *
   * @return the first parts, from -750 on
   */
  public static double[] loadExpIntA() {
    return ofWhole(0);
  }

  /**
   * Works out the exponentials of whole numbers.
   *
   * @return the second parts, from -750 on
   */
  public static double[] loadExpIntB() {
    return ofWhole(1);
  }

  /**
   * Works out the exponentials from 0 to 1.
   *
   * @return the first parts, for every 1/1024
   */
  public static double[] loadExpFracA() {
    return ofParts(0);
  }

  /**
   * Works out the exponentials from 0 to 1.
   *
   * @return the second parts, for every 1/1024
   */
  public static double[] loadExpFracB() {
    return ofParts(1);
  }

  /**
   * Works out the logarithms from 1 to 2.
   *
   * @return both parts, for every 1/1024
   */
  public static double[][] loadLnMant() {
    double[][] table = new double[PARTS][];
    for (int i = 0; i < PARTS; i++) {
      table[i] = slowLog(1 + i / (double) PARTS);
    }
    return table;
  }

  private static double[] ofWhole(int part) {
    double[] table = new double[2 * WHOLE];
    double[] both = new double[2];
    double[] reciprocal = new double[2];
    for (int i = 0; i < WHOLE; i++) {
      expint(i, both);
      table[WHOLE + i] = both[part];
      if (i > 0) {
        splitReciprocal(both, reciprocal);
        table[WHOLE - i] = reciprocal[part];
      }
    }
    return table;
  }

  private static double[] ofParts(int part) {
    double[] table = new double[PARTS + 1];
    double[] both = new double[2];
    for (int i = 0; i <= PARTS; i++) {
      slowexp(i / (double) PARTS, both);
      table[i] = both[part];
    }
    return table;
  }

  // The compiler of the page sends these to that library, which keeps them to itself.

  private static native double expint(int power, double[] both);

  private static native double slowexp(double power, double[] both);

  private static native void splitReciprocal(double[] both, double[] reciprocal);

  private static native double[] slowLog(double number);
}
