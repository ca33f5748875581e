package io.github.seamstead.examples.lessons;

import java.util.ArrayList;
import java.util.List;

/** Outlines that several figures draw. */
final class Shapes {

  private Shapes() {}

  static double[] at(double x, double y) {
    return new double[] {x, y};
  }

  static List<double[]> box(double left, double right, double low, double high) {
    return List.of(at(left, low), at(right, low), at(right, high), at(left, high));
  }

  /** Corners of a regular polygon with a side at the bottom, the first at its right end. */
  static List<double[]> polygon(int sides, double circumradius) {
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / sides - Math.PI / 2;
      corners.add(at(circumradius * StrictMath.cos(angle), circumradius * StrictMath.sin(angle)));
    }
    return corners;
  }

  /** An arc about a point, for the mark of an angle. */
  static List<double[]> arc(double x, double y, double radius, double from, double to) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      double angle = from + (to - from) * i / 12;
      points.add(at(x + radius * StrictMath.cos(angle), y + radius * StrictMath.sin(angle)));
    }
    return points;
  }
}
