package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;

/**
 * A point of the plan as seen from above.
 *
 * @param x to the right, in metres; finite
 * @param y away from the reader, in metres; finite
 */
public record PlanPoint(double x, double y) {

  public PlanPoint {
    Args.finite("plan point x", x, "m");
    Args.finite("plan point y", y, "m");
  }

  /**
   * Gives the distance to another point.
   *
   * @param other the other point
   * @return the distance, in metres
   */
  public double distanceTo(PlanPoint other) {
    return StrictMath.hypot(x - other.x, y - other.y);
  }

  PlanPoint plus(double dx, double dy) {
    return new PlanPoint(x + dx, y + dy);
  }

  PlanPoint towards(PlanPoint other, double part) {
    return new PlanPoint(x + part * (other.x - x), y + part * (other.y - y));
  }
}
