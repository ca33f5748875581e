package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;

/**
 * The outline of a regular-pyramid shelter as the wind meets it.
 *
 * @param sides sides of the base, 3 to {@link #MOST_SIDES}
 * @param baseSideMetres side of the base, in metres, greater than 0
 * @param heightMetres height of the apex over the ground, in metres, greater than 0; a truncated
 *     shelter is taken whole, which is on the cautious side
 */
public record ShelterForm(int sides, double baseSideMetres, double heightMetres) {

  /** The most sides. */
  public static final int MOST_SIDES = 64;

  /**
   * Checks the form.
   *
   * @param sides 3 to {@link #MOST_SIDES}
   * @param baseSideMetres greater than 0, at most 100
   * @param heightMetres greater than 0, at most 100
   * @throws IllegalArgumentException if a number is out of range
   */
  public ShelterForm {
    Args.within("sides", sides, 3, MOST_SIDES);
    Args.positive("base side", baseSideMetres, "m");
    Args.within("base side", baseSideMetres, 0, 100, "m");
    Args.positive("height", heightMetres, "m");
    Args.within("height", heightMetres, 0, 100, "m");
  }

  /**
   * Computes the radius to the middle of a side.
   *
   * @return in metres
   */
  public double inradiusMetres() {
    return baseSideMetres / (2 * Math.tan(Math.PI / sides));
  }

  /**
   * Computes the radius to a corner.
   *
   * @return in metres
   */
  public double circumradiusMetres() {
    return baseSideMetres / (2 * Math.sin(Math.PI / sides));
  }

  /**
   * Computes the widest view of the base: the diameter through two corners, or, with an odd number
   * of sides, the longest diagonal.
   *
   * @return in metres
   */
  public double greatestWidthMetres() {
    double r = circumradiusMetres();
    return sides % 2 == 0 ? 2 * r : 2 * r * Math.cos(Math.PI / (2.0 * sides));
  }

  /**
   * Computes the greatest silhouette from the side, a triangle.
   *
   * @return in square metres
   */
  public double elevationSquareMetres() {
    return greatestWidthMetres() * heightMetres / 2;
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
    return Math.atan2(heightMetres, inradiusMetres());
  }

  /**
   * Computes the slope of a hip, less than the face's.
   *
   * @return in radians
   */
  public double hipSlopeRadians() {
    return Math.atan2(heightMetres, circumradiusMetres());
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
