package io.github.seamstead.api.job;

import java.util.List;

/**
 * The sheets and rolls that panels are cut from.
 *
 * @param sheets sheets
 * @param rolls rolls
 * @param spacing clear gap between two pieces on the stock, in metres
 * @param edgeMargin clear gap between a piece and the edge of the stock, in metres
 * @param keepGrain whether panels keep their upward direction along or against the width of the
 *     stock
 */
public record Stock(
    List<StockSheet> sheets,
    List<StockRoll> rolls,
    double spacing,
    double edgeMargin,
    boolean keepGrain) {

  /**
   * Copies the lists.
   *
   * @param sheets sheets
   * @param rolls rolls
   * @param spacing clear gap between two pieces on the stock, in metres
   * @param edgeMargin clear gap between a piece and the edge of the stock, in metres
   * @param keepGrain whether panels keep their upward direction along or against the width of the
   *     stock
   */
  public Stock {
    sheets = List.copyOf(sheets);
    rolls = List.copyOf(rolls);
  }
}
