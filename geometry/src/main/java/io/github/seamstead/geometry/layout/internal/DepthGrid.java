package io.github.seamstead.geometry.layout.internal;

/**
 * The depths of a {@link NoFit} over a grid: for each cell the few boundary segments that can be
 * nearest and the few half-planes that can decide.
 */
final class DepthGrid {

  /** Cells along each axis. Finer ones hold less each, but more of them do not fit a cache. */
  static final int SIZE = 32;

  /** The code of a cell in which the pieces do not overlap; one inside the region is below. */
  static final int APART = 0;

  final NoFit fit;
  final double perX;
  final double perY;

  /** For each cell {@link #APART} or the index of its entry, less than 0 inside the region. */
  final short[] codes;

  /** Depths at the corners of the cells, row by row; of no meaning outside the region. */
  final float[] depths;

  /** Where in the pool an entry begins. */
  final int[] start;

  /** Parts with their half-planes, then segments, of each entry. */
  final int[] pool;

  DepthGrid(NoFit fit, short[] codes, float[] depths, int[] start, int[] pool) {
    this.fit = fit;
    perX = SIZE / (fit.maxX - fit.minX);
    perY = SIZE / (fit.maxY - fit.minY);
    this.codes = codes;
    this.depths = depths;
    this.start = start;
    this.pool = pool;
  }

  /** The greatest depth at a corner of a cell; 1 if no cell lies inside. */
  double deepest() {
    float most = 0;
    for (float depth : depths) {
      most = depth > most ? depth : most;
    }
    return most > 0 ? most : 1;
  }

  /** The code of the cell in which a move within the region's box lies. */
  int code(double dx, double dy) {
    // Rounding may reach the far side.
    int column = Math.min(SIZE - 1, (int) ((dx - fit.minX) * perX));
    int row = Math.min(SIZE - 1, (int) ((dy - fit.minY) * perY));
    return codes[row * SIZE + column];
  }

  /** The depth at a move whose cell has a code, exact in every cell. */
  double exactDepth(int code, double dx, double dy) {
    int at = nearest(code, dx, dy);
    if (at < 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    int n = pool[at++];
    for (int end = at + n; at < end; at++) {
      least = Math.min(least, fit.square(pool[at], dx, dy));
    }
    return Math.sqrt(least);
  }

  /** What the pool holds. */
  int pooled(int at) {
    return pool[at];
  }

  /**
   * Where in the pool the number of segments that can be nearest to a move stands, before their
   * indices; less than 0 if the pieces do not overlap.
   */
  int nearest(int code, double dx, double dy) {
    if (code == APART) {
      return -1;
    }
    int at = start[Math.abs(code)];
    int parts = pool[at++];
    if (parts == 0) {
      return at;
    }
    double[] planes = fit.halfPlanes;
    for (int part = 0; part < parts; part++) {
      int end = at + 1 + pool[at];
      at++;
      while (at < end) {
        int k = pool[at];
        if (planes[k] * dx + planes[k + 1] * dy - planes[k + 2] > -NoFit.TOUCH) {
          break;
        }
        at++;
      }
      if (at == end) {
        return skip(at, parts - part - 1);
      }
      at = end;
    }
    return -1;
  }

  private int skip(int from, int parts) {
    int at = from;
    for (int part = 0; part < parts; part++) {
      at += 1 + pool[at];
    }
    return at;
  }
}
