package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.work.Cancellation;

/**
 * The dynamic programme over all spans of a line, or of a ring with all its cuts at once: the best
 * tree of a span is the best pair of trees of its parts. Costs O(k^3) time and O(k^2) memory for k
 * leaves; asks before each span, O(k) of work, whether it is cancelled.
 */
final class SpanProgramme {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** How the values of two parts and of their merge make the value of the whole. */
  enum Combine {
    /** The sum of all. */
    SUM,
    /** The later part, and then the merge. */
    LATER_THEN_OWN,
    /** The greatest of all. */
    GREATEST;

    double of(double left, double right, double own) {
      return switch (this) {
        case SUM -> left + right + own;
        case LATER_THEN_OWN -> Math.max(left, right) + own;
        case GREATEST -> Math.max(Math.max(left, right), own);
      };
    }
  }

  private final int k;
  private final boolean closed;
  private final SpanCost own;
  private final SpanCost tieOwn;
  private final Combine combine;
  private final double[][] value;
  private final double[][] tie;
  private final int[][] split;

  /**
   * Runs the programme.
   *
   * @param own cost of a merge; infinite if it is not permitted
   * @param tieOwn cost that is added up to choose among trees of equal value
   * @throws java.util.concurrent.CancellationException if it is cancelled
   */
  SpanProgramme(
      int k,
      boolean closed,
      SpanCost own,
      SpanCost tieOwn,
      Combine combine,
      Cancellation cancellation) {
    this.k = k;
    this.closed = closed;
    this.own = own;
    this.tieOwn = tieOwn;
    this.combine = combine;
    this.value = new double[k][k + 1];
    this.tie = new double[k][k + 1];
    this.split = new int[k][k + 1];
    for (int count = 2; count <= k; count++) {
      int starts = closed ? k : k - count + 1;
      for (int first = 0; first < starts; first++) {
        cancellation.goOn("the order of joining was sought");
        fill(first, count);
      }
    }
  }

  private void fill(int first, int count) {
    double best = NONE;
    double bestTie = NONE;
    for (int part = 1; part < count; part++) {
      int second = first + part < k ? first + part : first + part - k;
      double a = value[first][part];
      double b = value[second][count - part];
      if (a == NONE || b == NONE) {
        continue;
      }
      double cost = own.of(first, part, count - part);
      if (cost == NONE) {
        continue;
      }
      double total = combine.of(a, b, cost);
      double totalTie =
          tie[first][part] + tie[second][count - part] + tieOwn.of(first, part, count - part);
      if (better(total, totalTie, best, bestTie)) {
        best = total;
        bestTie = totalTie;
        split[first][count] = part;
      }
    }
    value[first][count] = best;
    tie[first][count] = bestTie;
  }

  /** Compares by value and, where values agree to rounding, by tie. */
  static boolean better(double total, double totalTie, double best, double bestTie) {
    double slack = 1e-12 * Math.abs(total);
    return total < best - slack || (total <= best + slack && totalTie < bestTie * (1 - 1e-12));
  }

  /** Gives how many spans may be the whole. */
  int cuts() {
    return closed ? k : 1;
  }

  /** Gives the best value of the whole from a cut on; infinite if nothing is permitted. */
  double value(int cut) {
    return value[cut][k];
  }

  /** Gives what breaks ties for the whole from a cut on. */
  double tie(int cut) {
    return tie[cut][k];
  }

  /** Gives the best tree of the whole from a cut on. */
  Tree tree(int cut) {
    Tree tree = new Tree(cut, k);
    grow(tree, cut, 0, k);
    return tree;
  }

  private int grow(Tree tree, int cut, int offset, int count) {
    if (count == 1) {
      return offset;
    }
    int part = split[(cut + offset) % k][count];
    int left = grow(tree, cut, offset, part);
    int right = grow(tree, cut, offset + part, count - part);
    return tree.merge(left, right);
  }
}
