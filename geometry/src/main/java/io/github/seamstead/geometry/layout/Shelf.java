package io.github.seamstead.geometry.layout;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** A valid layout at once: bounding boxes in columns across the strip. O(n log n). */
final class Shelf {

  private final Nest nest;
  private final NestSetup setup;

  /** For each kind, where its boxes are narrowest along the strip. */
  private final int[] region;

  private final double[] angle;
  private final double[] width;

  private Shelf(NestSetup setup) {
    this.setup = setup;
    nest = setup.nest();
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

  /** Places all copies; boxes keep the spacing, the first column keeps the margin. */
  static Poses start(NestSetup setup, StripProblem problem) {
    Nest empty = setup.nest();
    for (int i = 0; i < empty.pieces; i++) {
      empty.park(i);
    }
    return complete(setup, problem, empty);
  }

  /** Places the copies that a nest has parked, behind those that it holds. */
  static Poses complete(NestSetup setup, StripProblem problem, Nest begun) {
    Poses poses = new Poses(begun.pieces);
    begun.save(poses);
    double reach = 0;
    for (int i = 0; i < begun.pieces; i++) {
      if (begun.region[i] != Poses.PARKED) {
        reach = Math.max(reach, begun.x[i] + begun.turns.maxX[begun.orientation[i]]);
      }
    }
    double from = reach > 0 ? reach * setup.unit + problem.spacing() : problem.margin();
    return new Shelf(setup).poses(poses, problem, from);
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

  private Poses poses(Poses begun, StripProblem problem, double from) {
    double spacing = problem.spacing() / setup.unit;
    double margin = problem.margin() / setup.unit;
    double top = problem.width() / setup.unit - margin;
    int[] order =
        IntStream.range(0, nest.pieces)
            .filter(i -> begun.region[i] == Poses.PARKED)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -width[nest.kind[i]]))
            .mapToInt(Integer::intValue)
            .toArray();
    double x = from / setup.unit;
    double y = margin;
    double column = 0;
    for (int i : order) {
      int k = nest.kind[i];
      nest.place(i, region[k], 0, 0, angle[k]);
      int o = nest.orientation[i];
      double h = nest.turns.maxY[o] - nest.turns.minY[o];
      if (y > margin && y + h > top) {
        x += column + spacing;
        y = margin;
        column = 0;
      }
      nest.place(
          i,
          region[k],
          x - nest.turns.minX[o],
          Math.min(
              y - nest.turns.minY[o], Math.max(nest.minY(region[k], o), nest.maxY(region[k], o))));
      y += h + spacing;
      column = Math.max(column, width[k]);
    }
    Poses placed = new Poses(nest.pieces);
    nest.save(placed);
    for (int i : order) {
      begun.take(i, placed);
    }
    return begun;
  }
}
