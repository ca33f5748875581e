package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Turns outlines into corner arrays, and what lies outside a sheet into an obstacle. */
public final class Obstacles {

  private Obstacles() {}

  /**
   * Corners about a reference point, divided by the unit. They are rounded to 1e-12 of it, far
   * below what counts as touching, so that a figure moved elsewhere gives the very same numbers.
   */
  public static double[] corners(Outline o, Vector2D reference, double unit) {
    double[] out = new double[2 * o.size()];
    for (int i = 0; i < o.size(); i++) {
      out[2 * i] = rounded((o.vertex(i).getX() - reference.getX()) / unit);
      out[2 * i + 1] = rounded((o.vertex(i).getY() - reference.getY()) / unit);
    }
    return out;
  }

  private static double rounded(double v) {
    return Math.rint(v * 0x1p40) * 0x1p-40;
  }

  /**
   * The ring between a sheet and a box twice as large, cut open along a bridge from the sheet's
   * rightmost corner, so that it is one polygon.
   */
  public static double[] outside(double[] sheet) {
    int n = sheet.length / 2;
    double minX = Double.POSITIVE_INFINITY;
    double minY = minX;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = maxX;
    int rightmost = 0;
    for (int i = 0; i < n; i++) {
      minX = Math.min(minX, sheet[2 * i]);
      minY = Math.min(minY, sheet[2 * i + 1]);
      maxX = Math.max(maxX, sheet[2 * i]);
      maxY = Math.max(maxY, sheet[2 * i + 1]);
      rightmost = sheet[2 * i] > sheet[2 * rightmost] ? i : rightmost;
    }
    double far = (maxX - minX + maxY - minY) / 2;
    double y = sheet[2 * rightmost + 1];
    List<Double> ring = new ArrayList<>();
    double[] box = {
      maxX + far,
      y,
      maxX + far,
      maxY + far,
      minX - far,
      maxY + far,
      minX - far,
      minY - far,
      maxX + far,
      minY - far,
      maxX + far,
      y
    };
    for (double v : box) {
      ring.add(v);
    }
    for (int k = 0; k <= n; k++) {
      int i = Math.floorMod(rightmost - k, n);
      ring.add(sheet[2 * i]);
      ring.add(sheet[2 * i + 1]);
    }
    return ring.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
