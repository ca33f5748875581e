package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Presses a layout together by linear programming: all pieces move at once to where the layout
 * reaches least far along x, each pair staying on the sides of the no-fit region's parts on which
 * it lies. That is the exact least for these sides; choosing the sides anew where the pieces then
 * lie and pressing again leads to a layout that no small joint move can shorten. Compaction in the
 * sense of Li and Milenkovic (1995) and Gomes and Oliveira (2006) (both from memory).
 *
 * <p>A layout whose pieces overlap a little is parted at the same time, if the sides leave room.
 */
public final class Press {

  private final Nest nest;
  private final int[] around;
  private final int[] slot;
  private double least;

  public Press(Nest nest) {
    this.nest = nest;
    around = new int[nest.all];
    slot = new int[nest.pieces];
  }

  /** How far the layout reaches after {@link #press}. */
  public double least() {
    return least;
  }

  /** Whether every pair that may meet has a no-fit region to take sides of. */
  private boolean isPossible() {
    for (int i = 0; i < nest.pieces; i++) {
      if (nest.region[i] == Poses.PARKED
          || nest.turns.byParts(nest.orientation[i], nest.orientation[i])) {
        return false;
      }
    }
    return true;
  }

  /**
   * Moves all pieces once by at most a reach along each axis.
   *
   * @return true if they lie apart then and reach less far than a limit; else, and where a pair has
   *     no no-fit region, nothing has moved
   */
  public boolean press(double reach, double limit) {
    // Asked each time: a piece that turns freely may have left the angles that have regions.
    if (!isPossible()) {
      return false;
    }
    int n = nest.pieces;
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> nest.x[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int k = 0; k < n; k++) {
      slot[order[k]] = 2 * k;
    }
    InteriorPoint program = new InteriorPoint(2 * n + 1);
    double now = nest.reach();
    for (int i = 0; i < n; i++) {
      sides(program, i, reach, now);
      int count = nest.meetWithin(i, 2 * reach, around);
      for (int m = 0; m < count; m++) {
        if (around[m] > i) {
          apart(program, i, around[m], reach);
        }
      }
    }
    program.add(2 * n, 1, -reach);
    program.add(2 * n, -1, -reach);
    // About what a press takes beside a placement evaluated.
    nest.work += 100L * n;
    if (!program.minimise(reach) || now + program.value(2 * n) >= limit) {
      return false;
    }
    double[] oldX = Arrays.copyOf(nest.x, n);
    double[] oldY = Arrays.copyOf(nest.y, n);
    for (int i = 0; i < n; i++) {
      move(i, oldX[i] + program.value(slot[i]), oldY[i] + program.value(slot[i] + 1));
    }
    least = nest.reach();
    if (least < limit && nest.isApart()) {
      return true;
    }
    for (int i = 0; i < n; i++) {
      nest.place(i, nest.region[i], oldX[i], oldY[i]);
    }
    return false;
  }

  private void move(int i, double px, double py) {
    int r = nest.region[i];
    int o = nest.orientation[i];
    // The far end is free; the other sides are kept to the last bit.
    double x = nest.regions.line[r] ? nest.x[i] : Math.max(nest.minX(r, o), px);
    double y =
        nest.regions.line[r] ? nest.y[i] : Math.max(nest.minY(r, o), Math.min(nest.maxY(r, o), py));
    nest.place(i, r, x, y);
  }

  private void sides(InteriorPoint program, int i, double reach, double now) {
    int r = nest.region[i];
    int o = nest.orientation[i];
    double px = nest.x[i];
    double py = nest.y[i];
    int v = slot[i];
    if (nest.regions.line[r]) {
      // A hem keeps its place on the band.
      double still = 1e-9;
      program.add(v, 1, -still);
      program.add(v, -1, -still);
      program.add(v + 1, 1, -still);
      program.add(v + 1, -1, -still);
    } else {
      program.add(v, 1, Math.max(nest.minX(r, o) - px, -reach));
      program.add(v, -1, -reach);
      program.add(v + 1, 1, Math.max(nest.minY(r, o) - py, -reach));
      program.add(v + 1, -1, Math.max(py - nest.maxY(r, o), -reach));
    }
    double end = px + nest.turns.maxX[o];
    if (end > now - 2 * reach) {
      program.add(2 * nest.pieces, 1, v, -1, v, 0, v, 0, end - now);
    }
  }

  /** Keeps two shapes on the sides of each other's parts on which they lie, where within reach. */
  private void apart(InteriorPoint program, int i, int j, double reach) {
    int oj = nest.orientation[j];
    double cos = nest.turns.cos[oj];
    double sin = nest.turns.sin[oj];
    double dx = nest.x[i] - nest.x[j];
    double dy = nest.y[i] - nest.y[j];
    double rx = cos * dx + sin * dy;
    double ry = cos * dy - sin * dx;
    NoFit fit = nest.turns.fit(oj, nest.orientation[i]);
    double far = 2 * Math.sqrt(2) * reach;
    double[] planes = fit.halfPlanes;
    for (int part = 0; part + 1 < fit.partStart.length; part++) {
      double most = Double.NEGATIVE_INFINITY;
      int best = 0;
      for (int k = fit.partStart[part]; k < fit.partStart[part + 1] && most < far; k += 3) {
        double out = planes[k] * rx + planes[k + 1] * ry - planes[k + 2];
        if (out > most) {
          most = out;
          best = k;
        }
      }
      if (most < far) {
        double nx = cos * planes[best] - sin * planes[best + 1];
        double ny = sin * planes[best] + cos * planes[best + 1];
        int v = slot[i];
        if (j < nest.pieces) {
          int w = slot[j];
          program.add(v, nx, v + 1, ny, w, -nx, w + 1, -ny, -most);
        } else {
          program.add(v, nx, v + 1, ny, v, 0, v, 0, -most);
        }
      }
    }
  }
}
