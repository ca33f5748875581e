package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Builds a {@link NoFit} from convex parts. For parts a and b with k corners in all it clips each
 * of the O(a b k) edges against the O(a b) sums near it, then refines a grid by quarters, handing
 * down only what can still be nearest or decide.
 */
final class NoFitBuilder {

  private final List<double[]> sums = new ArrayList<>();
  private double[] planes = new double[0];
  private int[] partStart = new int[0];
  private double[] segments = new double[0];
  private int segmentCount;

  /** The circle of the spacing is held to a polygon around it, at most 2% further out. */
  static final int SPACING_SIDES = 16;

  private int gridSize;
  private int[] cells = new int[0];
  private double[] least = new double[0];
  private int[] pool = new int[256];
  private int poolSize;

  private NoFitBuilder() {}

  /**
   * No-fit region of B around A.
   *
   * @param a convex parts of A about its reference point
   * @param b convex parts of B about its reference point
   * @param spacing distance to keep between A and B, 0 or more
   */
  static NoFit build(List<double[]> a, List<double[]> b, double spacing) {
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
  static double[] tooNear(double[] a, double[] b, double spacing) {
    double[] sum = Convex.sum(a, Convex.negated(b));
    return spacing > 0 ? Convex.sum(sum, Convex.aroundCircle(spacing, SPACING_SIDES, sum)) : sum;
  }

  private NoFit finish() {
    halfPlanes();
    clipBoundary();
    double[] bounds = bounds();
    int levels = 3;
    while (levels < 6 && (1 << (2 * levels)) < 10 * (segmentCount + 4)) {
      levels++;
    }
    gridSize = 1 << levels;
    cells = new int[gridSize * gridSize];
    least = new double[gridSize * gridSize];
    Arrays.fill(least, -1);
    int[] allSegments = new int[segmentCount];
    for (int i = 0; i < segmentCount; i++) {
      allSegments[i] = 5 * i;
    }
    int[] allParts = new int[sums.size()];
    for (int i = 0; i < allParts.length; i++) {
      allParts[i] = i;
    }
    refine(bounds, 0, 0, gridSize, allSegments, allParts);
    double step = Math.max(1e-300, Arrays.stream(least).max().orElse(0) / 253);
    return new NoFit(
        bounds,
        Arrays.copyOf(segments, 5 * segmentCount),
        planes,
        partStart,
        gridSize,
        cells,
        steps(least, step),
        step,
        Arrays.copyOf(pool, poolSize));
  }

  /** Depths in whole steps, rounded down so that they stay bounds. */
  private static byte[] steps(double[] least, double step) {
    byte[] steps = new byte[least.length];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = (byte) (least[i] < 0 ? 0 : 1 + (int) (least[i] / step * (1 - 1e-9)));
    }
    return steps;
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
        double length = Math.hypot(ex, ey);
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
        double length = Math.hypot(s[m] - s[k], s[m + 1] - s[k + 1]);
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

  private void refine(
      double[] bounds, int ix, int iy, int span, int[] segmentsNear, int[] partsNear) {
    double w = (bounds[2] - bounds[0]) / gridSize;
    double h = (bounds[3] - bounds[1]) / gridSize;
    double cx = bounds[0] + w * (ix + span / 2.0);
    double cy = bounds[1] + h * (iy + span / 2.0);
    double r = Math.sqrt(w * w + h * h) * span / 2 * (1 + 1e-9) + 1e-12;
    int[] parts = new int[partsNear.length];
    int partCount = 0;
    boolean whole = false;
    for (int part : partsNear) {
      double worst = Double.NEGATIVE_INFINITY;
      for (int k = partStart[part]; k < partStart[part + 1]; k += 3) {
        double out = planes[k] * cx + planes[k + 1] * cy - planes[k + 2];
        if (out > worst) {
          worst = out;
        }
      }
      if (worst < r) {
        parts[partCount++] = part;
        whole |= worst < -r - NoFit.TOUCH;
      }
    }
    if (partCount == 0) {
      return;
    }
    double[] far = new double[segmentsNear.length];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < far.length; i++) {
      far[i] = square(segmentsNear[i], cx, cy);
      if (far[i] < least) {
        least = far[i];
      }
    }
    double limit = (Math.sqrt(least) + 2 * r) * (Math.sqrt(least) + 2 * r);
    int[] near = new int[far.length];
    int nearCount = 0;
    for (int i = 0; i < far.length; i++) {
      if (far[i] <= limit) {
        near[nearCount++] = segmentsNear[i];
      }
    }
    near = Arrays.copyOf(near, nearCount);
    parts = Arrays.copyOf(parts, partCount);
    if (span == 1 || (whole && nearCount == 1)) {
      int at = store(cx, cy, r, near, whole ? new int[0] : parts);
      fill(bounds, ix, iy, span, at, whole ? near : new int[0]);
      return;
    }
    int half = span / 2;
    refine(bounds, ix, iy, half, near, parts);
    refine(bounds, ix + half, iy, half, near, parts);
    refine(bounds, ix, iy + half, half, near, parts);
    refine(bounds, ix + half, iy + half, half, near, parts);
  }

  /** Fills cells; if they lie inside the region, with the least depth from the segments near. */
  private void fill(double[] bounds, int ix, int iy, int span, int at, int[] near) {
    double w = (bounds[2] - bounds[0]) / gridSize;
    double h = (bounds[3] - bounds[1]) / gridSize;
    double r = Math.sqrt(w * w + h * h) / 2 * (1 + 1e-6) + 1e-12;
    for (int y = iy; y < iy + span; y++) {
      for (int x = ix; x < ix + span; x++) {
        double far = near.length == 0 ? 0 : Double.POSITIVE_INFINITY;
        for (int k : near) {
          double its = square(k, bounds[0] + w * (x + 0.5), bounds[1] + h * (y + 0.5));
          if (its < far) {
            far = its;
          }
        }
        least[y * gridSize + x] = Math.max(0, Math.sqrt(far) - r);
        cells[y * gridSize + x] = at;
      }
    }
  }

  private int store(double cx, double cy, double r, int[] near, int[] parts) {
    int start = poolSize;
    push(parts.length);
    for (int part : parts) {
      int count = poolSize;
      push(0);
      for (int k = partStart[part]; k < partStart[part + 1]; k += 3) {
        // Half-planes that hold throughout the cell need no test.
        if (planes[k] * cx + planes[k + 1] * cy - planes[k + 2] > -r - NoFit.TOUCH) {
          push(k);
          pool[count]++;
        }
      }
    }
    push(near.length);
    for (int k : near) {
      push(k);
    }
    return start;
  }

  private void push(int value) {
    if (poolSize == pool.length) {
      pool = Arrays.copyOf(pool, 2 * poolSize);
    }
    pool[poolSize++] = value;
  }

  /** Square of a point's distance from a segment. Plain branches, for cold starts too. */
  private double square(int k, double x, double y) {
    double rx = x - segments[k];
    double ry = y - segments[k + 1];
    double along = rx * segments[k + 2] + ry * segments[k + 3];
    if (along <= 0) {
      return rx * rx + ry * ry;
    }
    double over = along - segments[k + 4];
    double across = ry * segments[k + 2] - rx * segments[k + 3];
    return over <= 0 ? across * across : across * across + over * over;
  }
}
