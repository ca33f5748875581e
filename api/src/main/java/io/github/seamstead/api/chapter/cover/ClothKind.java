package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.shared.check.ArgumentFault;
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
   * @param largest what no panel is larger than in any direction: what exceeds it counts for as
   *     much, so that the same kind comes of every sheet that is large enough, in metres
   */
  static List<ClothKind> of(Cover cover, Stock stock, double largest) {
    boolean onBand = cover.hem().kind() == HemKind.REINFORCED;
    double margin = stock.edgeMargin();
    List<ClothKind> all = new ArrayList<>();
    stock
        .sheets()
        .forEach(s -> add(all, s.length(), s.width(), s.count(), s.reinforced(), onBand, margin));
    stock
        .rolls()
        .forEach(r -> add(all, r.length(), r.width(), r.count(), r.reinforced(), onBand, margin));
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
      double margin) {
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
}
