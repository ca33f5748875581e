package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.NoFit;
import io.github.seamstead.geometry.layout.internal.Orientations;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where a piece's reference point moves while its hem lies on a reinforced edge. */
final class HemLine {

  private double from;
  private double to;

  private HemLine(double length) {
    to = length;
  }

  /**
   * The line, in the search's unit.
   *
   * @param stockEdge the reinforced edge of the bin's stock
   * @param hem the outline's edge to lie on it
   * @param o the orientation that turns the one along the other
   * @return its ends' x, y, x, y; empty if the piece has no room there
   */
  static double[] of(
      Bin bin,
      int stockEdge,
      Outline outline,
      int hem,
      Orientations turns,
      int o,
      double margin,
      double unit) {
    Vector2D s0 = bin.item().outline().vertex(stockEdge);
    Vector2D way = bin.item().outline().vertex(stockEdge + 1).subtract(s0);
    Vector2D along = outline.vertex(hem + 1).subtract(outline.vertex(hem));
    Vector2D toCentre = outline.centroid().subtract(outline.vertex(hem));
    double rx =
        (s0.getX() + bin.offset() + turns.cos[o] * toCentre.getX() - turns.sin[o] * toCentre.getY())
            / unit;
    double ry =
        (s0.getY() + turns.sin[o] * toCentre.getX() + turns.cos[o] * toCentre.getY()) / unit;
    Vector2D unitWay = way.multiply(1 / way.norm());
    double spare = Math.max(0, way.norm() - along.norm()) / unit;
    HemLine line = new HemLine(spare);
    Bounds box = bin.bounds();
    double left = (box.minX() + bin.offset()) / unit;
    double right = (box.maxX() + bin.offset()) / unit;
    double low = box.minY() / unit;
    double high = box.maxY() / unit;
    // On a rectangle the other three edges keep their margin here; on stock of another shape, whose
    // edges do not lie along its box, obstacles keep it.
    double keep = bin.isRectangle() ? margin / unit : 0;
    double onX = (s0.getX() + bin.offset()) / unit;
    double onY = s0.getY() / unit;
    line.clip(rx, unitWay.getX(), turns.minX[o], turns.maxX[o], new Side(left, right, onX, keep));
    line.clip(ry, unitWay.getY(), turns.minY[o], turns.maxY[o], new Side(low, high, onY, keep));
    if (line.from > line.to + NoFit.TOUCH) {
      return new double[0];
    }
    line.to = Math.max(line.from, line.to);
    return new double[] {
      rx + line.from * unitWay.getX(),
      ry + line.from * unitWay.getY(),
      rx + line.to * unitWay.getX(),
      ry + line.to * unitWay.getY()
    };
  }

  /** The stock's extent along an axis, where the band begins on it and the margin to keep. */
  private record Side(double low, double high, double band, double keep) {

    /** Between which places the piece must stay where the band runs across the axis. */
    boolean holds(double least, double most) {
      boolean atLow = band - low <= high - band;
      return least >= low + (atLow ? 0 : keep) - NoFit.TOUCH
          && most <= high - (atLow ? keep : 0) + NoFit.TOUCH;
    }
  }

  private void clip(double at, double way, double min, double max, Side side) {
    if (Math.abs(way) < 1e-12) {
      if (!side.holds(at + min, at + max)) {
        to = Double.NEGATIVE_INFINITY;
      }
      return;
    }
    double toLow = (side.low() + side.keep() - min - at) / way;
    double toHigh = (side.high() - side.keep() - max - at) / way;
    // A piece longer than the extent reaches the high side before the low one: no room is left.
    from = Math.max(from, way > 0 ? toLow : toHigh);
    to = Math.min(to, way > 0 ? toHigh : toLow);
  }
}
