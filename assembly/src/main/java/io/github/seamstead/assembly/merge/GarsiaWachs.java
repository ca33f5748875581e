package io.github.seamstead.assembly.merge;

import java.util.Arrays;

/**
 * The first two phases of Garsia and Wachs: combine locally lightest pairs, then read the depths
 * off the combination tree. An alphabetic tree with the same depths exists and is optimal.
 *
 * <p>The row that is worked on never has two items next but one to each other of which the right
 * one is at least as heavy. Each of the n - 1 combinations is a search, two removals and an
 * insertion in a {@link WeightRow}, so all cost O(n log n).
 */
final class GarsiaWachs {

  private static final int NONE = -1;

  private final int leaves;
  private final double[] weight;
  private final int[] left;
  private final int[] right;
  private final WeightRow row;
  private int[] toCheck = new int[64];
  private int made;
  private double cost;

  GarsiaWachs(double[] weights) {
    this.leaves = weights.length;
    this.weight = Arrays.copyOf(weights, 2 * leaves - 1);
    this.left = new int[leaves - 1];
    this.right = new int[leaves - 1];
    this.row = new WeightRow(weight);
    for (int item = 0; item < leaves; item++) {
      combineBefore(weight[item]);
      row.insertAfter(item, row.last());
    }
    combineBefore(Double.POSITIVE_INFINITY);
  }

  /** Gives the sum of the weights of all combinations. */
  double cost() {
    return cost;
  }

  /** Gives the depth of each leaf. */
  int[] depths() {
    int[] depth = new int[2 * leaves - 1];
    for (int i = leaves - 2; i >= 0; i--) {
      depth[left[i]] = depth[leaves + i] + 1;
      depth[right[i]] = depth[leaves + i] + 1;
    }
    return Arrays.copyOf(depth, leaves);
  }

  /** Combines the last two items as long as the one before the last is no heavier than the next. */
  private void combineBefore(double next) {
    while (true) {
      int last = row.last();
      int pair = last == NONE ? NONE : row.previous(last);
      if (pair == NONE || weight[pair] > next) {
        return;
      }
      combineAndRestore(pair, last);
    }
  }

  /** Combines a pair; the sum moves left and may make pairs before it light enough to combine. */
  private void combineAndRestore(int a, int b) {
    int count = 0;
    toCheck[count++] = combine(a, b);
    while (count > 0) {
      int item = toCheck[count - 1];
      int second = row.previous(item);
      int first = second == NONE ? NONE : row.previous(second);
      if (first == NONE || weight[first] > weight[item]) {
        count--;
        continue;
      }
      if (count == toCheck.length) {
        toCheck = Arrays.copyOf(toCheck, 2 * count);
      }
      toCheck[count++] = combine(first, second);
    }
  }

  private int combine(int a, int b) {
    int item = leaves + made;
    double sum = weight[a] + weight[b];
    cost += sum;
    weight[item] = sum;
    left[made] = a;
    right[made] = b;
    made++;
    int heavier = row.heavierBefore(a, sum);
    row.remove(a);
    row.remove(b);
    row.insertAfter(item, heavier);
    return item;
  }
}
