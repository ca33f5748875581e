package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Builds a {@link NoFit} from convex parts. For parts a and b with k corners in all it clips each
 * of the O(a b k) edges against the O(a b) sums near it.
 */
public final class NoFitBuilder {

  private final List<double[]> sums = new ArrayList<>();
  private double[] planes = new double[0];
  private int[] partStart = new int[0];
  private double[] segments = new double[0];
  private int segmentCount;

  /** The circle of the spacing is held to a polygon around it, at most 2% further out. */
  public static final int SPACING_SIDES = 16;

  private NoFitBuilder() {}

  /**
   * No-fit region of B around A.
   *
   * @param a convex parts of A about its reference point
   * @param b convex parts of B about its reference point
   * @param spacing distance to keep between A and B, 0 or more
   */
  public static NoFit build(List<double[]> a, List<double[]> b, double spacing) {
    NoFitBuilder builder = new NoFitBuilder();
    for (double[] pa : a) {
      for (double[] pb : b) {
        builder.sums.add(tooNear(pa, pb, spacing));
      }
    }
    return builder.finish();
  }

  /**
   * The moves of convex part b from convex part a at which they overlap or do not keep a spacing.
   */
  public static double[] tooNear(double[] a, double[] b, double spacing) {
    double[] sum = Convex.sum(a, Convex.negated(b));
    return spacing > 0 ? Convex.sum(sum, Convex.aroundCircle(spacing, SPACING_SIDES, sum)) : sum;
  }

  private NoFit finish() {
    halfPlanes();
    clipBoundary();
    return new NoFit(bounds(), Arrays.copyOf(segments, 5 * segmentCount), planes, partStart);
  }

  private void halfPlanes() {
    partStart = new int[sums.size() + 1];
    int total = 0;
    for (double[] s : sums) {
      total += s.length / 2;
    }
    planes = new double[3 * total];
    int at = 0;
    for (int i = 0; i < sums.size(); i++) {
      double[] s = sums.get(i);
      partStart[i] = at;
      for (int k = 0; k < s.length; k += 2) {
        int m = (k + 2) % s.length;
        double ex = s[m] - s[k];
        double ey = s[m + 1] - s[k + 1];
        double length = StrictMath.hypot(ex, ey);
        if (length > 0) {
          planes[at] = ey / length;
          planes[at + 1] = -ex / length;
          planes[at + 2] = planes[at] * s[k] + planes[at + 1] * s[k + 1];
          at += 3;
        }
      }
    }
    partStart[sums.size()] = at;
    planes = Arrays.copyOf(planes, at);
  }

  /** Keeps of each edge of each sum what is not strictly inside another sum. */
  private void clipBoundary() {
    int count = sums.size();
    double[][] boxes = new double[count][];
    for (int i = 0; i < count; i++) {
      boxes[i] = box(sums.get(i));
    }
    double[] from = new double[count];
    double[] to = new double[count];
    for (int i = 0; i < count; i++) {
      double[] s = sums.get(i);
      for (int k = 0; k < s.length; k += 2) {
        int m = (k + 2) % s.length;
        double length = StrictMath.hypot(s[m] - s[k], s[m + 1] - s[k + 1]);
        if (length == 0) {
          continue;
        }
        double ux = (s[m] - s[k]) / length;
        double uy = (s[m + 1] - s[k + 1]) / length;
        int cuts = 0;
        for (int j = 0; j < count; j++) {
          double[] o = boxes[j];
          if (j == i
              || Math.max(s[k], s[m]) < o[0]
              || Math.min(s[k], s[m]) > o[2]
              || Math.max(s[k + 1], s[m + 1]) < o[1]
              || Math.min(s[k + 1], s[m + 1]) > o[3]) {
            continue;
          }
          if (inside(j, s[k], s[k + 1], ux, uy, length, cuts, from, to)) {
            cuts++;
          }
        }
        keep(s[k], s[k + 1], ux, uy, length, from, to, cuts);
      }
    }
  }

  /** Finds the stretch of an edge that is strictly inside sum j. */
  private boolean inside(
      int j,
      double x,
      double y,
      double ux,
      double uy,
      double length,
      int slot,
      double[] from,
      double[] to) {
    double t0 = 0;
    double t1 = length;
    for (int h = partStart[j]; h < partStart[j + 1]; h += 3) {
      double value = planes[h] * x + planes[h + 1] * y - planes[h + 2] + NoFit.TOUCH;
      double slope = planes[h] * ux + planes[h + 1] * uy;
      if (Math.abs(slope) < 1e-13) {
        if (value >= 0) {
          return false;
        }
      } else if (slope > 0) {
        t1 = Math.min(t1, -value / slope);
      } else {
        t0 = Math.max(t0, -value / slope);
      }
      if (t0 >= t1) {
        return false;
      }
    }
    from[slot] = t0;
    to[slot] = t1;
    return true;
  }

  private void keep(
      double x,
      double y,
      double ux,
      double uy,
      double length,
      double[] from,
      double[] to,
      int cuts) {
    double at = 0;
    while (at <= length) {
      // Skip what is covered from here on, then find the next cut.
      boolean moved = true;
      while (moved) {
        moved = false;
        for (int c = 0; c < cuts; c++) {
          if (from[c] <= at && to[c] > at) {
            at = to[c];
            moved = true;
          }
        }
      }
      if (at >= length && cuts > 0 && at > 0) {
        return;
      }
      double next = length;
      for (int c = 0; c < cuts; c++) {
        if (from[c] > at) {
          next = Math.min(next, from[c]);
        }
      }
      add(x + at * ux, y + at * uy, ux, uy, next - at);
      if (next >= length) {
        return;
      }
      at = next;
    }
  }

  private void add(double x, double y, double ux, double uy, double length) {
    if (5 * segmentCount + 5 > segments.length) {
      segments = Arrays.copyOf(segments, Math.max(80, 2 * segments.length));
    }
    int k = 5 * segmentCount++;
    segments[k] = x;
    segments[k + 1] = y;
    segments[k + 2] = ux;
    segments[k + 3] = uy;
    segments[k + 4] = length;
  }

  private double[] bounds() {
    double[] all = box(sums.get(0));
    for (double[] s : sums) {
      double[] b = box(s);
      all[0] = Math.min(all[0], b[0]);
      all[1] = Math.min(all[1], b[1]);
      all[2] = Math.max(all[2], b[2]);
      all[3] = Math.max(all[3], b[3]);
    }
    return all;
  }

  private static double[] box(double[] p) {
    double[] b = {p[0], p[1], p[0], p[1]};
    for (int i = 2; i < p.length; i += 2) {
      b[0] = Math.min(b[0], p[i]);
      b[1] = Math.min(b[1], p[i + 1]);
      b[2] = Math.max(b[2], p[i]);
      b[3] = Math.max(b[3], p[i + 1]);
    }
    return b;
  }
}
