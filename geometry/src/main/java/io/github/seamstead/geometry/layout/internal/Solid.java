package io.github.seamstead.geometry.layout.internal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A shape's convex parts in one turn, about its reference point, and how deep two such shapes lie
 * in one another.
 *
 * <p>Where shapes take any angle, or there are so many that the no-fit regions of all pairs would
 * take too long to build, overlaps are found from the parts themselves: two convex parts overlap as
 * deep as the shortest move along one of their edges' normals that parts them (separating axes).
 * The deepest pair counts, so that the depth is 0 exactly where the shapes do not overlap. O(a b k)
 * for a and b parts of k corners in all, less what the parts' boxes rule out.
 */
final class Solid {

  private final int[] start;
  private final double[] x;
  private final double[] y;

  /** Outward normal of the edge from each corner, and how far out it lies. */
  private final double[] normalX;

  private final double[] normalY;
  private final double[] offset;

  /** Left, right, low and high side of each part's box. */
  private final double[] box;

  private int bestNormal;
  private boolean bestIsOwn;

  /** As the parts are given. */
  Solid(List<double[]> parts) {
    start = new int[parts.size() + 1];
    for (int p = 0; p < parts.size(); p++) {
      start[p + 1] = start[p] + parts.get(p).length / 2;
    }
    int n = start[parts.size()];
    x = new double[n];
    y = new double[n];
    normalX = new double[n];
    normalY = new double[n];
    offset = new double[n];
    box = new double[4 * parts.size()];
    for (int p = 0; p < parts.size(); p++) {
      double[] part = parts.get(p);
      int m = part.length / 2;
      for (int k = 0; k < m; k++) {
        int next = (k + 1) % m;
        double ex = part[2 * next] - part[2 * k];
        double ey = part[2 * next + 1] - part[2 * k + 1];
        double length = StrictMath.hypot(ex, ey);
        int at = start[p] + k;
        x[at] = part[2 * k];
        y[at] = part[2 * k + 1];
        normalX[at] = ey / length;
        normalY[at] = -ex / length;
        offset[at] = normalX[at] * x[at] + normalY[at] * y[at];
      }
    }
    boxes();
  }

  private Solid(Solid of) {
    start = of.start;
    x = of.x.clone();
    y = of.y.clone();
    normalX = of.normalX.clone();
    normalY = of.normalY.clone();
    offset = of.offset;
    box = of.box.clone();
  }

  /** A copy that can be turned. */
  Solid copy() {
    return new Solid(this);
  }

  /** Takes the place of another solid of the same shape turned about the reference point. */
  void turn(Solid drawn, double cos, double sin) {
    for (int i = 0; i < x.length; i++) {
      x[i] = cos * drawn.x[i] - sin * drawn.y[i];
      y[i] = sin * drawn.x[i] + cos * drawn.y[i];
      normalX[i] = cos * drawn.normalX[i] - sin * drawn.normalY[i];
      normalY[i] = sin * drawn.normalX[i] + cos * drawn.normalY[i];
    }
    boxes();
  }

  private void boxes() {
    for (int p = 0; p + 1 < start.length; p++) {
      double left = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      double low = left;
      double high = right;
      for (int i = start[p]; i < start[p + 1]; i++) {
        left = Math.min(left, x[i]);
        right = Math.max(right, x[i]);
        low = Math.min(low, y[i]);
        high = Math.max(high, y[i]);
      }
      box[4 * p] = left;
      box[4 * p + 1] = right;
      box[4 * p + 2] = low;
      box[4 * p + 3] = high;
    }
  }

  /**
   * Depth of the overlap with another shape.
   *
   * @param other the other shape
   * @param dx where its reference point lies from this one's
   * @param dy likewise
   * @param keep distance to keep; coming nearer counts as overlap
   * @param exit takes the move of the other that ends the deepest overlap; null if not wanted
   * @return the depth, 0 if they do not overlap by more than {@link NoFit#TOUCH}
   */
  double depth(Solid other, double dx, double dy, double keep, double @Nullable [] exit) {
    double deepest = 0;
    for (int p = 0; p + 1 < start.length; p++) {
      for (int q = 0; q + 1 < other.start.length; q++) {
        if (other.box[4 * q] + dx >= box[4 * p + 1] + keep
            || other.box[4 * q + 1] + dx <= box[4 * p] - keep
            || other.box[4 * q + 2] + dy >= box[4 * p + 3] + keep
            || other.box[4 * q + 3] + dy <= box[4 * p + 2] - keep) {
          continue;
        }
        double deep = partDepth(p, other, q, dx, dy, keep);
        if (deep > deepest) {
          deepest = deep;
          if (exit != null) {
            double sign = bestIsOwn ? deep : -deep;
            exit[0] = sign * (bestIsOwn ? normalX : other.normalX)[bestNormal];
            exit[1] = sign * (bestIsOwn ? normalY : other.normalY)[bestNormal];
          }
        }
      }
    }
    return deepest;
  }

  private double partDepth(int p, Solid other, int q, double dx, double dy, double keep) {
    double least = Double.POSITIVE_INFINITY;
    for (int e = start[p]; e < start[p + 1]; e++) {
      double deep = keep + offset[e] - other.reach(q, normalX[e], normalY[e]);
      deep -= normalX[e] * dx + normalY[e] * dy;
      if (deep <= NoFit.TOUCH) {
        return 0;
      }
      if (deep < least) {
        least = deep;
        bestNormal = e;
        bestIsOwn = true;
      }
    }
    for (int e = other.start[q]; e < other.start[q + 1]; e++) {
      double nx = other.normalX[e];
      double ny = other.normalY[e];
      double deep = keep + other.offset[e] - reach(p, nx, ny) + nx * dx + ny * dy;
      if (deep <= NoFit.TOUCH) {
        return 0;
      }
      if (deep < least) {
        least = deep;
        bestNormal = e;
        bestIsOwn = false;
      }
    }
    if (least >= keep) {
      return least;
    }
    // Apart, but nearer along every normal than they may be: corner may face corner.
    double left = keep - distance(p, other, q, dx, dy);
    return left <= NoFit.TOUCH ? 0 : left;
  }

  /** The least of a part's corners along a direction. */
  private double reach(int p, double nx, double ny) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = start[p]; i < start[p + 1]; i++) {
      least = Math.min(least, nx * x[i] + ny * y[i]);
    }
    return least;
  }

  private double distance(int p, Solid other, int q, double dx, double dy) {
    return Math.min(cornersFrom(p, other, q, dx, dy), other.cornersFrom(q, this, p, -dx, -dy));
  }

  /** Distance of another's corners from this part's edges. */
  private double cornersFrom(int p, Solid other, int q, double dx, double dy) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = other.start[q]; i < other.start[q + 1]; i++) {
      for (int e = start[p]; e < start[p + 1]; e++) {
        int f = e + 1 < start[p + 1] ? e + 1 : start[p];
        double ex = x[f] - x[e];
        double ey = y[f] - y[e];
        double rx = other.x[i] + dx - x[e];
        double ry = other.y[i] + dy - y[e];
        double t = Math.max(0, Math.min(1, (rx * ex + ry * ey) / (ex * ex + ey * ey)));
        least = Math.min(least, StrictMath.hypot(rx - t * ex, ry - t * ey));
      }
    }
    return least;
  }
}
