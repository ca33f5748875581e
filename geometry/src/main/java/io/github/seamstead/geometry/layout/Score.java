package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.stock.StockItem;
import java.util.Arrays;
import java.util.List;

/**
 * How good a state is, in the builder's order: all pieces placed, then the objective, then the
 * order of preference, then what is left.
 *
 * @param missingArea area of the pieces without a place, in square metres
 * @param values what counts next, the lower the better, in falling weight
 */
record Score(double missingArea, List<Double> values) {

  private Score(double missingArea, double... values) {
    this(missingArea, Arrays.stream(values).boxed().toList());
  }

  static Score of(NestSetup setup, Poses poses, Objective objective) {
    double[] reach = reach(setup, poses);
    double missing = 0;
    for (int i = 0; i < poses.x.length; i++) {
      if (poses.region[i] == Poses.PARKED) {
        missing += setup.pieces.get(setup.kind[i]).outline().area();
      }
    }
    int items = 0;
    double length = 0;
    double cost = 0;
    double preference = 0;
    for (int b = 0; b < reach.length; b++) {
      if (reach[b] > 0) {
        StockItem item = setup.bins.get(b).item();
        items++;
        length += reach[b];
        cost += item.costOf(reach[b]);
        preference += item.preference();
      }
    }
    return switch (objective) {
      case FEWEST_ITEMS -> new Score(missing, items, preference, length, cost);
      case LEAST_COST -> new Score(missing, cost, items, preference, length);
      case LEAST_LENGTH -> new Score(missing, length, items, preference, cost);
    };
  }

  /** How far each bin is used along x from its start, margin included, in metres; 0 if unused. */
  static double[] reach(NestSetup setup, Poses poses) {
    double[] reach = new double[setup.bins.size()];
    for (int i = 0; i < poses.x.length; i++) {
      int r = poses.region[i];
      if (r != Poses.PARKED) {
        int b = setup.regions.bin[r];
        Bin bin = setup.bins.get(b);
        double right = poses.x[i] + setup.reachX(i, r, poses.angle[i]);
        double end = right * setup.unit - bin.offset() - bin.bounds().minX() + setup.margin();
        reach[b] = Math.max(reach[b], Math.min(end, bin.bounds().width()));
      }
    }
    return reach;
  }

  boolean betterThan(Score other) {
    int order = compare(missingArea, other.missingArea);
    for (int i = 0; i < values.size() && order == 0; i++) {
      order = compare(values.get(i), other.values.get(i));
    }
    return order < 0;
  }

  private static int compare(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : Double.compare(a, b);
  }
}
