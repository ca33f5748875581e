package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.api.job.StockRoll;
import io.github.seamstead.api.job.StockSheet;
import io.github.seamstead.geometry.internal.HeldRectangle;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A kind of stock as panels stand on it: upright along the longer side; with a hem on a band,
 * upright on the band.
 *
 * @param width along the panel's base, between margins, in metres
 * @param height up the panel, between margins, in metres
 * @param count how many alike
 */
record ClothKind(double width, double height, int count) {

  /** Kinds are told apart by the millimetre, as by a tape. */
  private static final double STEP = 1e-3;

  private double allArea() {
    return width * height * count;
  }

  /** The same kind where no part is to be higher than that. */
  ClothKind lower(double most) {
    return new ClothKind(width, Math.min(height, most), count);
  }

  /** Writes the kind as the rule by which the panel of a face is put together. */
  SpliceRule rule(Cover cover, int face, int faces) {
    SpliceRule rule = SpliceRule.of(width, height, cover.spliceLap());
    return cover.staggerSplices()
        ? rule.staggered(face, faces, Math.min(2 * cover.spliceLap(), height / 8))
        : rule;
  }

  /**
   * Gives the kinds of a stock that can hold part of a panel, that of which there is most first.
   *
   * @param onBand whether the panel's hem is to be the band of a sheet
   * @param largest what no panel is larger than in any direction: what exceeds it counts for as
   *     much, so that the same kind comes of every sheet that is large enough, in metres
   */
  static List<ClothKind> of(Cover cover, Stock stock, boolean onBand, double largest) {
    List<ClothKind> all = new ArrayList<>();
    for (StockSheet sheet : stock.sheets()) {
      int count = Math.max(sheet.count(), sheet.copies().size());
      if (sheet.outline().isEmpty()) {
        add(all, sheet.length(), sheet.width(), count, sheet.reinforced(), onBand, stock);
      } else {
        addOdd(all, sheet, count, onBand, stock);
      }
    }
    for (StockRoll roll : stock.rolls()) {
      add(all, roll.length(), roll.width(), roll.count(), roll.reinforced(), onBand, stock);
    }
    if (all.isEmpty()) {
      throw ArgumentFault.of(
          "hem", "reinforced, but no stock has a reinforced edge", "must be turned or raw", "", "");
    }
    Map<List<Double>, ClothKind> kinds = new LinkedHashMap<>();
    for (ClothKind kind : all) {
      ClothKind seen = kind.upTo(largest);
      if (Math.min(seen.width, seen.height) > 2 * cover.spliceLap()) {
        kinds.merge(List.of(seen.width, seen.height), seen, ClothKind::and);
      }
    }
    return kinds.values().stream()
        .sorted(
            Comparator.comparingDouble(ClothKind::allArea)
                .reversed()
                .thenComparing(ClothKind::width)
                .thenComparing(ClothKind::height))
        .toList();
  }

  private ClothKind upTo(double largest) {
    return new ClothKind(
        Math.floor(Math.min(width, largest) / STEP) * STEP,
        Math.floor(Math.min(height, largest) / STEP) * STEP,
        count);
  }

  private ClothKind and(ClothKind more) {
    return new ClothKind(width, height, count + more.count);
  }

  private static void add(
      List<ClothKind> kinds,
      double length,
      double width,
      int count,
      List<SheetEdge> bands,
      boolean onBand,
      Stock stock) {
    double margin = stock.edgeMargin();
    if (!onBand) {
      kinds.add(
          new ClothKind(
              Math.min(length, width) - 2 * margin, Math.max(length, width) - 2 * margin, count));
      return;
    }
    if (bands.contains(SheetEdge.BOTTOM) || bands.contains(SheetEdge.TOP)) {
      kinds.add(new ClothKind(length - 2 * margin, width - margin, count));
    }
    if (bands.contains(SheetEdge.LEFT) || bands.contains(SheetEdge.RIGHT)) {
      kinds.add(new ClothKind(width - 2 * margin, length - margin, count));
    }
  }

  /**
   * An odd sheet holds what lies in its box, if that is of its shape, and surely what lies in the
   * rectangle within it; the layout finds which.
   */
  private static void addOdd(
      List<ClothKind> kinds, StockSheet sheet, int count, boolean onBand, Stock stock) {
    Outline outline = StockCloth.outline(sheet);
    if (!onBand) {
      HeldRectangle within = HeldRectangle.within(outline);
      add(kinds, sheet.length(), sheet.width(), count, List.of(), false, stock);
      add(kinds, within.along(), within.up(), count, List.of(), false, stock);
      return;
    }
    for (int edge : StockCloth.bands(sheet)) {
      List<SheetEdge> band = List.of(SheetEdge.BOTTOM);
      HeldRectangle box = HeldRectangle.upFrom(outline, edge);
      HeldRectangle on = HeldRectangle.on(outline, edge);
      add(kinds, box.along(), box.up(), count, band, true, stock);
      add(kinds, on.along(), on.up(), count, band, true, stock);
    }
  }
}
