package io.github.seamstead.geometry.layout;

/**
 * The no-fit region of a piece B around a piece A: the moves {@code d} of B's reference point from
 * A's at which the two overlap. It is the union of the open Minkowski sums of A's convex parts with
 * B's turned ones, so it is right for any simple outlines; slits and points where B fits exactly
 * are kept, because a boundary is dropped only where it runs more than {@link #TOUCH} inside a
 * part.
 *
 * <p>{@link #depth} is the length of the shortest move that ends the overlap, exact to {@link
 * #TOUCH}. A grid over the region keeps for each cell the few boundary segments that can be nearest
 * and the few half-planes that can decide, so that an evaluation costs O(1) on average whatever the
 * number of corners.
 */
final class NoFit {

  /** Overlap that counts as touching, in the search's unit, in which stock is about 1 wide. */
  static final double TOUCH = 2e-10;

  final double minX;
  final double minY;
  final double maxX;
  final double maxY;

  /** Boundary: x, y, unit direction x, y, length of each segment; the inside lies to the left. */
  final double[] segments;

  /** Parts: outward normal x, y and offset of each half-plane {@code n.d < c}. */
  final double[] halfPlanes;

  /** Index of the first half-plane of each part, with one more at the end. */
  final int[] partStart;

  private final int size;
  private final double perX;
  private final double perY;
  private final int[] cells;

  /**
   * For each cell 0 if there the pieces cannot overlap, else 1 more than the least depth in it in
   * steps of {@link #step}. Small, so that most evaluations stay in the fastest memory.
   */
  private final byte[] least;

  private final double step;
  private final int[] pool;

  NoFit(
      double[] bounds,
      double[] segments,
      double[] halfPlanes,
      int[] partStart,
      int size,
      int[] cells,
      byte[] least,
      double step,
      int[] pool) {
    minX = bounds[0];
    minY = bounds[1];
    maxX = bounds[2];
    maxY = bounds[3];
    this.segments = segments;
    this.halfPlanes = halfPlanes;
    this.partStart = partStart;
    this.size = size;
    this.cells = cells;
    this.pool = pool;
    this.least = least;
    this.step = step;
    perX = size / (maxX - minX);
    perY = size / (maxY - minY);
  }

  /** The cell of a move, or -1 if there the pieces cannot overlap. */
  int cell(double dx, double dy) {
    if (!(dx > minX && dx < maxX && dy > minY && dy < maxY)) {
      return -1;
    }
    int ix = (int) ((dx - minX) * perX);
    int iy = (int) ((dy - minY) * perY);
    // Rounding may reach the far side.
    int cell = Math.min(iy, size - 1) * size + Math.min(ix, size - 1);
    return least[cell] == 0 ? -1 : cell;
  }

  /** A depth that no move in a cell falls short of. */
  double least(int cell) {
    return ((least[cell] & 255) - 1) * step;
  }

  /** Depth of the overlap at move (dx, dy); 0 if there is none. */
  double depth(double dx, double dy) {
    int cell = cell(dx, dy);
    return cell < 0 ? 0 : depthIn(cell, dx, dy);
  }

  /** Depth of the overlap at a move whose cell is known. */
  double depthIn(int cell, double dx, double dy) {
    int at = afterParts(cells[cell], dx, dy);
    if (at < 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    int n = pool[at++];
    double[] s = segments;
    for (int end = at + n; at < end; at++) {
      int k = pool[at];
      double rx = dx - s[k];
      double ry = dy - s[k + 1];
      double along = rx * s[k + 2] + ry * s[k + 3];
      double off;
      if (along <= 0) {
        off = rx * rx + ry * ry;
      } else {
        double over = along - s[k + 4];
        double across = ry * s[k + 2] - rx * s[k + 3];
        off = over <= 0 ? across * across : across * across + over * over;
      }
      if (off < least) {
        least = off;
      }
    }
    return Math.sqrt(least);
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
    int cell = cell(dx, dy);
    if (cell < 0) {
      return 0;
    }
    int at = afterParts(cells[cell], dx, dy);
    if (at < 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    int n = pool[at++];
    double[] s = segments;
    for (int end = at + n; at < end; at++) {
      int k = pool[at];
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

  /** Skips the parts of a cell if one of them holds the move, else gives -1. */
  private int afterParts(int start, double dx, double dy) {
    int at = start;
    int parts = pool[at++];
    if (parts == 0) {
      return at;
    }
    boolean inside = false;
    for (int part = 0; part < parts; part++) {
      int planes = pool[at++];
      if (!inside) {
        inside = true;
        for (int i = 0; i < planes; i++) {
          int k = pool[at + i];
          if (halfPlanes[k] * dx + halfPlanes[k + 1] * dy - halfPlanes[k + 2] > -TOUCH) {
            inside = false;
            break;
          }
        }
      }
      at += planes;
    }
    return inside ? at : -1;
  }
}
