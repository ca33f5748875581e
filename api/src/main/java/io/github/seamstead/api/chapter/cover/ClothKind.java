package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A kind of stock as panels stand on it: upright along the longer side; with a hem on a band,
 * upright on the band.
 *
 * @param width along the panel's base, between margins, in metres
 * @param height up the panel, between margins, in metres
 * @param count how many alike
 */
record ClothKind(double width, double height, int count) {

  private static final int TAPE_PER_METRE = 1000;

  private double allArea() {
    return width * height * count;
  }

  /** Two kinds that differ by less than a tape shows hold the same parts. */
  private boolean isLike(ClothKind other) {
    return Math.abs(width - other.width) * TAPE_PER_METRE < 1
        && Math.abs(height - other.height) * TAPE_PER_METRE < 1;
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
   */
  static List<ClothKind> of(Cover cover, Stock stock) {
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
    List<ClothKind> kinds = new ArrayList<>();
    all.stream()
        .filter(kind -> Math.min(kind.width, kind.height) > 2 * cover.spliceLap())
        .sorted(Comparator.comparingDouble(ClothKind::allArea).reversed())
        .filter(kind -> kinds.stream().noneMatch(kind::isLike))
        .forEach(kinds::add);
    return kinds;
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
