package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Lower bounds on the stock that an area of pieces needs. O(n log n) for n stock copies. */
final class StockBounds {

  private StockBounds() {}

  /** Bound in the objective's own unit: items, cost or metres. */
  static double of(Objective objective, List<Bin> bins, double area) {
    Comparator<Bin> cheapFirst =
        switch (objective) {
          case FEWEST_ITEMS -> Comparator.comparingDouble(b -> -StockOrder.area(b));
          case LEAST_COST -> Comparator.comparingDouble(StockOrder::costOfArea);
          case LEAST_LENGTH -> Comparator.comparingDouble(b -> -b.bounds().height());
        };
    double left = area * (1 - 1e-12);
    double sum = 0;
    for (Bin bin : bins.stream().sorted(cheapFirst).toList()) {
      if (left <= 0) {
        break;
      }
      double whole = StockOrder.area(bin);
      double part = Math.min(1, left / whole);
      left -= whole;
      sum +=
          switch (objective) {
            case FEWEST_ITEMS -> 1;
            case LEAST_COST -> part * bin.item().costOf(bin.bounds().width());
            case LEAST_LENGTH ->
                bin.item() instanceof Roll
                    ? part * bin.bounds().width()
                    : part * whole / bin.bounds().height();
          };
    }
    return sum;
  }

  /** How many of the items have room for a need, the roomiest first; sorts the rooms. */
  static int fewest(double[] room, double need) {
    Arrays.sort(room);
    double left = need;
    int count = 0;
    for (int b = room.length - 1; b >= 0 && left > 0; b--) {
      left -= room[b];
      count++;
    }
    return count;
  }

  /** The margin to count on: a hem lies on a band itself, so that an item with one has none. */
  static double margin(StockItem item, double stated) {
    return item.reinforcedEdges().isEmpty() ? stated : 0;
  }

  /**
   * Cost of so many of the items at least: the cheapest, and of a roll no more than a beginning.
   */
  static double costOf(List<Bin> bins, int items) {
    return bins.stream()
        .mapToDouble(
            bin -> bin.item() instanceof Roll ? 0 : bin.item().costOf(bin.bounds().width()))
        .sorted()
        .limit(items)
        .sum();
  }
}
