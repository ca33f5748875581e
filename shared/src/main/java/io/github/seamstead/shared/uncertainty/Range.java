package io.github.seamstead.shared.uncertainty;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.internal.PlainNumber;

/**
 * A low, a likely and a high value in one unit, which the holder states together with what low and
 * high mean (for example the 5 % and 95 % quantiles).
 *
 * <p>Invariant: {@code low <= likely <= high}, all finite.
 *
 * <pre>{@code
 * Range days = new Range(3, 5, 9);
 * days.likely(); // 5
 * }</pre>
 *
 * @param low the low end, in the holder's unit; finite, at most {@code likely}
 * @param likely the best single value, in the same unit; finite
 * @param high the high end, in the same unit; finite, at least {@code likely}
 */
public record Range(double low, double likely, double high) {

  public Range {
    Args.finite("low", low, "");
    Args.finite("likely", likely, "");
    Args.finite("high", high, "");
    if (!(low <= likely && likely <= high)) {
      throw fallen(low, likely, high);
    }
  }

  /** Numbers are put in words only where they are wrong: ranges are made by the million. */
  private static ArgumentFault fallen(double low, double likely, double high) {
    return ArgumentFault.of(
        "range",
        PlainNumber.shown(low) + ", " + PlainNumber.shown(likely) + ", " + PlainNumber.shown(high),
        "must not fall",
        "",
        "");
  }

  /**
   * Makes a range of one value.
   *
   * @param value any finite value
   * @return a range whose three members are equal
   */
  public static Range exactly(double value) {
    return new Range(value, value, value);
  }

  /**
   * Gives the value at a position between the ends: in equal ratios where all is above zero, as
   * most ranges of rates and times are stated, else in equal steps.
   *
   * @param position -1 for the low end, 0 for the likely value, 1 for the high end
   * @return the value, in the holder's unit
   * @throws IllegalArgumentException if the position is out of range
   */
  public double at(double position) {
    Args.within("position", position, -1, 1, "");
    double end = position < 0 ? low : high;
    double part = Math.abs(position);
    return low > 0 ? likely * StrictMath.pow(end / likely, part) : likely + (end - likely) * part;
  }

  /**
   * Gives the same ends round another likely value.
   *
   * @param position of the likely value, -1 for the low end, 0 to leave it, 1 for the high end
   * @return the range
   * @throws IllegalArgumentException if the position is out of range
   */
  public Range likelyAt(double position) {
    double moved = Math.max(low, Math.min(high, at(position)));
    return new Range(low, moved, high);
  }

  /**
   * Scales all three members.
   *
   * @param factor finite, 0 or more
   * @return the scaled range
   * @throws IllegalArgumentException if the factor is negative or not finite
   */
  public Range times(double factor) {
    Args.notNegative("factor", factor, "");
    return new Range(low * factor, likely * factor, high * factor);
  }

  /**
   * Adds member to member: the ends then hold for fully dependent quantities, which is the cautious
   * reading.
   *
   * @param other the range to add, in the same unit
   * @return the sum
   */
  public Range plus(Range other) {
    return new Range(low + other.low, likely + other.likely, high + other.high);
  }
}
