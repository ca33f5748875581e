package io.github.seamstead.geometry.internal;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A rectangle that an odd sheet holds, so that panels can be put together of parts that fit on it.
 *
 * @param along along the sheet's x axis, or along the edge it stands on, in metres
 * @param up at right angles to that, in metres
 */
public record HeldRectangle(double along, double up) {

  /** Cells along each side of the box: the rectangle is found to within two of them. */
  private static final int CELLS = 64;

  /** How far within its cell a cell is tried, in parts of it, so that edges may touch. */
  private static final double WITHIN = 1e-6;

  /**
   * Finds a large rectangle along the axes within an outline: the largest of whole cells of a grid
   * of 64 by 64 over its box, which is at most the largest there is.
   *
   * @param outline the sheet, in metres
   * @return the rectangle, its sides along x and y; sides of 0 m if no cell lies within. O(n) for n
   *     corners
   */
  public static HeldRectangle within(Outline outline) {
    return new Grid(outline).largest(false);
  }

  /**
   * Finds a large rectangle that stands on an edge of an outline, as a panel whose hem is the band
   * there.
   *
   * @param outline the sheet, in metres
   * @param edge the edge, counted from 0
   * @return the rectangle: along the edge, and up from it; sides of 0 m if there is none. O(n) for
   *     n corners
   */
  public static HeldRectangle on(Outline outline, int edge) {
    Outline turned = standing(outline, edge);
    return new Grid(turned, 0, outline.edgeLength(edge), 0).largest(true);
  }

  /**
   * Gives the rectangle on an edge that reaches as far as the sheet does: it holds a panel of the
   * sheet's own shape.
   *
   * @param outline the sheet, in metres
   * @param edge the edge, counted from 0
   * @return the length of the edge, and how far the sheet reaches from it. O(n) for n corners
   */
  public static HeldRectangle upFrom(Outline outline, int edge) {
    return new HeldRectangle(outline.edgeLength(edge), standing(outline, edge).bounds().maxY());
  }

  /** The outline turned so that the edge begins at the origin and runs along x. */
  private static Outline standing(Outline outline, int edge) {
    Vector2D way = outline.vertex(edge + 1).subtract(outline.vertex(edge));
    Outline turned = outline.placed(-StrictMath.atan2(way.getY(), way.getX()), Vector2D.ZERO);
    return turned.placed(0, turned.vertex(edge).negate());
  }

  /** Gives the larger of two by area. */
  private HeldRectangle orLarger(HeldRectangle other) {
    return other.along * other.up > along * up ? other : this;
  }

  /** Which cells of a grid over part of a sheet's box lie within the sheet. */
  private static final class Grid {

    private final Outline outline;
    private final double left;
    private final double low;
    private final double width;
    private final double height;

    Grid(Outline outline) {
      this(outline, outline.bounds().minX(), outline.bounds().maxX(), outline.bounds().minY());
    }

    Grid(Outline outline, double left, double right, double low) {
      Bounds box = outline.bounds();
      this.outline = outline;
      this.left = left;
      this.low = low;
      this.width = (right - left) / CELLS;
      this.height = (box.maxY() - low) / CELLS;
    }

    private boolean isFree(int column, int row) {
      double w = width * (1 - 2 * WITHIN);
      double h = height * (1 - 2 * WITHIN);
      return outline.contains(
          Outline.rectangle(w, h)
              .placed(
                  0, Vector2D.of(left + width * (column + WITHIN), low + height * (row + WITHIN))));
    }

    /** The largest rectangle of free cells; each row stands on those below it that are free. */
    HeldRectangle largest(boolean onLowest) {
      HeldRectangle best = new HeldRectangle(0, 0);
      int[] free = new int[CELLS];
      for (int row = CELLS - 1; row >= 0; row--) {
        for (int column = 0; column < CELLS; column++) {
          free[column] = isFree(column, row) ? free[column] + 1 : 0;
        }
        if (row == 0 || !onLowest) {
          best = best.orLarger(widest(free));
        }
      }
      return best;
    }

    /** The largest rectangle under a row of heights. */
    private HeldRectangle widest(int[] free) {
      HeldRectangle best = new HeldRectangle(0, 0);
      for (int from = 0; from < CELLS; from++) {
        int high = free[from];
        for (int to = from; to < CELLS && high > 0; to++) {
          high = Math.min(high, free[to]);
          best = best.orLarger(new HeldRectangle((to - from + 1) * width, high * height));
        }
      }
      return best;
    }
  }
}
