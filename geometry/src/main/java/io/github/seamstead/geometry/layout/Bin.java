package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;

/**
 * One copy of a stock item, side by side with the others along one x axis.
 *
 * @param item the stock
 * @param copy which copy, from 1
 * @param bounds of the outline in its own coordinates, in metres
 * @param offset what to add to own x for the common axis, in metres
 */
record Bin(StockItem item, int copy, Bounds bounds, double offset) {

  boolean isRectangle() {
    double box = bounds.width() * bounds.height();
    return item.outline().size() == 4 && item.outline().area() >= box * (1 - 1e-12);
  }
}
