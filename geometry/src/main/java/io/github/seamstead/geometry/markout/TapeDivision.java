package io.github.seamstead.geometry.markout;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;

/** The finest division that a builder reads off a tape. */
public enum TapeDivision {
  /** One millimetre. */
  MILLIMETRE(0.001, 3),
  /** Two millimetres. */
  TWO_MILLIMETRES(0.002, 3),
  /** Five millimetres. */
  FIVE_MILLIMETRES(0.005, 3),
  /** One centimetre. */
  CENTIMETRE(0.01, 2),
  /** 1/16 inch. */
  SIXTEENTH_INCH(INCH / 16, 0),
  /** 1/8 inch. */
  EIGHTH_INCH(INCH / 8, 0),
  /** 1/4 inch. */
  QUARTER_INCH(INCH / 4, 0);

  private final double step;
  private final int decimals;

  TapeDivision(double step, int decimals) {
    this.step = step;
    this.decimals = decimals;
  }

  /**
   * Gives the division's length.
   *
   * @return in metres
   */
  public double step() {
    return step;
  }

  /**
   * Rounds to the nearest division, {@code floor(x / d + 0.5) d}.
   *
   * @param length any finite length, in metres
   * @return the length as it is set on the tape, in metres
   */
  public double round(double length) {
    return Math.floor(length / step + 0.5) * step;
  }

  /**
   * Writes a length as it is set on the tape, rounded to this division.
   *
   * @param length any finite length, in metres
   * @return for example {@code 1.235 m} or {@code 4 ft 5/8 in}
   */
  public String write(double length) {
    if (decimals > 0) {
      return Numbers.fixed(round(length), decimals) + " m";
    }
    return QuantityText.feetAndInches(round(length), (int) Math.round(INCH / step));
  }
}
