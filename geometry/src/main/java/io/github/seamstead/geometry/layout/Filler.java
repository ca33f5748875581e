package io.github.seamstead.geometry.layout;

import java.util.function.BooleanSupplier;

/**
 * The constructive start: large pieces first, each into the first stock copy that has room, as near
 * to its beginning as corner-to-corner touches allow. O(n² c) for n pieces of c corners; only the
 * latest neighbours are touched, so that thousands of pieces take seconds.
 */
final class Filler {

  private static final int NEIGHBOURS = 40;

  private final NestSetup setup;
  private final Nest nest;
  private final int[] placed;
  private int placedCount;
  private double bestX;
  private double bestY;
  private double bestKey;
  private int bestRegion;

  Filler(NestSetup setup, Nest nest) {
    this.setup = setup;
    this.nest = nest;
    placed = new int[nest.pieces];
  }

  /**
   * Places what has room; the rest is parked.
   *
   * @param pieces which copies, in the order in which to place them
   * @param binOrder the bins in the order in which to fill them
   * @param stop asked before each piece; true leaves the rest parked
   */
  void fill(int[] pieces, int[] binOrder, BooleanSupplier stop) {
    placedCount = 0;
    for (int i = 0; i < nest.pieces; i++) {
      nest.park(i);
    }
    // Copies of one kind find no room where one before them found none.
    int[] firstBin = new int[setup.pieces.size()];
    for (int i : pieces) {
      if (stop.getAsBoolean()) {
        return;
      }
      int kind = nest.kind[i];
      for (int b = firstBin[kind]; b < binOrder.length; b++) {
        if (placeIn(i, binOrder[b])) {
          placed[placedCount++] = i;
          firstBin[kind] = b;
          break;
        }
        firstBin[kind] = b + 1;
      }
    }
  }

  private boolean placeIn(int i, int bin) {
    bestKey = Double.POSITIVE_INFINITY;
    for (int r : nest.regions.ofKind(nest.kind[i])) {
      if (nest.regions.bin[r] == bin) {
        candidates(i, r);
      }
    }
    if (bestKey == Double.POSITIVE_INFINITY) {
      return false;
    }
    nest.place(i, bestRegion, bestX, bestY);
    return true;
  }

  private void candidates(int i, int r) {
    Regions g = nest.regions;
    offer(i, r, g.x0[r], g.y0[r]);
    offer(i, r, g.x0[r], g.y1[r]);
    offer(i, r, g.x1[r], g.y0[r]);
    offer(i, r, g.x1[r], g.y1[r]);
    for (int j = nest.pieces; j < nest.all; j++) {
      touches(i, j, r);
    }
    int seen = 0;
    for (int k = placedCount - 1; k >= 0 && seen < NEIGHBOURS; k--) {
      int j = placed[k];
      if (g.bin[nest.region[j]] == g.bin[r]) {
        touches(i, j, r);
        seen++;
      }
    }
  }

  private void touches(int i, int j, int r) {
    Regions g = nest.regions;
    int oj = nest.orientation[j];
    NoFit fit = nest.turns.fit(oj, g.orientation[r]);
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    for (int k = 0; k < fit.segments.length; k += 5) {
      double ax = nest.x[j] + c * fit.segments[k] - s * fit.segments[k + 1];
      double ay = nest.y[j] + s * fit.segments[k] + c * fit.segments[k + 1];
      double ux = c * fit.segments[k + 2] - s * fit.segments[k + 3];
      double uy = s * fit.segments[k + 2] + c * fit.segments[k + 3];
      offer(i, r, ax, ay);
      crossing(i, r, ax, ay, ux, uy, fit.segments[k + 4]);
    }
  }

  /** Where a boundary segment meets the lower, upper and left side of the region. */
  private void crossing(int i, int r, double ax, double ay, double ux, double uy, double length) {
    Regions g = nest.regions;
    for (int side = 0; side < 3; side++) {
      double along = side == 2 ? (g.x0[r] - ax) / ux : ((side == 0 ? g.y0[r] : g.y1[r]) - ay) / uy;
      if (along > 0 && along < length) {
        double py = side == 0 ? g.y0[r] : side == 1 ? g.y1[r] : ay + along * uy;
        double px = side == 2 ? g.x0[r] : ax + along * ux;
        offer(i, r, px, py);
      }
    }
  }

  private void offer(int i, int r, double px, double py) {
    Regions g = nest.regions;
    double loX = Math.min(g.x0[r], g.x1[r]);
    double hiX = Math.max(g.x0[r], g.x1[r]);
    double loY = Math.min(g.y0[r], g.y1[r]);
    double hiY = Math.max(g.y0[r], g.y1[r]);
    double slack = NoFit.TOUCH;
    if (px < loX - slack || px > hiX + slack || py < loY - slack || py > hiY + slack) {
      return;
    }
    double x = Math.max(loX, Math.min(hiX, px));
    double y = Math.max(loY, Math.min(hiY, py));
    if (g.line[r] && !onLine(r, x, y)) {
      return;
    }
    int o = g.orientation[r];
    double key = x + nest.turns.maxX[o] + 1e-3 * (y + nest.turns.maxY[o]);
    if (key < bestKey && nest.evaluate(i, o, x, y, Double.MIN_VALUE) <= 0) {
      bestKey = key;
      bestX = x;
      bestY = y;
      bestRegion = r;
    }
  }

  private boolean onLine(int r, double x, double y) {
    Regions g = nest.regions;
    double ex = g.x1[r] - g.x0[r];
    double ey = g.y1[r] - g.y0[r];
    double off = Math.abs((x - g.x0[r]) * ey - (y - g.y0[r]) * ex);
    return off <= 1e-12 * (1 + Math.hypot(ex, ey));
  }
}
