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
 * @param baseSideMetres side of the base, in metres, greater than 0; at most 100
 * @param apexMetres height over the ground at which the hips meet, or would meet, in metres,
 *     greater than 0, at most 100
 * @param topMetres height of the opening at the top, in metres, greater than 0; the apex itself for
 *     a whole shelter; at most {@code apexMetres}
 * @param capped whether a cone cap closes the opening
 */
public record ShelterForm(
    int sides, double baseSideMetres, double apexMetres, double topMetres, boolean capped) {

  /** The most sides. */
  public static final int MOST_SIDES = 64;

  public ShelterForm {
    Args.within("sides", sides, 3, MOST_SIDES);
    Args.positive("base side", baseSideMetres, "m");
    Args.within("base side", baseSideMetres, 0, 100, "m");
    Args.positive("height", apexMetres, "m");
    Args.within("height", apexMetres, 0, 100, "m");
    Args.positive("height of the opening", topMetres, "m");
    Args.within("height of the opening", topMetres, 0, apexMetres, "m");
  }

  /**
   * Makes a whole shelter.
   *
   * @param sides sides of the base, 3 to {@link #MOST_SIDES}
   * @param baseSideMetres side of the base, in metres, greater than 0, at most 100
   * @param heightMetres height of the apex over the ground, in metres, greater than 0, at most 100
   * @throws IllegalArgumentException if a number is out of range
   */
  public ShelterForm(int sides, double baseSideMetres, double heightMetres) {
    this(sides, baseSideMetres, heightMetres, heightMetres, false);
  }

  /**
   * Makes the shelter over a frame, whole or cut off level.
   *
   * @param sides sides of the base, 3 to {@link #MOST_SIDES}
   * @param baseSideMetres side of the base, in metres, greater than 0, at most 100
   * @param apexMetres height at which the hips meet, or would meet, in metres, greater than 0
   * @param topMetres height of what stands of the frame, in metres, at most {@code apexMetres}
   * @param capped whether a cone cap closes the opening; of no weight for a whole frame
   * @return the form
   * @throws IllegalArgumentException if a number is out of range
   */
  public static ShelterForm ofFrame(
      int sides, double baseSideMetres, double apexMetres, double topMetres, boolean capped) {
    return new ShelterForm(sides, baseSideMetres, apexMetres, topMetres, capped);
  }

  /**
   * Gives the height of what stands: the apex, or the opening that no cap closes.
   *
   * @return in metres
   */
  public double heightMetres() {
    return capped ? apexMetres : topMetres;
  }

  /**
   * Tells whether the top is cut off and open.
   *
   * @return true if wind may blow in at the top
   */
  public boolean openAtTheTop() {
    return !capped && topMetres < apexMetres;
  }

  /**
   * Computes the radius to the middle of a side.
   *
   * @return in metres
   */
  public double inradiusMetres() {
    return baseSideMetres / (2 * StrictMath.tan(Math.PI / sides));
  }

  /**
   * Computes the radius to a corner.
   *
   * @return in metres
   */
  public double circumradiusMetres() {
    return baseSideMetres / (2 * StrictMath.sin(Math.PI / sides));
  }

  /**
   * Computes the widest view of the base: the diameter through two corners, or, with an odd number
   * of sides, the longest diagonal.
   *
   * @return in metres
   */
  public double greatestWidthMetres() {
    double r = circumradiusMetres();
    return sides % 2 == 0 ? 2 * r : 2 * r * StrictMath.cos(Math.PI / (2.0 * sides));
  }

  /**
   * Computes the greatest silhouette from the side: {@code w t (1 - t / (2 h)) + R (h - t)^2 / h},
   * the last part for a cap alone.
   *
   * @return in square metres
   */
  public double elevationSquareMetres() {
    return standingSquareMetres() + capSquareMetres();
  }

  /**
   * Computes the height of the middle of the greatest silhouette, at which an even pressure acts: a
   * third of the height for a whole shelter, more for one that is cut off.
   *
   * @return in metres over the ground
   */
  public double dragHeightMetres() {
    double t = topMetres;
    double standing = greatestWidthMetres() * t * t * (0.5 - t / (3 * apexMetres));
    double cap = capSquareMetres() * (t + (apexMetres - t) / 3);
    return (standing + cap) / elevationSquareMetres();
  }

  /** The trapezium of the frame, or its triangle if it is whole. */
  double standingSquareMetres() {
    return greatestWidthMetres() * topMetres * (1 - topMetres / (2 * apexMetres));
  }

  /** The triangle of the cap over the opening; 0 without a cap. */
  double capSquareMetres() {
    double above = apexMetres - topMetres;
    return capped ? circumradiusMetres() * above * above / apexMetres : 0;
  }

  /**
   * Computes the area in plan.
   *
   * @return in square metres
   */
  public double planSquareMetres() {
    return sides * baseSideMetres * inradiusMetres() / 2;
  }

  /**
   * Computes the slope of a face.
   *
   * @return in radians
   */
  public double faceSlopeRadians() {
    return StrictMath.atan2(apexMetres, inradiusMetres());
  }

  /**
   * Computes the slope of a hip, less than the face's.
   *
   * @return in radians
   */
  public double hipSlopeRadians() {
    return StrictMath.atan2(apexMetres, circumradiusMetres());
  }

  /**
   * Computes the length of the hem.
   *
   * @return in metres
   */
  public double perimeterMetres() {
    return sides * baseSideMetres;
  }
}
