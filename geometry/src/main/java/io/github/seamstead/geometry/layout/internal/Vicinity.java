package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * The shapes that a piece can meet near a place, with all that judging a place needs in one row for
 * each, so that the many places to which a piece slides are judged without looking its neighbours
 * up anew. What it tells is what {@link Nest} tells, up to rounding.
 */
final class Vicinity {

  /** Window beyond the place, beside the lesser side of the piece's box. */
  private static final double FAR = 0.25;

  /** Numbers of a row: twelve that are used, and room up to two lines of a processor's cache. */
  private static final int ROW = 16;

  private final Nest nest;
  private final DepthTable depths;
  private final int[] shapes;
  private double[] rows = new double[16 * ROW];
  private int count;
  private int piece;
  private int orientation;
  private double left;
  private double right;
  private double low;
  private double high;

  /** Whether every pair has a table of depths; else the nest is asked. */
  private boolean isKnown;

  private final int[] waiting;
  private final int[] waitingCell;

  Vicinity(Nest nest, DepthTable depths) {
    this.nest = nest;
    this.depths = depths;
    shapes = new int[nest.all];
    waiting = new int[nest.all];
    waitingCell = new int[nest.all];
  }

  /** Gathers what a piece in an orientation can meet near a place. */
  void gather(int i, int o, double px, double py) {
    piece = i;
    orientation = o;
    Orientations t = nest.turns;
    double far = FAR * Math.min(t.maxX[o] - t.minX[o], t.maxY[o] - t.minY[o]);
    left = px - far;
    right = px + far;
    low = py - far;
    high = py + far;
    count = nest.meetWithin(i, o, px, py, far, shapes);
    isKnown = true;
    for (int m = 0; m < count && isKnown; m++) {
      isKnown = enter(m);
    }
    if (isKnown) {
      order(px, py);
    }
  }

  /** Whether a place lies in the window. */
  boolean covers(double px, double py) {
    return px >= left && px <= right && py >= low && py <= high;
  }

  private boolean enter(int m) {
    int j = shapes[m];
    int oj = nest.orientation[j];
    if (nest.turns.byParts(oj, orientation)) {
      return false;
    }
    int h = depths.head(nest.turns, oj, orientation);
    if (h < 0) {
      return false;
    }
    int k = ROW * m;
    if (k + ROW > rows.length) {
      rows = Arrays.copyOf(rows, 2 * rows.length);
    }
    double[] r = rows;
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    double x = nest.x[j];
    double y = nest.y[j];
    double perX = depths.perX(h);
    double perY = depths.perY(h);
    r[k] = c * perX;
    r[k + 1] = s * perX;
    r[k + 2] = -(c * x + s * y + depths.minX(h)) * perX;
    r[k + 3] = -s * perY;
    r[k + 4] = c * perY;
    r[k + 5] = -(c * y - s * x + depths.minY(h)) * perY;
    r[k + 6] = nest.weight(piece, j);
    r[k + 7] = h;
    r[k + 8] = x;
    r[k + 9] = y;
    r[k + 10] = c;
    r[k + 11] = s;
    return true;
  }

  /** Puts what the piece meets where it lies first, so that sums come to a limit soon. */
  private void order(double px, double py) {
    int first = 0;
    for (int m = 0; m < count; m++) {
      int k = ROW * m;
      double atX = rows[k] * px + rows[k + 1] * py + rows[k + 2];
      double atY = rows[k + 3] * px + rows[k + 4] * py + rows[k + 5];
      if (depths.cellAt((int) rows[k + 7], atX, atY) != 0) {
        if (m > first) {
          swap(m, first);
        }
        first++;
      }
    }
  }

  private void swap(int a, int b) {
    int j = shapes[a];
    shapes[a] = shapes[b];
    shapes[b] = j;
    for (int f = 0; f < ROW; f++) {
      double v = rows[ROW * a + f];
      rows[ROW * a + f] = rows[ROW * b + f];
      rows[ROW * b + f] = v;
    }
  }

  /** As {@link Nest#evaluate}. */
  double evaluate(double px, double py, double limit) {
    if (!isKnown || !covers(px, py)) {
      return nest.evaluate(piece, orientation, px, py, limit);
    }
    nest.work++;
    double[] r = rows;
    double sum = 0;
    int waits = 0;
    for (int m = 0; m < count; m++) {
      int k = ROW * m;
      double atX = r[k] * px + r[k + 1] * py + r[k + 2];
      double atY = r[k + 3] * px + r[k + 4] * py + r[k + 5];
      int h = (int) r[k + 7];
      int cell = depths.cellAt(h, atX, atY);
      if (cell == 0) {
        continue;
      }
      if (DepthTable.isInside(cell)) {
        sum += r[k + 6] * depths.depthInsideAt(h, cell, atX, atY);
        if (sum >= limit) {
          return sum;
        }
      } else {
        waiting[waits] = m;
        waitingCell[waits++] = cell;
      }
    }
    for (int w = 0; w < waits; w++) {
      int k = ROW * waiting[w];
      double dx = px - r[k + 8];
      double dy = py - r[k + 9];
      double rx = r[k + 10] * dx + r[k + 11] * dy;
      double ry = r[k + 10] * dy - r[k + 11] * dx;
      double depth = depths.depthAtBoundary(waitingCell[w], rx, ry);
      if (depth > 0) {
        sum += r[k + 6] * depth;
        if (sum >= limit) {
          return sum;
        }
      }
    }
    return sum;
  }

  /** How many shapes {@link #exit} may be asked for at a place. */
  int meet(double px, double py) {
    if (!isKnown || !covers(px, py)) {
      isKnown = false;
      count = nest.meet(piece, orientation, px, py, shapes);
    }
    return count;
  }

  /** As {@link Nest#exit}, for one of the shapes that {@link #meet} found. */
  double exit(int m, double px, double py, double[] exit) {
    if (isKnown) {
      int k = ROW * m;
      double atX = rows[k] * px + rows[k + 1] * py + rows[k + 2];
      double atY = rows[k + 3] * px + rows[k + 4] * py + rows[k + 5];
      if (depths.cellAt((int) rows[k + 7], atX, atY) == 0) {
        return 0;
      }
    }
    return nest.exit(shapes[m], orientation, px, py, exit);
  }
}
