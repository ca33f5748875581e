package io.github.seamstead.geometry.layout.internal;

import org.jspecify.annotations.Nullable;

/**
 * The no-fit region of a piece B around a piece A: the moves {@code d} of B's reference point from
 * A's at which the two overlap. It is the union of the open Minkowski sums of A's convex parts with
 * B's turned ones, so it is right for any simple outlines; slits and points where B fits exactly
 * are kept, because a boundary is dropped only where it runs more than {@link #TOUCH} inside a
 * part.
 *
 * <p>{@link #depth} is the length of the shortest move that ends the overlap, exact to {@link
 * #TOUCH}. A region that is asked often is given a {@link DepthGrid}, so that an evaluation costs
 * O(1) on average whatever the number of corners.
 */
public final class NoFit {

  /** Overlap that counts as touching, in the search's unit, in which stock is about 1 wide. */
  public static final double TOUCH = 2e-10;

  final double minX;
  final double minY;
  final double maxX;
  final double maxY;

  /** Boundary: x, y, unit direction x, y, length of each segment; the inside lies to the left. */
  public final double[] segments;

  /** Parts: outward normal x, y and offset of each half-plane {@code n.d < c}. */
  final double[] halfPlanes;

  /** Index of the first half-plane of each part, with one more at the end. */
  final int[] partStart;

  /** Made when it is first wanted. Who makes it makes the same. */
  private @Nullable DepthGrid grid;

  NoFit(double[] bounds, double[] segments, double[] halfPlanes, int[] partStart) {
    minX = bounds[0];
    minY = bounds[1];
    maxX = bounds[2];
    maxY = bounds[3];
    this.segments = segments;
    this.halfPlanes = halfPlanes;
    this.partStart = partStart;
  }

  /** The grid over this region. */
  DepthGrid grid() {
    DepthGrid made = grid;
    if (made == null) {
      made = DepthGridBuilder.over(this);
      grid = made;
    }
    return made;
  }

  private boolean isBeyond(double dx, double dy) {
    return !(dx > minX && dx < maxX && dy > minY && dy < maxY);
  }

  /** Depth of the overlap at move (dx, dy); 0 if there is none. */
  double depth(double dx, double dy) {
    if (isBeyond(dx, dy)) {
      return 0;
    }
    DepthGrid g = grid;
    if (g != null) {
      return g.exactDepth(g.code(dx, dy), dx, dy);
    }
    if (!isInside(dx, dy)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < segments.length; k += 5) {
      least = Math.min(least, square(k, dx, dy));
    }
    return Math.sqrt(least);
  }

  /** Square of a move's distance from a boundary segment. */
  double square(int k, double dx, double dy) {
    return square(segments, k, dx, dy);
  }

  /** Square of a point's distance from a segment that stands among others. Plain branches. */
  static double square(double[] s, int k, double dx, double dy) {
    double rx = dx - s[k];
    double ry = dy - s[k + 1];
    double along = rx * s[k + 2] + ry * s[k + 3];
    if (along <= 0) {
      return rx * rx + ry * ry;
    }
    double over = along - s[k + 4];
    double across = ry * s[k + 2] - rx * s[k + 3];
    return over <= 0 ? across * across : across * across + over * over;
  }

  boolean isInside(double dx, double dy) {
    for (int part = 0; part + 1 < partStart.length; part++) {
      int k = partStart[part];
      int end = partStart[part + 1];
      while (k < end && halfPlanes[k] * dx + halfPlanes[k + 1] * dy - halfPlanes[k + 2] <= -TOUCH) {
        k += 3;
      }
      if (k == end) {
        return true;
      }
    }
    return false;
  }

  /**
   * The shortest move that ends the overlap.
   *
   * @param exit takes the move
   * @return its length, 0 if there is no overlap
   */
  double exit(double dx, double dy, double[] exit) {
    exit[0] = 0;
    exit[1] = 0;
    if (isBeyond(dx, dy)) {
      return 0;
    }
    DepthGrid g = grid;
    int at = 0;
    int end = segments.length / 5;
    if (g == null) {
      if (!isInside(dx, dy)) {
        return 0;
      }
    } else {
      at = g.nearest(g.code(dx, dy), dx, dy);
      if (at < 0) {
        return 0;
      }
      end = at + 1 + g.pooled(at);
      at++;
    }
    double least = Double.POSITIVE_INFINITY;
    double[] s = segments;
    for (; at < end; at++) {
      int k = g == null ? 5 * at : g.pooled(at);
      double rx = dx - s[k];
      double ry = dy - s[k + 1];
      double along = Math.max(0, Math.min(s[k + 4], rx * s[k + 2] + ry * s[k + 3]));
      double ex = along * s[k + 2] - rx;
      double ey = along * s[k + 3] - ry;
      double off = ex * ex + ey * ey;
      if (off < least) {
        least = off;
        exit[0] = ex;
        exit[1] = ey;
      }
    }
    return Math.sqrt(least);
  }
}
