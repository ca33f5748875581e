package io.github.seamstead.geometry.layout;

import java.util.Arrays;

/**
 * Pieces on stock, perhaps overlapping, with the depth of each overlap and a weight on each pair.
 *
 * <p>Indices below {@link #pieces} move; those from there on are fixed obstacles (flaws, what lies
 * outside a sheet). One instance belongs to one thread. Evaluating a placement costs O(k) for k
 * shapes whose boxes meet the piece's box, plus one box test for each other shape.
 */
final class Nest {

  final Orientations turns;
  final Regions regions;
  final int pieces;
  final int all;
  final int[] kind;
  final int[] orientation;
  final int[] region;
  final double[] x;
  final double[] y;
  private final double[] left;
  private final double[] right;
  private final double[] low;
  private final double[] high;

  /** For each pair, once {@link #weigh} was called. */
  double[] weight = new double[0];

  double[] depth = new double[0];

  /** Placements evaluated so far. */
  long work;

  /**
   * Makes a nest without places.
   *
   * @param kind kind of each piece, an index of {@link Regions#ofKind}
   * @param obstacles orientation index, x and y of each fixed shape
   */
  Nest(Orientations turns, Regions regions, int[] kind, double[][] obstacles) {
    this.turns = turns;
    this.regions = regions;
    this.kind = kind;
    pieces = kind.length;
    all = pieces + obstacles.length;
    orientation = new int[all];
    region = new int[pieces];
    x = new double[all];
    y = new double[all];
    left = new double[all];
    right = new double[all];
    low = new double[all];
    high = new double[all];
    for (int i = 0; i < obstacles.length; i++) {
      int k = pieces + i;
      put(k, (int) obstacles[i][0], obstacles[i][1], obstacles[i][2]);
    }
  }

  /** Sets every pair's weight to 1; needs the square of the number of pieces in memory. */
  void weigh() {
    if (weight.length == 0) {
      weight = new double[pieces * all];
      depth = new double[pieces * all];
    }
    Arrays.fill(weight, 1);
  }

  private void put(int i, int o, double px, double py) {
    orientation[i] = o;
    x[i] = px;
    y[i] = py;
    // Boxes grow by the distance to keep, so that a pair too close meets here.
    left[i] = px + turns.minX[o] - turns.pad;
    right[i] = px + turns.maxX[o] + turns.pad;
    low[i] = py + turns.minY[o] - turns.pad;
    high[i] = py + turns.maxY[o] + turns.pad;
  }

  /** Puts a piece without looking at overlaps. */
  void place(int i, int r, double px, double py) {
    region[i] = r;
    put(i, regions.orientation[r], px, py);
  }

  /** Takes a piece out of the way of all others. */
  void park(int i) {
    region[i] = Poses.PARKED;
    left[i] = Double.POSITIVE_INFINITY;
    right[i] = Double.NEGATIVE_INFINITY;
    x[i] = 0;
    y[i] = 0;
  }

  void load(Poses poses) {
    for (int i = 0; i < pieces; i++) {
      if (poses.region[i] == Poses.PARKED) {
        park(i);
      } else {
        place(i, poses.region[i], poses.x[i], poses.y[i]);
      }
    }
  }

  void save(Poses poses) {
    System.arraycopy(region, 0, poses.region, 0, pieces);
    System.arraycopy(x, 0, poses.x, 0, pieces);
    System.arraycopy(y, 0, poses.y, 0, pieces);
  }

  /**
   * Sum of weighted depths of a piece at a place; stops early once it exceeds a limit.
   *
   * @return the sum, or any value of at least {@code limit} if the sum is at least that
   */
  double evaluate(int i, int o, double px, double py, double limit) {
    work++;
    double a = px + turns.minX[o];
    double b = px + turns.maxX[o];
    double c = py + turns.minY[o];
    double d = py + turns.maxY[o];
    double sum = 0;
    int row = i * all;
    for (int j = 0; j < all; j++) {
      if (a < right[j] && b > left[j] && c < high[j] && d > low[j] && j != i) {
        double deep = pairDepth(j, o, px, py);
        if (deep > 0) {
          sum += weight.length == 0 ? deep : weight[row + j] * deep;
          if (sum >= limit) {
            return sum;
          }
        }
      }
    }
    return sum;
  }

  private double pairDepth(int j, int o, double px, double py) {
    int oj = orientation[j];
    double dx = px - x[j];
    double dy = py - y[j];
    double cos = turns.cos[oj];
    double sin = turns.sin[oj];
    return turns.fit(oj, o).depth(cos * dx + sin * dy, cos * dy - sin * dx);
  }

  /**
   * Gives the move that ends the overlap of a piece at a place with one other shape.
   *
   * @param exit takes the move
   * @return its length, 0 if they do not overlap
   */
  double exit(int i, int j, int o, double px, double py, double[] exit) {
    exit[0] = 0;
    exit[1] = 0;
    if (j == i
        || !(px + turns.minX[o] < right[j]
            && px + turns.maxX[o] > left[j]
            && py + turns.minY[o] < high[j]
            && py + turns.maxY[o] > low[j])) {
      return 0;
    }
    int oj = orientation[j];
    double dx = px - x[j];
    double dy = py - y[j];
    double cos = turns.cos[oj];
    double sin = turns.sin[oj];
    double deep = turns.fit(oj, o).exit(cos * dx + sin * dy, cos * dy - sin * dx, exit);
    double ex = cos * exit[0] - sin * exit[1];
    exit[1] = sin * exit[0] + cos * exit[1];
    exit[0] = ex;
    return deep;
  }

  /** Tells whether no piece that is placed overlaps anything. O(n²) box tests. */
  boolean isApart() {
    for (int i = 0; i < pieces; i++) {
      if (region[i] != Poses.PARKED
          && evaluate(i, orientation[i], x[i], y[i], Double.MIN_VALUE) > 0) {
        return false;
      }
    }
    return true;
  }

  /** Renews the depths of a piece's overlaps after it moved. */
  void refresh(int i) {
    for (int j = 0; j < all; j++) {
      double deep = 0;
      if (left[i] < right[j]
          && right[i] > left[j]
          && low[i] < high[j]
          && high[i] > low[j]
          && j != i) {
        deep = pairDepth(j, orientation[i], x[i], y[i]);
      }
      depth[i * all + j] = deep;
      if (j < pieces) {
        depth[j * all + i] = deep;
      }
    }
  }

  void refreshAll() {
    for (int i = 0; i < pieces; i++) {
      refresh(i);
    }
  }

  /** Sum of the depths of one piece's overlaps, weights aside. */
  double overlapOf(int i) {
    double sum = 0;
    for (int k = i * all; k < (i + 1) * all; k++) {
      sum += depth[k];
    }
    return sum;
  }

  /** Sum over all pairs of the depths of overlap. */
  double overlap() {
    double sum = 0;
    for (int i = 0; i < pieces; i++) {
      for (int j = i + 1; j < all; j++) {
        sum += depth[i * all + j];
      }
    }
    return sum;
  }

  double weightedOverlapOf(int i) {
    double sum = 0;
    for (int k = i * all; k < (i + 1) * all; k++) {
      sum += weight[k] * depth[k];
    }
    return sum;
  }
}
