package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.NoFit;
import io.github.seamstead.geometry.layout.internal.Poses;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A valid layout at once, if the stock is long enough: bounding boxes in columns across a strip.
 * O(n log n).
 */
final class Shelf {

  private final Nest nest;
  private final NestSetup setup;

  /** For each kind, where its boxes are narrowest along the strip. */
  private final int[] region;

  private final double[] angle;
  private final double[] width;

  private Shelf(NestSetup setup, Nest nest) {
    this.setup = setup;
    this.nest = nest;
    region = new int[setup.pieces.size()];
    angle = new double[region.length];
    width = new double[region.length];
    Arrays.fill(width, Double.POSITIVE_INFINITY);
    // Any copy of a kind tells for all of them.
    for (int i = nest.pieces - 1; i >= 0; i--) {
      if (width[nest.kind[i]] == Double.POSITIVE_INFINITY) {
        narrowest(i);
      }
    }
  }

  /** Places all copies that a nest is for, in the one bin that it allows. */
  static Poses start(NestSetup setup, Nest nest) {
    for (int i = 0; i < nest.pieces; i++) {
      nest.park(i);
    }
    return complete(setup, nest);
  }

  /** Places the copies that a nest has parked, behind those that it holds. */
  static Poses complete(NestSetup setup, Nest nest) {
    Poses poses = new Poses(nest.pieces);
    nest.save(poses);
    // Trying out turns moves pieces, so that the reach is read first.
    double reach = nest.reach();
    return new Shelf(setup, nest).poses(poses, reach);
  }

  private void narrowest(int i) {
    int k = nest.kind[i];
    for (int r : nest.regions.ofKind(k)) {
      for (double a : nest.isFree(r) ? setup.startAngles(k) : new double[1]) {
        nest.place(i, r, 0, 0, a);
        int o = nest.orientation[i];
        double w = nest.turns.maxX[o] - nest.turns.minX[o];
        if (nest.hasRoom(r, o) && w < width[k]) {
          width[k] = w;
          region[k] = r;
          angle[k] = a;
        }
      }
    }
  }

  private Poses poses(Poses begun, double reach) {
    double spacing = setup.spacing() / setup.unit;
    int[] order =
        IntStream.range(0, nest.pieces)
            .filter(i -> begun.region[i] == Poses.PARKED)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -width[nest.kind[i]]))
            .mapToInt(Integer::intValue)
            .toArray();
    double x = reach + spacing;
    double y = 0;
    double column = 0;
    boolean first = true;
    for (int i : order) {
      int k = nest.kind[i];
      nest.place(i, region[k], 0, 0, angle[k]);
      int o = nest.orientation[i];
      double h = nest.turns.maxY[o] - nest.turns.minY[o];
      double low = nest.regions.y0[region[k]];
      if (first) {
        x = Math.max(x, nest.regions.x0[region[k]]);
        y = low;
        first = false;
      } else if (y > low && y + h > nest.regions.y1[region[k]] + NoFit.TOUCH) {
        x += column + spacing;
        y = low;
        column = 0;
      }
      nest.place(i, region[k], x - nest.turns.minX[o], y - nest.turns.minY[o]);
      y += h + spacing;
      column = Math.max(column, width[k]);
    }
    Poses placed = new Poses(nest.pieces);
    nest.save(placed);
    for (int i : order) {
      begun.take(i, placed, i);
    }
    return begun;
  }
}
