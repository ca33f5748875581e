package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.NoFit;
import io.github.seamstead.geometry.layout.internal.Regions;
import java.util.function.BooleanSupplier;

/**
 * The constructive start: large pieces first, each into the first stock copy that has room, as far
 * towards its beginning as corner-to-corner touches allow. O(n² c) for n pieces of c corners; only
 * the latest neighbours are touched, so that thousands of pieces take seconds.
 */
final class Filler {

  private static final int NEIGHBOURS = 40;

  /** More than rounding can move a place, in metres: nothing that could be nearer is left out. */
  private static final double HAIR = 1e-6;

  /**
   * Where the beginning is that pieces are pushed to: of two places that is nearer whose far corner
   * has the lesser sum of its coordinates, each times its weight.
   *
   * @param alongWeight weight of the coordinate along the stock, 0 to 1
   * @param acrossWeight weight of the one across it, 0 to 1
   */
  record Push(double alongWeight, double acrossWeight) {

    /** To the left end, and there to the lower side. */
    static final Push ALONG = new Push(1, 1e-3);
  }

  private final NestSetup setup;
  private final Nest nest;
  private final Push push;
  private final int[] placed;
  private int placedCount;
  private double bestX;
  private double bestY;
  private double bestKey;
  private int bestRegion;
  private double bestAngle;

  /** Where the piece that is placed may have its origin in the region that is looked at. */
  private double loX;

  private double hiX;
  private double loY;
  private double hiY;

  /** What is added to the weighed coordinates of a place to have its key. */
  private double reach;

  /** How far off the line of a hem, times its length, is on it. */
  private double onLine;

  private BooleanSupplier stop = () -> false;
  private boolean cut;

  Filler(NestSetup setup, Nest nest) {
    this(setup, nest, Push.ALONG);
  }

  Filler(NestSetup setup, Nest nest, Push push) {
    this.setup = setup;
    this.nest = nest;
    this.push = push;
    placed = new int[nest.pieces];
  }

  /**
   * Places what has room; the rest is parked.
   *
   * @param pieces which copies, in the order in which to place them
   * @param binOrder the bins in the order in which to fill them
   * @param stop asked often; true leaves the rest parked
   * @return true if every piece was tried in every bin that may hold it
   */
  boolean fill(int[] pieces, int[] binOrder, BooleanSupplier stop) {
    this.stop = stop;
    cut = false;
    placedCount = 0;
    for (int i = 0; i < nest.pieces; i++) {
      nest.park(i);
    }
    // Copies of one kind find no room where one before them found none.
    int[] firstBin = new int[setup.pieces.size()];
    for (int i : pieces) {
      int kind = nest.kind[i];
      for (int b = firstBin[kind]; b < binOrder.length; b++) {
        if (isCut()) {
          return false;
        }
        if (placeIn(i, binOrder[b])) {
          placed[placedCount++] = i;
          firstBin[kind] = b;
          break;
        }
        firstBin[kind] = b + 1;
      }
    }
    return !cut;
  }

  private boolean isCut() {
    cut |= stop.getAsBoolean();
    return cut;
  }

  private boolean placeIn(int i, int bin) {
    bestKey = Double.POSITIVE_INFINITY;
    for (int r : nest.regions.ofKind(nest.kind[i])) {
      if (nest.regions.bin[r] != bin) {
        continue;
      }
      if (nest.isFree(r)) {
        for (double angle : setup.startAngles(nest.kind[i])) {
          nest.turns.turn(nest.turnIn(i, r), angle);
          candidates(i, r);
        }
      } else {
        candidates(i, r);
      }
    }
    if (bestKey == Double.POSITIVE_INFINITY) {
      return false;
    }
    nest.place(i, bestRegion, bestX, bestY, bestAngle);
    return true;
  }

  private void candidates(int i, int r) {
    Regions g = nest.regions;
    int o = nest.turnIn(i, r);
    if (!nest.hasRoom(r, o)) {
      return;
    }
    double x0 = nest.minX(r, o);
    double x1 = nest.maxX(r, o);
    double y0 = nest.minY(r, o);
    double y1 = nest.maxY(r, o);
    loX = Math.min(x0, x1);
    hiX = Math.max(x0, x1);
    loY = Math.min(y0, y1);
    hiY = Math.max(y0, y1);
    reach = weighed(nest.turns.maxX[o], nest.turns.maxY[o]);
    onLine = g.line[r] ? 1e-12 * (1 + StrictMath.hypot(g.x1[r] - g.x0[r], g.y1[r] - g.y0[r])) : 0;
    offer(i, r, x0, y0);
    offer(i, r, x0, y1);
    offer(i, r, x1, y0);
    offer(i, r, x1, y1);
    for (int j = nest.pieces; j < nest.all && !isCut(); j++) {
      touches(i, j, r);
    }
    int seen = 0;
    for (int k = placedCount - 1; k >= 0 && seen < NEIGHBOURS; k--) {
      int j = placed[k];
      if (isCut()) {
        return;
      }
      if (g.bin[nest.region[j]] == g.bin[r]) {
        touches(i, j, r);
        seen++;
      }
    }
  }

  private double weighed(double x, double y) {
    return push.alongWeight * x + push.acrossWeight * y;
  }

  /** Whether no place from here on along and across the stock is nearer than the best. */
  private boolean isBeyond(double x, double y) {
    return weighed(Math.max(loX, Math.min(hiX, x)), Math.max(loY, Math.min(hiY, y))) + reach
        > bestKey + HAIR;
  }

  private void touches(int i, int j, int r) {
    int oj = nest.orientation[j];
    int o = nest.turnIn(i, r);
    // A piece that touches another lies no farther back than with its end at the other's beginning.
    if (isBeyond(
        nest.x[j] + nest.turns.minX[oj] - nest.turns.maxX[o] - 2 * nest.turns.pad,
        nest.y[j] + nest.turns.minY[oj] - nest.turns.maxY[o] - 2 * nest.turns.pad)) {
      return;
    }
    if (nest.turns.byParts(oj, o)) {
      corners(i, j, r);
      return;
    }
    NoFit fit = nest.turns.fit(oj, o);
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    for (int k = 0; k < fit.segments.length; k += 5) {
      double ax = nest.x[j] + c * fit.segments[k] - s * fit.segments[k + 1];
      double ay = nest.y[j] + s * fit.segments[k] + c * fit.segments[k + 1];
      double ux = c * fit.segments[k + 2] - s * fit.segments[k + 3];
      double uy = s * fit.segments[k + 2] + c * fit.segments[k + 3];
      if (isBeyond(
          Math.min(ax, ax + ux * fit.segments[k + 4]),
          Math.min(ay, ay + uy * fit.segments[k + 4]))) {
        continue;
      }
      offer(i, r, ax, ay);
      crossing(i, r, ax, ay, ux, uy, fit.segments[k + 4]);
    }
  }

  /**
   * Where a boundary segment meets the lower, upper and left side of the region, or the line on
   * which a hem lies.
   */
  private void crossing(int i, int r, double ax, double ay, double ux, double uy, double length) {
    if (nest.regions.line[r]) {
      onLine(i, r, ax, ay, length * ux, length * uy);
      return;
    }
    int o = nest.turnIn(i, r);
    double x0 = nest.minX(r, o);
    for (int side = 0; side < 3; side++) {
      double y = side == 0 ? nest.minY(r, o) : nest.maxY(r, o);
      double along = side == 2 ? (x0 - ax) / ux : (y - ay) / uy;
      if (along > 0 && along < length) {
        offer(i, r, side == 2 ? x0 : ax + along * ux, side == 2 ? ay + along * uy : y);
      }
    }
  }

  /** Offers where a segment from a place meets the line of a hem. */
  private void onLine(int i, int r, double ax, double ay, double dx, double dy) {
    Regions g = nest.regions;
    double ex = g.x1[r] - g.x0[r];
    double ey = g.y1[r] - g.y0[r];
    double across = ex * dy - ey * dx;
    double rx = ax - g.x0[r];
    double ry = ay - g.y0[r];
    double along = (rx * dy - ry * dx) / across;
    double part = (rx * ey - ry * ex) / across;
    if (part >= 0 && part <= 1 && along >= 0 && along <= 1) {
      offer(i, r, g.x0[r] + along * ex, g.y0[r] + along * ey);
    }
  }

  /** Corner to corner, where there is no no-fit region; overlapping places are rejected. */
  private void corners(int i, int j, int r) {
    int o = nest.turnIn(i, r);
    int oj = nest.orientation[j];
    double[] there = nest.turns.outline(oj);
    double[] own = nest.turns.outline(o);
    double away = nest.turns.pad * (1 + 1e-9);
    for (int a = 0; a < there.length && !isCut(); a += 2) {
      double ax = nest.x[j] + nest.turns.cos[oj] * there[a] - nest.turns.sin[oj] * there[a + 1];
      double ay = nest.y[j] + nest.turns.sin[oj] * there[a] + nest.turns.cos[oj] * there[a + 1];
      for (int b = 0; b < own.length; b += 2) {
        double bx = nest.turns.cos[o] * own[b] - nest.turns.sin[o] * own[b + 1];
        double by = nest.turns.sin[o] * own[b] + nest.turns.cos[o] * own[b + 1];
        offer(i, r, ax - bx + away, ay - by);
        if (away > 0) {
          offer(i, r, ax - bx, ay - by + away);
        }
      }
    }
  }

  private void offer(int i, int r, double px, double py) {
    double slack = NoFit.TOUCH;
    if (px < loX - slack || px > hiX + slack || py < loY - slack || py > hiY + slack) {
      return;
    }
    double x = Math.max(loX, Math.min(hiX, px));
    double y = Math.max(loY, Math.min(hiY, py));
    int o = nest.turnIn(i, r);
    if (nest.regions.line[r] && !onLine(r, x, y)) {
      return;
    }
    double key = weighed(x, y) + reach;
    if (key < bestKey && nest.evaluate(i, o, x, y, Double.MIN_VALUE) <= 0) {
      bestKey = key;
      bestX = x;
      bestY = y;
      bestRegion = r;
      bestAngle = nest.turns.angle[o];
    }
  }

  private boolean onLine(int r, double x, double y) {
    Regions g = nest.regions;
    double ex = g.x1[r] - g.x0[r];
    double ey = g.y1[r] - g.y0[r];
    double off = Math.abs((x - g.x0[r]) * ey - (y - g.y0[r]) * ex);
    return off <= onLine;
  }
}
