package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.quantity.Numbers;

/**
 * A number that a question gives. The sum uses the very number that is printed, so that nothing is
 * known to the library that a pupil cannot read.
 *
 * @param symbol its symbol in the sum
 * @param name what it is
 * @param printed the number as printed; an angle in degrees
 * @param decimals digits after the decimal point
 * @param unit the unit's symbol, {@code °} for an angle, empty for a pure number
 */
public record Given(String symbol, String name, double printed, int decimals, String unit) {

  /**
   * Gives the number that goes into the sum.
   *
   * @return the printed number, or the angle in radians
   */
  public double value() {
    return unit.equals("°") ? Math.toRadians(printed) : printed;
  }

  /**
   * Gives the unit in which the number goes into the sum.
   *
   * @return the unit, {@code rad} for an angle
   */
  public String sumUnit() {
    return unit.equals("°") ? "rad" : unit;
  }

  /**
   * Writes the number with its unit.
   *
   * @return for example {@code 2.40 m}, with a no-break space
   */
  public String shown() {
    return Figures.quantity(Numbers.fixed(printed, decimals), unit);
  }
}
