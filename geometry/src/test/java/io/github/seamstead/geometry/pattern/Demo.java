package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Faces and plans for tests. */
public final class Demo {

  public static final EdgePlan PLAN =
      EdgePlan.of(EdgeAllowance.hem(0.05), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0.06));

  private Demo() {}

  public static Vector2D v(double x, double y) {
    return Vector2D.of(x, y);
  }

  public static Outline triangle(double base, double height) {
    return Outline.of(v(0, 0), v(base, 0), v(base / 2, height));
  }

  /** Cut off parallel to the base at a part of the height. */
  public static Outline trapezoid(double base, double apexHeight, double part) {
    double inset = base / 2 * part;
    double y = apexHeight * part;
    return Outline.of(v(0, 0), v(base, 0), v(base - inset, y), v(inset, y));
  }

  /** A face of a right regular pyramid of side 1 times {@code side} and face slope θ. */
  public static Outline face(int n, double side, double slope) {
    double inradius = side / (2 * Math.tan(Math.PI / n));
    return triangle(side, inradius / Math.cos(slope));
  }
}
