package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.quantity.Numbers;

/** Numbers as a class writes them: trailing zeros kept, a no-break space before the unit. */
final class Figures {

  private static final String NO_BREAK = "\u00a0";

  private Figures() {}

  /** Writes a number to significant digits, zeros at the end included: 1.950 for 1.95 and 4. */
  static String significant(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    String rounded = Numbers.significant(value, digits);
    double size = Math.abs(Double.parseDouble(rounded));
    int decimals = digits - 1 - (int) Math.floor(StrictMath.log10(size) + 1e-12);
    return decimals > 0 ? Numbers.fixed(value, decimals) : rounded;
  }

  /** Writes a number with its unit; an angle's degree sign follows without a space. */
  static String quantity(String number, String unit) {
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + NO_BREAK + unit;
  }

  /** Writes a result: to digits, an angle in degrees, a whole number without a unit as it is. */
  static String result(double value, String unit, int digits) {
    if (unit.isEmpty() && value == Math.rint(value)) {
      return Numbers.fixed(value, 0);
    }
    return unit.equals("rad")
        ? quantity(significant(Math.toDegrees(value), digits), "°")
        : quantity(significant(value, digits), unit);
  }
}
