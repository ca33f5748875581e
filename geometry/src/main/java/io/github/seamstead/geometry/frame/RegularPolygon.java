package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.check.Args;

/**
 * A regular polygon, as the plan of a base ring or an opening ring.
 *
 * <p>Source of the formulas: CRC Standard Mathematical Tables and Formulas, 30th ed., sec. 5.3.
 *
 * @param sides the number of sides n, 3 to 64
 * @param side the length of a side a, in metres, 0.000001 to 1000000
 */
public record RegularPolygon(int sides, double side) {

  /** The least number of sides. */
  public static final int LEAST_SIDES = 3;

  /** The greatest number of sides. */
  public static final int GREATEST_SIDES = 64;

  static final double LEAST_LENGTH = 1e-6;
  static final double GREATEST_LENGTH = 1e6;

  public RegularPolygon {
    requireSides(sides);
    Args.within("side", side, LEAST_LENGTH, GREATEST_LENGTH, "m");
  }

  /**
   * Makes the polygon whose corners lie on a circle: {@code a = 2 R sin(pi/n)}.
   *
   * @param sides 3 to 64
   * @param circumradius the circle's radius R, in metres, greater than 0
   * @return the polygon
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RegularPolygon ofCircumradius(int sides, double circumradius) {
    Args.positive("circumradius", circumradius, "m");
    return new RegularPolygon(
        requireSides(sides), 2 * circumradius * StrictMath.sin(Math.PI / sides));
  }

  /**
   * Makes the polygon whose sides touch a circle: {@code a = 2 r tan(pi/n)}.
   *
   * @param sides 3 to 64
   * @param inradius the circle's radius r, in metres, greater than 0
   * @return the polygon
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RegularPolygon ofInradius(int sides, double inradius) {
    Args.positive("inradius", inradius, "m");
    return new RegularPolygon(requireSides(sides), 2 * inradius * StrictMath.tan(Math.PI / sides));
  }

  static int requireSides(int sides) {
    return Args.within("number of sides", sides, LEAST_SIDES, GREATEST_SIDES);
  }

  /**
   * Gives the distance from the centre to a corner, {@code R = a / (2 sin(pi/n))}.
   *
   * @return the circumradius, in metres
   */
  public double circumradius() {
    return side / (2 * StrictMath.sin(Math.PI / sides));
  }

  /**
   * Gives the distance from the centre to a side, {@code r = a / (2 tan(pi/n))}.
   *
   * @return the inradius, in metres
   */
  public double inradius() {
    return side / (2 * StrictMath.tan(Math.PI / sides));
  }

  /**
   * Gives what a tape reads square across from a side: to the opposite side where n is even ({@code
   * 2 r}), to the opposite corner where n is odd ({@code r + R}), since an odd polygon has no
   * opposite side.
   *
   * @return the distance across flats, in metres
   */
  public double acrossFlats() {
    return isEven() ? 2 * inradius() : inradius() + circumradius();
  }

  /**
   * Gives the greatest distance between two corners: {@code 2 R} where n is even, {@code 2 R
   * cos(pi/(2n))} where n is odd.
   *
   * @return the distance across corners, in metres
   */
  public double acrossCorners() {
    return isEven()
        ? 2 * circumradius()
        : 2 * circumradius() * StrictMath.cos(Math.PI / (2 * sides));
  }

  /**
   * Gives {@code P = n a}.
   *
   * @return the perimeter, in metres
   */
  public double perimeter() {
    return sides * side;
  }

  /**
   * Gives {@code A = n a^2 / (4 tan(pi/n))}.
   *
   * @return the area, in square metres
   */
  public double area() {
    return sides * side * side / (4 * StrictMath.tan(Math.PI / sides));
  }

  /**
   * Gives the angle between neighbouring sides, {@code pi (n - 2) / n}.
   *
   * @return the interior angle, in radians
   */
  public double interiorAngle() {
    return Math.PI * (sides - 2) / sides;
  }

  /**
   * Gives the distance from a corner to the k-th next corner, {@code 2 R sin(k pi/n)}: what a tape
   * reads when the ring is checked.
   *
   * @param steps k, corners counted along the ring, 1 to n − 1
   * @return the chord, in metres
   * @throws IllegalArgumentException if {@code steps} is outside its range
   */
  public double chord(int steps) {
    Args.within("corners counted along the ring", steps, 1, sides - 1);
    return 2 * circumradius() * StrictMath.sin(steps * Math.PI / sides);
  }

  boolean isEven() {
    return sides % 2 == 0;
  }
}
