package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Turns whose quarter turns are exact, so that panels stay flush at 90°, 180° and 270°. */
public final class Turns {

  private static final double EXACT = 1e-12;

  private Turns() {}

  public static double cos(double angle) {
    double c = StrictMath.cos(angle);
    return Math.abs(c) < EXACT ? 0 : Math.abs(Math.abs(c) - 1) < EXACT ? Math.signum(c) : c;
  }

  public static double sin(double angle) {
    return cos(angle - Math.PI / 2);
  }

  /** The box of corners x, y, x, y and so on turned about the origin. */
  public static Bounds box(double[] corners, double angle) {
    return box(corners, cos(angle), sin(angle));
  }

  public static Bounds box(double[] corners, double c, double s) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double low = left;
    double high = right;
    for (int i = 0; i < corners.length; i += 2) {
      double x = c * corners[i] - s * corners[i + 1];
      double y = s * corners[i] + c * corners[i + 1];
      left = Math.min(left, x);
      right = Math.max(right, x);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    return new Bounds(left, low, right, high);
  }

  public static Outline placed(Outline outline, double angle, Vector2D shift) {
    double c = cos(angle);
    double s = sin(angle);
    List<Vector2D> moved = new ArrayList<>(outline.size());
    for (Vector2D v : outline.vertices()) {
      moved.add(
          Vector2D.of(
              c * v.getX() - s * v.getY() + shift.getX(),
              s * v.getX() + c * v.getY() + shift.getY()));
    }
    return new Outline(moved);
  }
}
