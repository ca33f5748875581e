package io.github.seamstead.geometry.layout;

import java.util.stream.IntStream;

/** A valid layout at once: bounding boxes in columns across the strip. O(n log n). */
final class Shelf {

  private Shelf() {}

  /** Places all copies; boxes keep the spacing, the first column keeps the margin. */
  static Poses start(NestSetup setup, StripProblem problem) {
    Orientations turns = setup.turns;
    Regions regions = setup.regions;
    int n = setup.kind.length;
    int[] flat = new int[setup.pieces.size()];
    for (int k = 0; k < flat.length; k++) {
      flat[k] = shortest(setup, regions.ofKind(k));
    }
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(
                (a, b) ->
                    Double.compare(
                        width(turns, regions, flat[setup.kind[b]]),
                        width(turns, regions, flat[setup.kind[a]])))
            .mapToInt(Integer::intValue)
            .toArray();
    double spacing = problem.spacing() / setup.unit;
    double margin = problem.margin() / setup.unit;
    double top = problem.width() / setup.unit - margin;
    Poses poses = new Poses(n);
    double x = margin;
    double y = margin;
    double column = 0;
    for (int i : order) {
      int r = flat[setup.kind[i]];
      int o = regions.orientation[r];
      double h = turns.maxY[o] - turns.minY[o];
      if (y > margin && y + h > top) {
        x += column + spacing;
        y = margin;
        column = 0;
      }
      poses.region[i] = r;
      poses.x[i] = x - turns.minX[o];
      poses.y[i] = Math.min(y - turns.minY[o], regions.y1[r]);
      y += h + spacing;
      column = Math.max(column, turns.maxX[o] - turns.minX[o]);
    }
    return poses;
  }

  private static int shortest(NestSetup setup, int[] choice) {
    int best = choice[0];
    for (int r : choice) {
      if (width(setup.turns, setup.regions, r) < width(setup.turns, setup.regions, best)) {
        best = r;
      }
    }
    return best;
  }

  private static double width(Orientations turns, Regions regions, int r) {
    int o = regions.orientation[r];
    return turns.maxX[o] - turns.minX[o];
  }
}
