package io.github.seamstead.shared.quantity;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

import io.github.seamstead.shared.check.Args;

/** Writes lengths as a tape in feet and inches shows them. */
final class FeetAndInches {

  private static final int INCHES_PER_FOOT = 12;

  private FeetAndInches() {}

  static String write(double metres, int denominator) {
    Args.finite("length", metres, "m");
    Args.require(
        denominator >= 1 && denominator <= 64 && Integer.bitCount(denominator) == 1,
        "division of the inch",
        "1/" + denominator,
        "must be 1/1, 1/2, 1/4 … 1/64");
    long parts = Math.round(Math.abs(metres) / INCH * denominator);
    long feet = parts / ((long) INCHES_PER_FOOT * denominator);
    long inchParts = parts % ((long) INCHES_PER_FOOT * denominator);
    StringBuilder text = new StringBuilder(metres < 0 && parts > 0 ? "-" : "");
    if (feet > 0) {
      text.append(feet).append(" ft");
    }
    if (inchParts > 0 || feet == 0) {
      text.append(feet > 0 ? " " : "").append(inches(inchParts, denominator)).append(" in");
    }
    return text.toString();
  }

  private static String inches(long inchParts, int denominator) {
    long whole = inchParts / denominator;
    long rest = inchParts % denominator;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long divisor = Long.lowestOneBit(rest);
    String fraction = rest / divisor + "/" + denominator / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
