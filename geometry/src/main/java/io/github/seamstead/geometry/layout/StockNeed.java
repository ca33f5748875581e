package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * Further stock of one kind for pieces that found no place.
 *
 * @param stockId which stock; not blank
 * @param items how many further sheets, or rolls of the same size; 1 or more
 * @param length for a roll: how many further metres in all; for a sheet 0; 0 or more
 * @param cost what they cost, in the caller's currency; 0 if the stock has no price; 0 or more
 */
public record StockNeed(String stockId, int items, double length, double cost) {

  public StockNeed {
    Args.notBlank("stock id", stockId);
    Args.within("items", items, 1, Integer.MAX_VALUE);
    Args.notNegative("length", length, "m");
    Args.notNegative("cost", cost, "");
  }
}
