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

  /** By preference, by size and by cost for its area; equal orders are given once. */
  static List<int[]> orders(List<Bin> bins) {
    Comparator<Bin> byArea = Comparator.comparingDouble(b -> -area(b));
    Comparator<Bin> byPreference = Comparator.comparingInt(b -> b.item().preference());
    Comparator<Bin> byCost = Comparator.comparingDouble(StockOrder::costOfArea);
    List<int[]> out = new ArrayList<>();
    for (Comparator<Bin> order :
        List.of(
            byPreference.thenComparing(byArea),
            byArea.thenComparing(byPreference),
            byCost.thenComparing(byPreference),
            byPreference.thenComparing(byArea.reversed()))) {
      int[] sorted =
          IntStream.range(0, bins.size())
              .boxed()
              .sorted((a, b) -> order.compare(bins.get(a), bins.get(b)))
              .mapToInt(Integer::intValue)
              .toArray();
      if (out.stream().noneMatch(o -> java.util.Arrays.equals(o, sorted))) {
        out.add(sorted);
      }
    }
    return out;
  }

  static double area(Bin bin) {
    return bin.item() instanceof Roll roll
        ? roll.width() * roll.length()
        : bin.item().outline().area();
  }

  /** Cost per square metre when used in full. */
  static double costOfArea(Bin bin) {
    return bin.item().costOf(bin.bounds().width()) / area(bin);
  }
}
