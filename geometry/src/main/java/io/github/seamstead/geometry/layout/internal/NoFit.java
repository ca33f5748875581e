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
 * #TOUCH}. Of a region that is asked often, a grid keeps for each cell the few boundary segments
 * that can be nearest and the few half-planes that can decide, so that an evaluation costs O(1) on
 * average whatever the number of corners.
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

  /** How often a region is asked before a grid over it is worth its building. */
  private static final int FEW = 400;

  /** Stands for the cell of a move as long as there is no grid. */
  private static final int NO_CELL = Integer.MAX_VALUE;

  /**
   * Made when it has been asked for often. Who makes it makes the same, and what it answers is what
   * the region answers without it, so that threads need not agree when.
   */
  private @Nullable Grid grid;

  private int asked;

  /** What can be nearest and what can decide, cell by cell. */
  static final class Grid {

    private final int size;
    private final double perX;
    private final double perY;
    private final int[] cells;

    /**
     * For each cell 0 if there the pieces cannot overlap, else 1 more than the least depth in it in
     * steps. Small, so that most evaluations stay in the fastest memory.
     */
    private final byte[] least;

    private final double step;

    /** Parts with their half-planes, then segments, of each entry. */
    private final int[] pool;

    Grid(int size, double perX, double perY, int[] cells, byte[] least, double step, int[] pool) {
      this.size = size;
      this.perX = perX;
      this.perY = perY;
      this.cells = cells;
      this.least = least;
      this.step = step;
      this.pool = pool;
    }
  }

  NoFit(double[] bounds, double[] segments, double[] halfPlanes, int[] partStart) {
    minX = bounds[0];
    minY = bounds[1];
    maxX = bounds[2];
    maxY = bounds[3];
    this.segments = segments;
    this.halfPlanes = halfPlanes;
    this.partStart = partStart;
  }

  /** The cell of a move, or -1 if there the pieces cannot overlap. */
  int cell(double dx, double dy) {
    if (!(dx > minX && dx < maxX && dy > minY && dy < maxY)) {
      return -1;
    }
    Grid g = grid;
    if (g == null) {
      if (asked++ < FEW) {
        return NO_CELL;
      }
      g = NoFitGrid.over(this);
      grid = g;
    }
    int ix = (int) ((dx - minX) * g.perX);
    int iy = (int) ((dy - minY) * g.perY);
    // Rounding may reach the far side.
    int cell = Math.min(iy, g.size - 1) * g.size + Math.min(ix, g.size - 1);
    return g.least[cell] == 0 ? -1 : cell;
  }

  /** A depth that no move in a cell falls short of. */
  double least(int cell) {
    Grid g = grid;
    return g == null || cell == NO_CELL ? 0 : ((g.least[cell] & 255) - 1) * g.step;
  }

  /** Depth of the overlap at move (dx, dy); 0 if there is none. */
  double depth(double dx, double dy) {
    int cell = cell(dx, dy);
    return cell < 0 ? 0 : depthIn(cell, dx, dy);
  }

  /** Depth of the overlap at a move whose cell is known. */
  double depthIn(int cell, double dx, double dy) {
    Grid g = grid;
    double least = Double.POSITIVE_INFINITY;
    if (g == null || cell == NO_CELL) {
      if (!isInside(dx, dy)) {
        return 0;
      }
      for (int k = 0; k < segments.length; k += 5) {
        least = Math.min(least, square(k, dx, dy));
      }
      return Math.sqrt(least);
    }
    int at = afterParts(g, g.cells[cell], dx, dy);
    if (at < 0) {
      return 0;
    }
    int n = g.pool[at++];
    for (int end = at + n; at < end; at++) {
      least = Math.min(least, square(g.pool[at], dx, dy));
    }
    return Math.sqrt(least);
  }

  /** Square of a move's distance from a boundary segment. Plain branches, for cold starts too. */
  double square(int k, double dx, double dy) {
    double[] s = segments;
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

  private boolean isInside(double dx, double dy) {
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
    int cell = cell(dx, dy);
    if (cell < 0) {
      return 0;
    }
    Grid g = grid;
    int at = 0;
    int end = segments.length / 5;
    boolean all = g == null || cell == NO_CELL;
    if (g == null || all) {
      if (!isInside(dx, dy)) {
        return 0;
      }
    } else {
      at = afterParts(g, g.cells[cell], dx, dy);
      if (at < 0) {
        return 0;
      }
      end = at + 1 + g.pool[at];
      at++;
    }
    double least = Double.POSITIVE_INFINITY;
    double[] s = segments;
    for (; at < end; at++) {
      int k = g == null || all ? 5 * at : g.pool[at];
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
  private int afterParts(Grid g, int start, double dx, double dy) {
    int[] pool = g.pool;
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
