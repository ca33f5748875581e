package io.github.seamstead.geometry.stock;

import io.github.seamstead.shared.check.Args;
import java.util.SortedSet;

/** Checks that both kinds of stock share. */
final class StockChecks {

  /** More alike items than any site holds; keeps a slip of the keyboard from filling the memory. */
  static final int MOST_ALIKE = 100_000;

  private StockChecks() {}

  static SortedSet<Integer> edges(String id, SortedSet<Integer> edges, int edgeCount) {
    for (int edge : edges) {
      Args.within("stock " + id + ": reinforced edge", edge, 0, edgeCount - 1);
    }
    return new EdgeSet(edges);
  }
}
