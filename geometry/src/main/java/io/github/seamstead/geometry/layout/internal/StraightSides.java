package io.github.seamstead.geometry.layout.internal;

/**
 * Tells for which cells of a {@link DepthGrid} one straight side of the region decides: which of
 * the boundary's segments is nearest to every move in the cell that lies inside, with its foot on
 * the segment, while no other crosses the cell. There the depth is one linear function, and what
 * decides it is so little that it stays in a cache near the processor.
 *
 * <p>That a segment is nowhere nearer than the side is proven by tangents: the distance from a
 * segment is convex and that from the side is linear inside, so that a plane which touches their
 * difference at any point lies below it everywhere.
 */
final class StraightSides {

  /** The pieces lie apart in the whole cell. */
  static final int APART = -1;

  /** More than one side counts. */
  static final int MIXED = -2;

  /** What rounding may do to cells and feet. */
  private static final double SLACK = 1e-9;

  /** Far below {@link NoFit#TOUCH}. */
  private static final double EXACT = 1e-13;

  private final DepthGrid grid;
  private final NoFit fit;
  private final double[] s;
  private double left;
  private double right;
  private double low;
  private double high;

  /** Corners of the part of a cell that lies inside, and how deep each of them lies. */
  private final double[] x = new double[8];

  private final double[] y = new double[8];
  private final double[] deep = new double[8];
  private int corners;

  StraightSides(DepthGrid grid) {
    this.grid = grid;
    fit = grid.fit;
    s = fit.segments;
  }

  /**
   * The segment that decides in a cell on the boundary.
   *
   * @param cell index of the cell
   * @return its place in {@link NoFit#segments}, or {@link #APART} or {@link #MIXED}
   */
  int of(int cell) {
    frame(cell);
    int at = segmentsOf(grid.codes[cell]);
    int end = at + 1 + grid.pool[at];
    at++;
    int side = MIXED;
    for (int a = at; a < end; a++) {
      int k = grid.pool[a];
      if (crosses(k)) {
        if (side != MIXED && !isSameLine(side, k)) {
          return MIXED;
        }
        side = side == MIXED || s[k + 4] > s[side + 4] ? k : side;
      }
    }
    if (side == MIXED) {
      if (!fit.isInside((left + right) / 2, (low + high) / 2)) {
        return APART;
      }
      side = nearest(at, end);
    }
    cut(side);
    if (!hasFeetOn(side)) {
      return MIXED;
    }
    for (int a = at; a < end; a++) {
      if (grid.pool[a] != side && !isNowhereNearer(grid.pool[a])) {
        return MIXED;
      }
    }
    return side;
  }

  private void frame(int cell) {
    int column = cell % DepthGrid.SIZE;
    int row = cell / DepthGrid.SIZE;
    left = fit.minX + (column - SLACK) / grid.perX;
    right = fit.minX + (column + 1 + SLACK) / grid.perX;
    low = fit.minY + (row - SLACK) / grid.perY;
    high = fit.minY + (row + 1 + SLACK) / grid.perY;
  }

  /** Where in the grid's pool the segments of an entry begin, after their number. */
  private int segmentsOf(int code) {
    int at = grid.start[code];
    int parts = grid.pool[at++];
    for (int part = 0; part < parts; part++) {
      at += 1 + grid.pool[at];
    }
    return at;
  }

  private boolean crosses(int k) {
    double from = -SLACK;
    double to = s[k + 4] + SLACK;
    double[] way = {s[k + 2], -s[k + 2], s[k + 3], -s[k + 3]};
    double[] room = {right - s[k], s[k] - left, high - s[k + 1], s[k + 1] - low};
    for (int side = 0; side < 4; side++) {
      if (Math.abs(way[side]) < EXACT) {
        if (room[side] < 0) {
          return false;
        }
      } else if (way[side] > 0) {
        to = Math.min(to, room[side] / way[side]);
      } else {
        from = Math.max(from, room[side] / way[side]);
      }
    }
    return from <= to;
  }

  private boolean isSameLine(int j, int k) {
    return Math.abs(s[j + 2] - s[k + 2]) < EXACT
        && Math.abs(s[j + 3] - s[k + 3]) < EXACT
        && Math.abs(depth(j, s[k], s[k + 1])) < EXACT;
  }

  private int nearest(int from, int end) {
    int best = grid.pool[from];
    double least = Double.POSITIVE_INFINITY;
    for (int a = from; a < end; a++) {
      double its = fit.square(grid.pool[a], (left + right) / 2, (low + high) / 2);
      if (its < least) {
        least = its;
        best = grid.pool[a];
      }
    }
    return best;
  }

  /** How far a move lies to the left of a segment's line, which is inside. */
  private double depth(int k, double dx, double dy) {
    return (dy - s[k + 1]) * s[k + 2] - (dx - s[k]) * s[k + 3];
  }

  /** Cuts the cell off outside a segment's line. */
  private void cut(int k) {
    double[] cx = {left, right, right, left};
    double[] cy = {low, low, high, high};
    corners = 0;
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      double here = depth(k, cx[i], cy[i]);
      double there = depth(k, cx[j], cy[j]);
      if (here >= 0) {
        corner(cx[i], cy[i], here);
      }
      if (here < 0 != there < 0) {
        double t = here / (here - there);
        corner(cx[i] + t * (cx[j] - cx[i]), cy[i] + t * (cy[j] - cy[i]), 0);
      }
    }
  }

  private void corner(double px, double py, double itsDepth) {
    x[corners] = px;
    y[corners] = py;
    deep[corners++] = itsDepth;
  }

  private boolean hasFeetOn(int k) {
    for (int i = 0; i < corners; i++) {
      double along = (x[i] - s[k]) * s[k + 2] + (y[i] - s[k + 1]) * s[k + 3];
      if (along < 0 || along > s[k + 4]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a tangent proves that a segment is nearer than the side to no move inside. */
  private boolean isNowhereNearer(int k) {
    for (int i = 0; i < corners; i++) {
      double rx = x[i] - s[k];
      double ry = y[i] - s[k + 1];
      double along = Math.max(0, Math.min(s[k + 4], rx * s[k + 2] + ry * s[k + 3]));
      rx -= along * s[k + 2];
      ry -= along * s[k + 3];
      double far = Math.sqrt(rx * rx + ry * ry);
      boolean proven = far >= deep[i] - EXACT;
      double nx = far > 0 ? rx / far : 0;
      double ny = far > 0 ? ry / far : 0;
      for (int j = 0; j < corners && proven; j++) {
        proven = far + nx * (x[j] - x[i]) + ny * (y[j] - y[i]) >= deep[j] - EXACT;
      }
      if (proven) {
        return true;
      }
    }
    return corners == 0;
  }
}
