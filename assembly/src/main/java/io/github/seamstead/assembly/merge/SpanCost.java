package io.github.seamstead.assembly.merge;

/** What a merge of two neighbouring groups costs, in any unit; 0 or more. */
@FunctionalInterface
interface SpanCost {

  /**
   * Gives the cost of a merge.
   *
   * @param first index of the first leaf of the left group, from 0
   * @param left how many leaves the left group has
   * @param right how many leaves the right group has; in a ring they go on past the last leaf
   * @return the cost; {@link Double#POSITIVE_INFINITY} if the merge is not permitted
   */
  double of(int first, int left, int right);
}
