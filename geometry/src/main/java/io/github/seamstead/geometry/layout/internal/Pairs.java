package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * The depth of each overlap and the weight of each pair of shapes. Pairs that overlap are listed by
 * shape, so that keeping count of a move and of a whole state costs only as much as there are
 * overlaps; the tables themselves take the square of the number of pieces.
 */
final class Pairs {

  /** Keeps sums of weighted depths finite however long a pair resists. */
  private static final double MOST_WEIGHT = 1e100;

  private final int pieces;
  private final int all;

  /** At i times {@link #all} plus j, for piece i and shape j, both ways round for two pieces. */
  private final double[] weight;

  private final double[] depth;
  private final int[][] partner;
  private final int[] partners;

  /** Pairs whose weight is more than at first, the lower piece first. */
  private int[] raised = new int[64];

  private int raisedCount;

  /** What weights begin at and fade to. */
  private final double[] base;

  /** Pairs of pieces, and of them with obstacles; the sizes of two make their first weight. */
  Pairs(int pieces, int all, double[] size) {
    this.pieces = pieces;
    this.all = all;
    weight = new double[pieces * all];
    depth = new double[pieces * all];
    partner = new int[pieces][8];
    partners = new int[pieces];
    base = new double[pieces * all];
    for (int i = 0; i < pieces; i++) {
      for (int j = 0; j < all; j++) {
        base[i * all + j] = size[i] * size[j];
      }
    }
    System.arraycopy(base, 0, weight, 0, base.length);
  }

  /** Pairs where a piece's size is the power of its area beside the mean, an obstacle's is 1. */
  static Pairs weighed(double[] area, int all, double power) {
    double[] size = new double[all];
    Arrays.fill(size, 1);
    double mean = 0;
    for (int i = 0; i < area.length; i++) {
      size[i] = StrictMath.pow(area[i], power);
      mean += size[i] / area.length;
    }
    for (int i = 0; i < area.length; i++) {
      size[i] /= mean;
    }
    return new Pairs(area.length, all, size);
  }

  double weight(int i, int j) {
    return weight[i * all + j];
  }

  /** Sets every weight to what it was at first. */
  void reset() {
    for (int k = 0; k < raisedCount; k++) {
      setWeight(raised[k] / all, raised[k] % all, base[raised[k]]);
    }
    raisedCount = 0;
  }

  private void setWeight(int i, int j, double w) {
    weight[i * all + j] = w;
    if (j < pieces) {
      weight[j * all + i] = w;
    }
  }

  /** Forgets the overlaps of a piece. */
  void clear(int i) {
    for (int m = 0; m < partners[i]; m++) {
      int j = partner[i][m];
      depth[i * all + j] = 0;
      if (j < pieces) {
        depth[j * all + i] = 0;
        remove(j, i);
      }
    }
    partners[i] = 0;
  }

  private void remove(int j, int i) {
    int at = 0;
    while (partner[j][at] != i) {
      at++;
    }
    partner[j][at] = partner[j][--partners[j]];
  }

  /** Notes that a piece overlaps a shape; their pair must not be noted yet. */
  void add(int i, int j, double deep) {
    depth[i * all + j] = deep;
    list(i, j);
    if (j < pieces) {
      depth[j * all + i] = deep;
      list(j, i);
    }
  }

  private void list(int i, int j) {
    if (partners[i] == partner[i].length) {
      partner[i] = Arrays.copyOf(partner[i], 2 * partners[i]);
    }
    partner[i][partners[i]++] = j;
  }

  boolean overlaps(int i) {
    return partners[i] > 0;
  }

  /** Sum over all pairs of the depths of overlap. */
  double overlap() {
    double sum = 0;
    for (int i = 0; i < pieces; i++) {
      for (int m = 0; m < partners[i]; m++) {
        int j = partner[i][m];
        if (j > i) {
          sum += depth[i * all + j];
        }
      }
    }
    return sum;
  }

  /**
   * Raises the weights of pairs that overlap in proportion to their depth beside the deepest, and
   * lets the others fade (the proportional rule is that of Umetani and others 2009, who add where
   * this multiplies: from memory).
   */
  void grow(Tuning tuning) {
    double most = 0;
    for (int i = 0; i < pieces; i++) {
      for (int m = 0; m < partners[i]; m++) {
        most = Math.max(most, depth[i * all + partner[i][m]]);
      }
    }
    if (most <= 0) {
      return;
    }
    fade(tuning.fade());
    for (int i = 0; i < pieces; i++) {
      for (int m = 0; m < partners[i]; m++) {
        int j = partner[i][m];
        if (j > i) {
          int k = i * all + j;
          if (weight[k] <= base[k]) {
            raise(k);
          }
          double w = weight[k] * (1 + tuning.growth() * depth[k] / most);
          setWeight(i, j, Math.min(MOST_WEIGHT, w));
        }
      }
    }
  }

  private void fade(double part) {
    int left = 0;
    for (int r = 0; r < raisedCount; r++) {
      int k = raised[r];
      if (depth[k] <= 0) {
        setWeight(k / all, k % all, Math.max(base[k], weight[k] * part));
      }
      if (weight[k] > base[k]) {
        raised[left++] = k;
      }
    }
    raisedCount = left;
  }

  private void raise(int k) {
    if (raisedCount == raised.length) {
      raised = Arrays.copyOf(raised, 2 * raisedCount);
    }
    raised[raisedCount++] = k;
  }
}
