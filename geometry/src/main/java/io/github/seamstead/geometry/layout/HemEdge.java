package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * The edge of a piece that belongs on a reinforced edge of the stock.
 *
 * @param edge index of the piece's edge, 0 for the base of a panel
 * @param required true if a piece that cannot lie so must stay unplaced; false if it should lie so
 *     wherever that costs no further stock
 */
public record HemEdge(int edge, boolean required) {

  /**
   * Checks the index.
   *
   * @param edge 0 or more
   * @param required true for must, false for should
   * @throws IllegalArgumentException if the index is negative
   */
  public HemEdge {
    Args.within("hem edge", edge, 0, Integer.MAX_VALUE);
  }
}
