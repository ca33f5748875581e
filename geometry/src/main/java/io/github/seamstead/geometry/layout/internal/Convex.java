package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Convex polygons as {@code [x0, y0, x1, y1, ...]}, counter-clockwise. Static helpers; nothing here
 * is called in the hot loop.
 */
public final class Convex {

  private Convex() {}

  /** Minkowski sum of two convex polygons by merging their edges by angle; O(n + m). */
  static double[] sum(double[] a, double[] b) {
    int n = a.length / 2;
    int m = b.length / 2;
    int i0 = lowest(a);
    int j0 = lowest(b);
    double[] out = new double[2 * (n + m)];
    int size = 0;
    double x = a[2 * i0] + b[2 * j0];
    double y = a[2 * i0 + 1] + b[2 * j0 + 1];
    int i = 0;
    int j = 0;
    while (i < n || j < m) {
      out[2 * size] = x;
      out[2 * size + 1] = y;
      size++;
      int ia = (i0 + i) % n;
      int ib = (ia + 1) % n;
      int ja = (j0 + j) % m;
      int jb = (ja + 1) % m;
      double ax = a[2 * ib] - a[2 * ia];
      double ay = a[2 * ib + 1] - a[2 * ia + 1];
      double bx = b[2 * jb] - b[2 * ja];
      double by = b[2 * jb + 1] - b[2 * ja + 1];
      double cross = i >= n ? -1 : j >= m ? 1 : ax * by - ay * bx;
      // Both edge fans start at the lowest corner, so equal angles come together and an edge may be
      // taken whenever it turns no further than the other's next.
      if (cross > 0) {
        x += ax;
        y += ay;
        i++;
      } else if (cross < 0) {
        x += bx;
        y += by;
        j++;
      } else {
        x += ax + bx;
        y += ay + by;
        i++;
        j++;
      }
    }
    return Arrays.copyOf(out, 2 * size);
  }

  private static int lowest(double[] p) {
    int best = 0;
    for (int i = 1; i < p.length / 2; i++) {
      double dy = p[2 * i + 1] - p[2 * best + 1];
      if (dy < 0 || (dy == 0 && p[2 * i] < p[2 * best])) {
        best = i;
      }
    }
    return best;
  }

  /** The polygon turned by half a turn about the origin: still counter-clockwise. */
  public static double[] negated(double[] p) {
    double[] out = new double[p.length];
    for (int i = 0; i < p.length; i++) {
      out[i] = -p[i];
    }
    return out;
  }

  static double[] turned(double[] p, double cos, double sin) {
    double[] out = new double[p.length];
    for (int i = 0; i < p.length; i += 2) {
      out[i] = cos * p[i] - sin * p[i + 1];
      out[i + 1] = sin * p[i] + cos * p[i + 1];
    }
    return out;
  }

  /**
   * A polygon around the circle of the given radius about the origin. Its sides face along x and y
   * and along the sides of the given polygon, so that gaps straight across and along sides are
   * exact; between, it leaves the circle by no more than a regular one of so many sides does.
   */
  static double[] aroundCircle(double radius, int sides, double[] polygon) {
    double step = 2 * Math.PI / sides;
    List<Double> facing = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      facing.add(i * Math.PI / 2);
    }
    for (int i = 0; i < polygon.length; i += 2) {
      int k = (i + 2) % polygon.length;
      double angle = StrictMath.atan2(polygon[i] - polygon[k], polygon[k + 1] - polygon[i + 1]);
      facing.add(angle < 0 ? angle + 2 * Math.PI : angle);
    }
    Collections.sort(facing);
    facing.add(2 * Math.PI);
    List<Double> all = new ArrayList<>(List.of(0.0));
    double last = 0;
    for (double angle : facing) {
      if (angle - last > 1e-9) {
        int parts = (int) Math.ceil((angle - last) / step - 1e-9);
        for (int i = 1; i <= parts; i++) {
          all.add(last + (angle - last) * i / parts);
        }
        last = angle;
      }
    }
    double[] out = new double[2 * (all.size() - 1)];
    for (int i = 0; i + 1 < all.size(); i++) {
      double middle = (all.get(i) + all.get(i + 1)) / 2;
      double r = radius / StrictMath.cos((all.get(i + 1) - all.get(i)) / 2);
      out[2 * i] = r * StrictMath.cos(middle);
      out[2 * i + 1] = r * StrictMath.sin(middle);
    }
    return out;
  }

  static double area(double[] p) {
    double twice = 0;
    for (int i = 2; i + 3 < p.length; i += 2) {
      twice += (p[i] - p[0]) * (p[i + 3] - p[1]) - (p[i + 1] - p[1]) * (p[i + 2] - p[0]);
    }
    return twice / 2;
  }
}
