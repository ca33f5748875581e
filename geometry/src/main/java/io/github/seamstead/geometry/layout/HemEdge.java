package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * The edge of a piece that belongs on a reinforced edge of the stock.
 *
 * @param edge index of the piece's edge, 0 for the base of a panel; 0 or more
 * @param required true if a piece that cannot lie so must stay unplaced; false if it should lie so
 *     wherever that costs no further stock
 */
public record HemEdge(int edge, boolean required) {

  public HemEdge {
    Args.within("hem edge", edge, 0, Integer.MAX_VALUE);
  }
}
