package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Stock copies side by side, and the orders in which it is worth filling them. */
final class StockOrder {

  private StockOrder() {}

  /** Every copy that so many pieces could need, apart along one axis. */
  static List<Bin> bins(List<StockItem> stock, int copies) {
    List<Bin> bins = new ArrayList<>();
    double at = 0;
    for (StockItem item : stock) {
      var bounds = item.outline().bounds();
      for (int c = 1; c <= Math.min(item.count(), copies); c++) {
        bins.add(new Bin(item, c, bounds, at - bounds.minX()));
        at += bounds.width() * 1.5;
      }
    }
    return bins;
  }

  /**
   * By preference, by size and by cost for its area, then by measures and name, so that two items
   * stand in the same order whatever else there is; equal orders are given once.
   */
  static List<int[]> orders(List<StockItem> items) {
    Comparator<StockItem> byArea = Comparator.comparingDouble(item -> -area(item));
    Comparator<StockItem> byPreference = Comparator.comparingInt(StockItem::preference);
    Comparator<StockItem> byCost = Comparator.comparingDouble(StockOrder::costOfArea);
    Comparator<StockItem> rest =
        Comparator.comparingDouble((StockItem item) -> -item.outline().bounds().width())
            .thenComparingInt(item -> item.flaws().size())
            .thenComparing(StockItem::id);
    List<int[]> out = new ArrayList<>();
    for (Comparator<StockItem> order :
        List.of(
            byPreference.thenComparing(byArea),
            byArea.thenComparing(byPreference),
            byCost.thenComparing(byPreference),
            byPreference.thenComparing(byArea.reversed()))) {
      Comparator<StockItem> whole = order.thenComparing(rest);
      int[] sorted =
          IntStream.range(0, items.size())
              .boxed()
              .sorted((a, b) -> whole.compare(items.get(a), items.get(b)))
              .mapToInt(Integer::intValue)
              .toArray();
      if (out.stream().noneMatch(o -> java.util.Arrays.equals(o, sorted))) {
        out.add(sorted);
      }
    }
    return out;
  }

  static double area(Bin bin) {
    return area(bin.item());
  }

  private static double area(StockItem item) {
    return item instanceof Roll roll ? roll.width() * roll.length() : item.outline().area();
  }

  /** Cost per square metre when used in full. */
  static double costOfArea(Bin bin) {
    return costOfArea(bin.item());
  }

  private static double costOfArea(StockItem item) {
    return item.costOf(item.outline().bounds().width()) / area(item);
  }
}
