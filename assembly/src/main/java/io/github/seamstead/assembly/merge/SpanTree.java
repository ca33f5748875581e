package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The merge tree of least total cost over a line or ring, for any cost of a merge.
 *
 * <pre>{@code
 * double[] w = {4, 4, 5, 9};
 * SpanCost weight = (first, left, right) -> sumOf(w, first, left + right);
 * SpanTree.least(4, true, weight).orElseThrow().cost();   // 43
 * }</pre>
 *
 * @param cost sum of the costs of all merges
 * @param merges the merges, parts before the whole
 */
public record SpanTree(double cost, List<Merge> merges) {

  /**
   * A merge.
   *
   * @param first index of the first leaf of the left group, from 0
   * @param left how many leaves the left group has
   * @param right how many leaves the right group has
   */
  public record Merge(int first, int left, int right) {}

  /**
   * Copies the merges.
   *
   * @param cost the sum
   * @param merges the merges
   */
  public SpanTree {
    merges = List.copyOf(merges);
  }

  /**
   * Finds the tree by dynamic programming over all spans; a ring is tried at every cut at once.
   * Costs O(n^3) calls of the cost and O(n^2) memory.
   *
   * @param leaves how many leaves, 1 to {@link JoinPlanner#MOST_GENERAL}
   * @param ring whether the last leaf is a neighbour of the first
   * @param cost what a merge costs; must not give NaN
   * @return the tree, or empty if no tree is permitted
   * @throws IllegalArgumentException if the number of leaves is out of range or a cost is NaN
   */
  public static Optional<SpanTree> least(int leaves, boolean ring, SpanCost cost) {
    Args.within("leaves", leaves, 1, JoinPlanner.MOST_GENERAL);
    SpanCost checked =
        (first, left, right) -> {
          double own = cost.of(first, left, right);
          Args.require(!Double.isNaN(own), "cost of a merge: given NaN, must be a number");
          return own;
        };
    SpanProgramme programme =
        new SpanProgramme(
            leaves, ring, checked, (first, left, right) -> 0, SpanProgramme.Combine.SUM);
    int best = 0;
    for (int cut = 1; cut < programme.cuts(); cut++) {
      if (programme.value(cut) < programme.value(best)) {
        best = cut;
      }
    }
    if (programme.value(best) == Double.POSITIVE_INFINITY) {
      return Optional.empty();
    }
    Tree tree = programme.tree(best);
    List<Merge> merges = new ArrayList<>(leaves);
    for (int node = leaves; node < tree.nodes(); node++) {
      int left = tree.left[node];
      merges.add(
          new Merge(
              (best + tree.first[left]) % leaves, tree.count[left], tree.count[tree.right[node]]));
    }
    return Optional.of(new SpanTree(programme.value(best), merges));
  }
}
