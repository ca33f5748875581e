package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;

/**
 * The outline of a regular-pyramid shelter as the wind meets it: whole, cut off level at the top,
 * or cut off and closed with a cone cap that carries the hips on to their apex.
 *
 * <p>The silhouette is what really stands: a triangle, a trapezium, or a trapezium with the
 * triangle of the cap on it. The cap is round and as wide as the corners of the opening, which with
 * an odd number of sides is a little wider than the frame below it.
 *
 * @param sides sides of the base, 3 to {@link #MOST_SIDES}
 * @param baseSide side of the base, in metres, greater than 0; at most 100
 * @param apexHeight height over the ground at which the hips meet, or would meet, in metres,
 *     greater than 0, at most 100
 * @param top height of the opening at the top, in metres, greater than 0; the apex itself for a
 *     whole shelter; at most {@code apexHeight}
 * @param capped whether a cone cap closes the opening
 */
public record ShelterForm(
    int sides, double baseSide, double apexHeight, double top, boolean capped) {

  /** The most sides. */
  public static final int MOST_SIDES = 64;

  public ShelterForm {
    Args.within("sides", sides, 3, MOST_SIDES);
    Args.positive("base side", baseSide, "m");
    Args.within("base side", baseSide, 0, 100, "m");
    Args.positive("height", apexHeight, "m");
    Args.within("height", apexHeight, 0, 100, "m");
    Args.positive("height of the opening", top, "m");
    Args.within("height of the opening", top, 0, apexHeight, "m");
  }

  /**
   * Makes a whole shelter.
   *
   * @param sides sides of the base, 3 to {@link #MOST_SIDES}
   * @param baseSide side of the base, in metres, greater than 0, at most 100
   * @param height height of the apex over the ground, in metres, greater than 0, at most 100
   * @throws IllegalArgumentException if a number is out of range
   */
  public ShelterForm(int sides, double baseSide, double height) {
    this(sides, baseSide, height, height, false);
  }

  /**
   * Makes the shelter over a frame, whole or cut off level.
   *
   * @param sides sides of the base, 3 to {@link #MOST_SIDES}
   * @param baseSide side of the base, in metres, greater than 0, at most 100
   * @param apexHeight height at which the hips meet, or would meet, in metres, greater than 0
   * @param top height of what stands of the frame, in metres, at most {@code apexHeight}
   * @param capped whether a cone cap closes the opening; of no weight for a whole frame
   * @return the form
   * @throws IllegalArgumentException if a number is out of range
   */
  public static ShelterForm ofFrame(
      int sides, double baseSide, double apexHeight, double top, boolean capped) {
    return new ShelterForm(sides, baseSide, apexHeight, top, capped);
  }

  /**
   * Gives the height of what stands: the apex, or the opening that no cap closes.
   *
   * @return in metres
   */
  public double height() {
    return capped ? apexHeight : top;
  }

  /**
   * Tells whether the top is cut off and open.
   *
   * @return true if wind may blow in at the top
   */
  public boolean openAtTheTop() {
    return !capped && top < apexHeight;
  }

  /**
   * Computes the radius to the middle of a side.
   *
   * @return in metres
   */
  public double inradius() {
    return baseSide / (2 * StrictMath.tan(Math.PI / sides));
  }

  /**
   * Computes the radius to a corner.
   *
   * @return in metres
   */
  public double circumradius() {
    return baseSide / (2 * StrictMath.sin(Math.PI / sides));
  }

  /**
   * Computes the widest view of the base: the diameter through two corners, or, with an odd number
   * of sides, the longest diagonal.
   *
   * @return in metres
   */
  public double greatestWidth() {
    double r = circumradius();
    return sides % 2 == 0 ? 2 * r : 2 * r * StrictMath.cos(Math.PI / (2.0 * sides));
  }

  /**
   * Computes the greatest silhouette from the side: {@code w t (1 - t / (2 h)) + R (h - t)^2 / h},
   * the last part for a cap alone.
   *
   * @return in square metres
   */
  public double elevationArea() {
    return standingArea() + capArea();
  }

  /**
   * Computes the height of the middle of the greatest silhouette, at which an even pressure acts: a
   * third of the height for a whole shelter, more for one that is cut off.
   *
   * @return in metres over the ground
   */
  public double dragHeight() {
    double t = top;
    double standing = greatestWidth() * t * t * (0.5 - t / (3 * apexHeight));
    double cap = capArea() * (t + (apexHeight - t) / 3);
    return (standing + cap) / elevationArea();
  }

  /** The trapezium of the frame, or its triangle if it is whole. */
  double standingArea() {
    return greatestWidth() * top * (1 - top / (2 * apexHeight));
  }

  /** The triangle of the cap over the opening; 0 without a cap. */
  double capArea() {
    double above = apexHeight - top;
    return capped ? circumradius() * above * above / apexHeight : 0;
  }

  /**
   * Computes the area in plan.
   *
   * @return in square metres
   */
  public double planArea() {
    return sides * baseSide * inradius() / 2;
  }

  /**
   * Computes the slope of a face.
   *
   * @return in radians
   */
  public double faceSlope() {
    return StrictMath.atan2(apexHeight, inradius());
  }

  /**
   * Computes the slope of a hip, less than the face's.
   *
   * @return in radians
   */
  public double hipSlope() {
    return StrictMath.atan2(apexHeight, circumradius());
  }

  /**
   * Computes the length of the hem.
   *
   * @return in metres
   */
  public double perimeter() {
    return sides * baseSide;
  }
}
