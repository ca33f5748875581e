package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;
import java.util.IdentityHashMap;

/**
 * The grids of all pairs that are asked often, packed for one thread.
 *
 * <p>Places are judged by the million, a few pairs each, so that what an evaluation costs is how
 * often it waits for memory. So a cell is one word: nothing where the pieces lie apart; inside the
 * no-fit region the depth as a plane over the cell; at its boundary the straight side that decides
 * ({@link StraightSides}), or where to find the half-planes and segments, in one row. Inside, where
 * the overlap is deeper than the part of a cell, depths are near ones; at the boundary they are
 * exact, so that touching is told from overlapping everywhere to {@link NoFit#TOUCH}.
 *
 * <p>How often a pair has been asked each thread counts for itself: when near depths begin to count
 * must not depend on what other threads do.
 */
final class DepthTable {

  /** How often a region is asked before a grid over it is worth its building. */
  private static final int FEW = 400;

  /** Left and low end, cells per length along x and y, first cell, and what a step is worth. */
  private static final int HEAD = 8;

  /** Steps of depth, and of its change over a cell either way, that a word has room for. */
  private static final int STEPS = (1 << 14) - 1;

  private static final int CHANGES = (1 << 7) - 1;

  /** What the last two bits of a word tell: a row, a plane over the cell, or a straight side. */
  private static final int ROW = 1;

  private static final int INSIDE = 2;
  private static final int SIDE = 3;

  private final int turns;

  /** For each pair the place of its head, plus 1; or how often it was asked, less than 0. */
  private final int[] slot;

  private double[] head = new double[8 * HEAD];
  private int heads;
  private int[] cells = new int[0];
  private int cellCount;

  /** The heads of regions, which several pairs may share. */
  private final IdentityHashMap<NoFit, Integer> known = new IdentityHashMap<>();

  private double[] pool = new double[1024];
  private int poolSize;

  /** Outward normal x and y and offset of each straight side. */
  private double[] sides = new double[192];

  private int sideCount;

  DepthTable(int turns) {
    this.turns = turns;
    slot = new int[turns * turns];
  }

  /**
   * The head of a pair of orientations.
   *
   * @return less than 0 as long as it has been asked for too seldom
   */
  int head(Orientations of, int a, int b) {
    int its = slot[a * turns + b];
    return its > 0 ? its - 1 : count(of, a, b);
  }

  private int count(Orientations of, int a, int b) {
    int at = a * turns + b;
    if (slot[at]-- > -FEW) {
      return -1;
    }
    NoFit fit = of.fit(a, b);
    Integer before = known.get(fit);
    int h = before != null ? before : pack(fit.grid());
    known.put(fit, h);
    slot[at] = h + 1;
    return h;
  }

  double minX(int h) {
    return head[h];
  }

  double minY(int h) {
    return head[h + 1];
  }

  /** Cells per length. */
  double perX(int h) {
    return head[h + 2];
  }

  double perY(int h) {
    return head[h + 3];
  }

  /** The word of the cell in which a move lies; 0 if the pieces lie apart there. */
  int cell(int h, double dx, double dy) {
    return cellAt(h, (dx - head[h]) * head[h + 2], (dy - head[h + 1]) * head[h + 3]);
  }

  /** As the other, for a move counted in cells from the left and low end. */
  int cellAt(int h, double atX, double atY) {
    if (!(atX > 0 && atX < DepthGrid.SIZE && atY > 0 && atY < DepthGrid.SIZE)) {
      return 0;
    }
    int row = (int) atY;
    int column = (int) atX;
    int first = (int) head[h + 4];
    return cells[first + row * DepthGrid.SIZE + column];
  }

  /** Whether a cell's depth is one linear function. */
  static boolean isLinear(int cell) {
    return (cell & INSIDE) != 0;
  }

  /** Whether the linear function is only near the depth. */
  static boolean isInside(int cell) {
    return (cell & 3) == INSIDE;
  }

  /** The depth at a move in a cell where it is one linear function. */
  double depthLinear(int h, int cell, double dx, double dy) {
    return isInside(cell) ? depthInside(h, cell, dx, dy) : depthAtSide(cell, dx, dy);
  }

  private double depthAtSide(int cell, double dx, double dy) {
    int at = cell >>> 2;
    double depth = sides[at + 2] - sides[at] * dx - sides[at + 1] * dy;
    return depth > NoFit.TOUCH ? depth : 0;
  }

  /**
   * The way out at a move where one straight side decides.
   *
   * @param exit takes the move, in the region's frame
   * @return its length, 0 if there is no overlap
   */
  double exitAtSide(int cell, double dx, double dy, double[] exit) {
    double depth = depthAtSide(cell, dx, dy);
    exit[0] = depth * sides[cell >>> 2];
    exit[1] = depth * sides[(cell >>> 2) + 1];
    return depth;
  }

  /** Whether one straight side decides in a cell. */
  static boolean isSide(int cell) {
    return (cell & 3) == SIDE;
  }

  /** The depth at a move in a cell that lies inside the region. */
  double depthInside(int h, int cell, double dx, double dy) {
    return depthInsideAt(h, cell, (dx - head[h]) * head[h + 2], (dy - head[h + 1]) * head[h + 3]);
  }

  /** As the other, for a move counted in cells from the left and low end. */
  double depthInsideAt(int h, int cell, double atX, double atY) {
    double u = atX - (int) atX;
    double v = atY - (int) atY;
    double base = (cell >>> 18) * head[h + 5];
    double change = (u * (byte) (cell >> 10) + v * (byte) (cell >> 2)) * head[h + 6];
    return Math.max(head[h + 5], base + change);
  }

  /** The depth at a move in a cell on the boundary, exact. */
  double depthAtBoundary(int cell, double dx, double dy) {
    if (isSide(cell)) {
      return depthAtSide(cell, dx, dy);
    }
    double[] p = pool;
    int at = cell >>> 2;
    int parts = (int) p[at++];
    boolean inside = false;
    while (parts-- > 0) {
      int end = at + 1 + 3 * (int) p[at];
      if (!inside) {
        at++;
        while (at < end && p[at] * dx + p[at + 1] * dy - p[at + 2] <= -NoFit.TOUCH) {
          at += 3;
        }
        inside = at == end;
      }
      at = end;
    }
    if (!inside) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    int end = at + 1 + 5 * (int) p[at];
    for (at++; at < end; at += 5) {
      least = Math.min(least, NoFit.square(p, at, dx, dy));
    }
    return Math.sqrt(least);
  }

  private int pack(DepthGrid grid) {
    int h = HEAD * heads++;
    if (h + HEAD > head.length) {
      head = Arrays.copyOf(head, 2 * head.length);
    }
    int many = DepthGrid.SIZE * DepthGrid.SIZE;
    if (cellCount + many > cells.length) {
      cells = Arrays.copyOf(cells, Math.max(2 * cells.length, cellCount + many));
    }
    head[h] = grid.fit.minX;
    head[h + 1] = grid.fit.minY;
    head[h + 2] = grid.perX;
    head[h + 3] = grid.perY;
    head[h + 4] = cellCount;
    head[h + 5] = grid.deepest() / STEPS;
    head[h + 6] = Math.max(1 / grid.perX, 1 / grid.perY) / CHANGES;
    int[] rows = new int[grid.start.length];
    Arrays.fill(rows, -1);
    StraightSides straight = new StraightSides(grid);
    int[] packed = new int[grid.fit.segments.length / 5];
    Arrays.fill(packed, -1);
    for (int k = 0; k < many; k++) {
      int code = grid.codes[k];
      if (code > 0) {
        int side = straight.of(k);
        if (side == StraightSides.MIXED) {
          rows[code] = rows[code] < 0 ? row(grid, code) : rows[code];
          cells[cellCount] = 4 * rows[code] + ROW;
        } else if (side != StraightSides.APART) {
          packed[side / 5] = packed[side / 5] < 0 ? side(grid.fit, side) : packed[side / 5];
          cells[cellCount] = 4 * packed[side / 5] + SIDE;
        }
      } else if (code < 0) {
        cells[cellCount] = plane(grid, k, head[h + 5], head[h + 6]);
      }
      cellCount++;
    }
    return h;
  }

  /** The plane that comes nearest to the depths at a cell's corners. */
  private static int plane(DepthGrid grid, int k, double step, double change) {
    int size = DepthGrid.SIZE;
    int at = k / size * (size + 1) + k % size;
    float[] d = grid.depths;
    double byX = (d[at + 1] - d[at] + d[at + size + 2] - d[at + size + 1]) / 2;
    double byY = (d[at + size + 1] - d[at] + d[at + size + 2] - d[at + 1]) / 2;
    double mean = (d[at] + d[at + 1] + d[at + size + 1] + d[at + size + 2]) / 4;
    int base = (int) Math.round(Math.max(0, mean - (byX + byY) / 2) / step);
    return Math.min(STEPS, base) << 18
        | ((int) Math.round(byX / change) & 255) << 10
        | ((int) Math.round(byY / change) & 255) << 2
        | INSIDE;
  }

  /** Writes an entry's half-planes and segments in a row and gives where it begins. */
  private int row(DepthGrid grid, int entry) {
    int begin = poolSize;
    NoFit fit = grid.fit;
    int at = grid.start[entry];
    int parts = grid.pool[at++];
    push(parts);
    for (int part = 0; part < parts; part++) {
      int planes = grid.pool[at++];
      push(planes);
      for (int i = 0; i < planes; i++) {
        push(fit.halfPlanes, grid.pool[at++], 3);
      }
    }
    int segments = grid.pool[at++];
    push(segments);
    for (int i = 0; i < segments; i++) {
      push(fit.segments, grid.pool[at++], 5);
    }
    return begin;
  }

  /** Writes a straight side and gives where it begins. */
  private int side(NoFit fit, int segment) {
    if (sideCount + 3 > sides.length) {
      sides = Arrays.copyOf(sides, 2 * sides.length);
    }
    int begin = sideCount;
    double[] s = fit.segments;
    sides[begin] = s[segment + 3];
    sides[begin + 1] = -s[segment + 2];
    sides[begin + 2] = s[segment] * s[segment + 3] - s[segment + 1] * s[segment + 2];
    sideCount += 3;
    return begin;
  }

  private void push(double value) {
    if (poolSize == pool.length) {
      pool = Arrays.copyOf(pool, 2 * poolSize);
    }
    pool[poolSize++] = value;
  }

  private void push(double[] from, int at, int count) {
    for (int i = 0; i < count; i++) {
      push(from[at + i]);
    }
  }
}
