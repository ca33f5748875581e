package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * What pieces need side by side, for lower bounds. On any line across the stock the chords of the
 * pieces that it meets add up to no more than the stock is high there; so do their values under a
 * dual feasible function, which counts chords that leave no room for another as the whole height
 * and those that always find room as nothing. The integral along the stock bounds its length.
 * (Fekete and Schepers 2004, Mathematical Methods of Operations Research 60, for boxes: from
 * memory; here chord by chord, so that it holds for any outline.)
 */
final class SectionBounds {

  /** Chords are taken this part shorter, so that rounding never counts too much. */
  private static final double SHY = 1e-9;

  private static final int[] FOLDS = {1, 2, 3, 4};
  private static final double[] CUTS = {0.1, 0.2, 0.3, 0.4, 0.499};

  /** A dual feasible function with the chords, as parts of the height, at which it bends. */
  private record Dual(DoubleUnaryOperator value, List<Double> bends) {}

  private SectionBounds() {}

  private static List<Dual> duals() {
    List<Dual> out = new ArrayList<>();
    out.add(new Dual(x -> x, List.of()));
    for (int fold : FOLDS) {
      List<Double> bends = new ArrayList<>();
      for (int k = 0; k <= fold; k++) {
        bends.add((k + 1.0) / (fold + 1));
      }
      // At a bend itself the value is less; chords are shortened past it.
      out.add(new Dual(x -> Math.min(1, Math.floor((fold + 1) * x) / fold), bends));
    }
    for (double cut : CUTS) {
      out.add(new Dual(x -> x > 1 - cut ? 1 : x >= cut ? x : 0, List.of(cut, 1 - cut)));
    }
    return out;
  }

  /**
   * Length of a strip that pieces need, margins aside.
   *
   * @param height of the strip between its margins, in metres
   * @param spacing between pieces, in metres
   * @return in metres, 0 or more
   */
  static double length(List<Piece> pieces, double height, double spacing) {
    double most = 0;
    for (Dual dual : duals()) {
      double sum = 0;
      for (Piece piece : pieces) {
        sum += piece.count() * least(piece, piece.mayMirror(), false, dual, height, spacing);
      }
      most = Math.max(most, sum);
    }
    return most * (1 - SHY);
  }

  /**
   * How many of the bins pieces need at least.
   *
   * @param spacing between pieces, in metres
   * @param margin to the edges, in metres
   */
  static int items(List<Piece> pieces, List<Bin> bins, double spacing, double margin) {
    boolean over = bins.stream().anyMatch(b -> b.item().bothSidesGood());
    int most = 0;
    for (boolean along : new boolean[] {false, true}) {
      double height = 0;
      for (Bin bin : bins) {
        height = Math.max(height, across(bin, along, margin));
      }
      if (height <= 0) {
        continue;
      }
      for (Dual dual : duals()) {
        double need = 0;
        for (Piece piece : pieces) {
          boolean mirrored = over || piece.mayMirror();
          need += piece.count() * least(piece, mirrored, along, dual, height, spacing);
        }
        most = Math.max(most, count(bins, along, dual, height, spacing, margin, need));
      }
    }
    return most;
  }

  private static int count(
      List<Bin> bins,
      boolean along,
      Dual dual,
      double height,
      double spacing,
      double margin,
      double need) {
    double[] room = new double[bins.size()];
    for (int b = 0; b < room.length; b++) {
      double part = (across(bins.get(b), along, margin) + spacing) / (height + spacing);
      double value = dual.value.applyAsDouble(Math.min(1, part * (1 + SHY)));
      room[b] = Math.max(0, value * across(bins.get(b), !along, margin));
    }
    return StockBounds.fewest(room, need * (1 - SHY));
  }

  /** The bin between its margins across the sections. */
  private static double across(Bin bin, boolean along, double margin) {
    double off = StockBounds.margin(bin.item(), margin);
    return (along ? bin.bounds().width() : bin.bounds().height()) - 2 * off;
  }

  /** The least integral of a piece over the turns in which it is no higher than the stock. */
  private static double least(
      Piece piece, boolean over, boolean along, Dual dual, double height, double spacing) {
    if (PieceTurns.isFree(piece)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Outline outline : SizeBounds.turned(piece, over)) {
      Outline o = along ? outline.placed(Math.PI / 2, Vector2D.ZERO) : outline;
      Bounds b = o.bounds();
      if (b.height() <= height * (1 + 1e-9)) {
        least = Math.min(least, integral(o, dual, height, spacing));
      }
    }
    return Double.isFinite(least) ? least : 0;
  }

  private static double integral(Outline o, Dual dual, double height, double spacing) {
    double[] xs = o.vertices().stream().mapToDouble(Vector2D::getX).sorted().toArray();
    double sum = 0;
    for (int k = 0; k + 1 < xs.length; k++) {
      double w = xs[k + 1] - xs[k];
      if (w > 1e-12 * height) {
        // Chords are linear between corners; their ends are read from inside.
        double third = chord(o, xs[k] + w / 3);
        double slope = chord(o, xs[k] + 2 * w / 3) - third;
        double whole = height + spacing;
        double a = (third - slope + spacing) / whole * (1 - SHY);
        double b = (third + 2 * slope + spacing) / whole * (1 - SHY);
        sum += w * mean(dual, Math.min(a, b), Math.max(a, b));
      }
    }
    return sum;
  }

  /** The mean of a function, linear between its bends, over a range. */
  private static double mean(Dual dual, double low, double high) {
    if (high - low < 1e-9) {
      return dual.value.applyAsDouble(low);
    }
    double sum = 0;
    double from = low;
    for (double bend : dual.bends) {
      if (bend > from && bend < high) {
        sum += (bend - from) * dual.value.applyAsDouble((from + bend) / 2);
        from = bend;
      }
    }
    sum += (high - from) * dual.value.applyAsDouble((from + high) / 2);
    return sum / (high - low);
  }

  /** Length of the outline's inside on an upright line that meets no corner. */
  private static double chord(Outline o, double x) {
    double sum = 0;
    for (int i = 0; i < o.size(); i++) {
      Vector2D a = o.vertex(i);
      Vector2D b = o.vertex(i + 1);
      if ((a.getX() > x) != (b.getX() > x)) {
        double t = (x - a.getX()) / (b.getX() - a.getX());
        double y = a.getY() + t * (b.getY() - a.getY());
        sum += b.getX() > a.getX() ? -y : y;
      }
    }
    return sum;
  }
}
