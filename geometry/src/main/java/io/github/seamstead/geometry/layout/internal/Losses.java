package io.github.seamstead.geometry.layout.internal;

import org.jspecify.annotations.Nullable;

/** How deep a piece of a {@link Nest} would overlap others at a place, and the ways out. */
final class Losses {

  /** Stands for the cell of a pair that has no grid; ends as a row does, to be summed late. */
  private static final int UNKNOWN = Integer.MIN_VALUE + 1;

  private final Nest nest;
  private final BoxIndex boxes;
  private final DepthTable depths;
  private final int[] met;
  private final int[] metCell;
  private final double[] metX;
  private final double[] metY;

  Losses(Nest nest, BoxIndex boxes, DepthTable depths) {
    this.nest = nest;
    this.boxes = boxes;
    this.depths = depths;
    met = new int[nest.all];
    metCell = new int[nest.all];
    metX = new double[nest.all];
    metY = new double[nest.all];
  }

  /**
   * Sum of weighted depths of a piece at a place; stops early once it exceeds a limit. Most places
   * looked at are poor, so the depths that a grid tells at once are summed first, those of regions
   * near whose boundary the piece lies after them.
   *
   * @return the sum, or any value of at least {@code limit} if the sum is at least that
   */
  double at(int i, int o, double px, double py, double limit) {
    Orientations turns = nest.turns;
    boxes.aim(px + turns.minX[o], px + turns.maxX[o], py + turns.minY[o], py + turns.maxY[o]);
    Pairs weights = nest.weights();
    double sum = 0;
    int left = 0;
    for (int w = 0; w < boxes.words; w++) {
      long bits = boxes.near(w);
      if (w == i >> 6) {
        bits &= ~(1L << i);
      }
      while (bits != 0) {
        int j = (w << 6) + Long.numberOfTrailingZeros(bits);
        bits &= bits - 1;
        int oj = nest.orientation[j];
        double dx = px - nest.x[j];
        double dy = py - nest.y[j];
        if (turns.byParts(oj, o)) {
          sum += turns.depthOfParts(oj, o, dx, dy, null) * weight(weights, i, j);
          if (sum >= limit) {
            return sum;
          }
          continue;
        }
        double cos = turns.cos[oj];
        double sin = turns.sin[oj];
        double rx = cos * dx + sin * dy;
        double ry = cos * dy - sin * dx;
        int head = depths.head(turns, oj, o);
        int cell = head < 0 ? UNKNOWN : depths.cell(head, rx, ry);
        if (cell == 0) {
          continue;
        }
        if (DepthTable.isLinear(cell)) {
          sum += depths.depthLinear(head, cell, rx, ry) * weight(weights, i, j);
          if (sum >= limit) {
            return sum;
          }
        } else {
          met[left] = j;
          metCell[left] = cell;
          metX[left] = rx;
          metY[left++] = ry;
        }
      }
    }
    for (int m = 0; m < left; m++) {
      int j = met[m];
      double depth =
          metCell[m] == UNKNOWN
              ? turns.fit(nest.orientation[j], o).depth(metX[m], metY[m])
              : depths.depthAtBoundary(metCell[m], metX[m], metY[m]);
      if (depth > 0) {
        sum += depth * weight(weights, i, j);
        if (sum >= limit) {
          return sum;
        }
      }
    }
    return sum;
  }

  private static double weight(@Nullable Pairs weights, int i, int j) {
    return weights == null ? 1 : weights.weight(i, j);
  }

  /** Exact depth of the overlap of a shape with an orientation at a place, if their boxes meet. */
  double depth(int j, int o, double px, double py) {
    Orientations turns = nest.turns;
    int oj = nest.orientation[j];
    double dx = px - nest.x[j];
    double dy = py - nest.y[j];
    if (turns.byParts(oj, o)) {
      return turns.depthOfParts(oj, o, dx, dy, null);
    }
    double cos = turns.cos[oj];
    double sin = turns.sin[oj];
    return turns.fit(oj, o).depth(cos * dx + sin * dy, cos * dy - sin * dx);
  }

  /** The move that ends it, and its length; 0 if there is no overlap. */
  double exit(int j, int o, double px, double py, double[] exit) {
    Orientations turns = nest.turns;
    exit[0] = 0;
    exit[1] = 0;
    int oj = nest.orientation[j];
    double dx = px - nest.x[j];
    double dy = py - nest.y[j];
    if (turns.byParts(oj, o)) {
      return turns.depthOfParts(oj, o, dx, dy, exit);
    }
    double cos = turns.cos[oj];
    double sin = turns.sin[oj];
    double rx = cos * dx + sin * dy;
    double ry = cos * dy - sin * dx;
    int head = depths.head(turns, oj, o);
    int cell = head < 0 ? UNKNOWN : depths.cell(head, rx, ry);
    double deep =
        cell == 0
            ? 0
            : DepthTable.isSide(cell)
                ? depths.exitAtSide(cell, rx, ry, exit)
                : turns.fit(oj, o).exit(rx, ry, exit);
    double ex = cos * exit[0] - sin * exit[1];
    exit[1] = sin * exit[0] + cos * exit[1];
    exit[0] = ex;
    return deep;
  }
}
