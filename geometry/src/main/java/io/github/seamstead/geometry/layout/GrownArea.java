package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;

/**
 * Areas for lower bounds with half of the spacing around each piece. Pieces that keep a spacing
 * stay apart when each grows by half of it on all sides, and lie within what the margins leave of
 * the stock, grown likewise.
 *
 * <p>A convex piece of area a and girth u grows by r to {@code a + u r + pi r^2} (Steiner), any
 * other to no less than {@code a + 2 sqrt(pi a) r + pi r^2} (Brunn and Minkowski).
 */
final class GrownArea {

  /** Twice what still counts as the spacing or the margin kept, in parts of the stock's size. */
  private static final double SHY = 2e-8;

  private GrownArea() {}

  /**
   * Area of all pieces, at least.
   *
   * @param spacing between pieces, in metres
   * @param size greatest extent of the stock, in metres
   * @return in square metres
   */
  static double of(List<Piece> pieces, double spacing, double size) {
    double r = Math.max(0, spacing / 2 - SHY * size);
    return pieces.stream().mapToDouble(p -> p.count() * grown(p.outline(), r)).sum();
  }

  private static double grown(Outline outline, double r) {
    double girth =
        outline.isConvex() ? outline.perimeter() : 2 * Math.sqrt(Math.PI * outline.area());
    return outline.area() + r * girth + Math.PI * r * r;
  }

  /**
   * How many of the bins have room for so much area, the roomiest first.
   *
   * @param spacing between pieces, in metres
   * @param margin to the edges, in metres
   */
  static int items(List<Piece> pieces, List<Bin> bins, double spacing, double margin) {
    double size = 0;
    for (Bin bin : bins) {
      size = Math.max(size, Math.max(bin.bounds().width(), bin.bounds().height()));
    }
    double[] room = bins.stream().mapToDouble(bin -> room(bin, spacing, margin)).toArray();
    return StockBounds.fewest(room, of(pieces, spacing, size) * (1 - 1e-9));
  }

  /** What grown pieces have of an item. */
  private static double room(Bin bin, double spacing, double margin) {
    Bounds box = bin.bounds();
    double size = Math.max(box.width(), box.height());
    double off = Math.max(0, StockBounds.margin(bin.item(), margin) - SHY * size);
    double by = spacing - 2 * off;
    double across = Math.max(0, box.width() + by) * Math.max(0, box.height() + by);
    double over = Math.max(0, by / 2);
    Outline outline = bin.item().outline();
    double own = outline.area() + over * outline.perimeter() + Math.PI * over * over;
    return Math.min(across, own);
  }
}
