package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.check.Args;

/**
 * The optimal alphabetic tree over a line of weights: of all binary trees whose leaves keep their
 * order, one with the least sum of weight times depth, which is the sum over all merges of the
 * merged weight.
 *
 * <p>Method: Garsia and Wachs, A new algorithm for minimum cost binary trees, SIAM J. Comput. 6
 * (1977), from memory. Costs O(n log n) time and O(n) memory for n weights; made for lines of
 * millions.
 *
 * <pre>{@code
 * LineTree.optimal(new double[] {4, 1, 1, 4}).cost();   // 18
 * }</pre>
 */
public final class LineTree {

  private final int leaves;
  private final double cost;
  private final int[] depth;
  private final int[] left;
  private final int[] right;

  private LineTree(double cost, int[] depth) {
    this.leaves = depth.length;
    this.cost = cost;
    this.depth = depth;
    this.left = new int[leaves - 1];
    this.right = new int[leaves - 1];
    build();
  }

  /**
   * Computes the tree.
   *
   * @param weights the leaves from left to right, at least one, each finite and 0 or more, in one
   *     unit such as kilograms
   * @return the tree
   * @throws IllegalArgumentException if there is no weight or one is negative or not finite
   */
  public static LineTree optimal(double[] weights) {
    Args.require(weights.length > 0, "weights: given none, must have at least one");
    for (int i = 0; i < weights.length; i++) {
      if (!(weights[i] >= 0 && weights[i] < Double.POSITIVE_INFINITY)) {
        Args.notNegative("weight " + (i + 1), weights[i], "");
      }
    }
    GarsiaWachs run = new GarsiaWachs(weights);
    return new LineTree(run.cost(), run.depths());
  }

  /** Turns depths into merges: two last groups of equal depth belong together. */
  private void build() {
    int[] node = new int[leaves];
    int[] level = new int[leaves];
    int top = 0;
    int next = 0;
    for (int i = 0; i < leaves; i++) {
      node[top] = i;
      level[top++] = depth[i];
      while (top > 1 && level[top - 1] == level[top - 2]) {
        left[next] = node[top - 2];
        right[next] = node[top - 1];
        top--;
        node[top - 1] = leaves + next++;
        level[top - 1]--;
      }
    }
  }

  /**
   * Gives the least sum.
   *
   * @return sum of weight times depth, in the weights' unit
   */
  public double cost() {
    return cost;
  }

  /**
   * Gives the number of leaves.
   *
   * @return 1 or more
   */
  public int size() {
    return leaves;
  }

  /**
   * Gives how many merges a leaf goes through.
   *
   * @param leaf from 0
   * @return its depth in the tree
   */
  public int depth(int leaf) {
    return depth[leaf];
  }

  /**
   * Gives the left part of a merge. Merges are numbered so that parts come before the whole.
   *
   * @param merge from 0 to size - 2
   * @return a leaf if less than {@link #size()}, else {@code size() + m} for merge m
   */
  public int left(int merge) {
    return left[merge];
  }

  /**
   * Gives the right part of a merge.
   *
   * @param merge from 0 to size - 2
   * @return as for {@link #left}
   */
  public int right(int merge) {
    return right[merge];
  }
}
