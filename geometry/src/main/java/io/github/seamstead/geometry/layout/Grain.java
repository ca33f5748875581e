package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * The direction of a piece that must follow the weave or print of the stock, which runs along the
 * stock's x axis.
 *
 * @param angle the direction in the piece as drawn, counter-clockwise from its x axis, in radians;
 *     finite
 * @param oneWay true for a print or pile that has an up and a down; false for a weave, which may
 *     run either way; not only the line
 */
public record Grain(double angle, boolean oneWay) {

  public Grain {
    Args.finite("grain angle", angle, "rad");
  }

  /**
   * Tells whether a turn brings the direction of a piece that lies as drawn along the stock's x
   * axis.
   *
   * @param rotation the turn of the piece, in radians
   * @return true if the direction then lies along x within 1e-9 rad
   */
  public boolean follows(double rotation) {
    return follows(rotation, false);
  }

  /**
   * Tells whether a turn brings the direction along the stock's x axis. Turning a piece over takes
   * {@code x} to {@code -x} and so a direction at angle a to {@code π - a}.
   *
   * @param rotation the turn of the piece, after it was turned over if it was, in radians
   * @param mirrored true if the piece is cut turned over
   * @return true if the direction then lies along x within 1e-9 rad
   */
  public boolean follows(double rotation, boolean mirrored) {
    double period = oneWay ? 2 * Math.PI : Math.PI;
    double off = Math.IEEEremainder(onSide(mirrored) + rotation, period);
    return Math.abs(off) < 1e-9;
  }

  /** The direction in the piece as drawn or turned over, before any turn, in radians. */
  double onSide(boolean mirrored) {
    return mirrored ? Math.PI - angle : angle;
  }
}
