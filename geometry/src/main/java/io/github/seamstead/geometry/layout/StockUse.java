package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * One sheet or roll with what is cut from it.
 *
 * @param stockId the stock item
 * @param copy which of its copies, counted from 1
 * @param placements what is cut from it, in the order of the pieces asked for
 * @param usedLength how far the pieces reach along x from the start of the item, margin included,
 *     in metres
 * @param cost of the part used, in the caller's currency
 * @param remnants off-cuts worth keeping as polygons, in metres, largest first
 */
public record StockUse(
    String stockId,
    int copy,
    List<Placement> placements,
    double usedLength,
    double cost,
    List<Outline> remnants) {

  /**
   * Copies the lists.
   *
   * @param stockId not blank
   * @param copy 1 or more
   * @param placements at least one
   * @param usedLength in metres, greater than 0
   * @param cost 0 or more
   * @param remnants any number of polygons, in metres
   * @throws IllegalArgumentException if one is out of range
   */
  public StockUse {
    Args.notBlank("stock id", stockId);
    Args.positive("used length", usedLength, "m");
    Args.notNegative("cost", cost, "");
    placements = Args.notEmpty("placements", placements);
    remnants = List.copyOf(remnants);
  }
}
