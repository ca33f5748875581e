package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;

/**
 * One sheet or roll with what is cut from it.
 *
 * @param stockId the stock item; not blank
 * @param copy which of its copies, counted from 1; 1 or more
 * @param placements what is cut from it, in the order of the pieces asked for; at least one
 * @param usedLength how far the pieces reach along x from the start of the item, margin included,
 *     in metres; greater than 0
 * @param cost of the part used, in the caller's currency; 0 or more
 * @param remnants off-cuts worth keeping as polygons, in metres, largest first
 */
public record StockUse(
    String stockId,
    int copy,
    List<Placement> placements,
    double usedLength,
    double cost,
    List<Outline> remnants) {

  public StockUse {
    Args.notBlank("stock id", stockId);
    Args.positive("used length", usedLength, "m");
    Args.notNegative("cost", cost, "");
    placements = Args.notEmpty("placements", placements);
    remnants = List.copyOf(remnants);
  }
}
