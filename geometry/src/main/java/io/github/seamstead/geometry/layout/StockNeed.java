package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * Further stock with which every piece that fits a stock item at all would have been placed.
 *
 * @param stockId which stock
 * @param items how many further sheets, or rolls of the same size
 * @param length for a roll: how many further metres in all; for a sheet 0
 * @param cost what they cost, in the caller's currency; 0 if the stock has no price
 */
public record StockNeed(String stockId, int items, double length, double cost) {

  /**
   * Checks the sizes.
   *
   * @param stockId not blank
   * @param items 1 or more
   * @param length in metres, 0 or more
   * @param cost 0 or more
   * @throws IllegalArgumentException if one is out of range
   */
  public StockNeed {
    Args.notBlank("stock id", stockId);
    Args.within("items", items, 1, Integer.MAX_VALUE);
    Args.notNegative("length", length, "m");
    Args.notNegative("cost", cost, "");
  }
}
