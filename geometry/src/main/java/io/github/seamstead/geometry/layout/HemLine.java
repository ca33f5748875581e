package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Bounds;
import io.github.seamstead.geometry.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where a piece's reference point moves while its hem lies on a reinforced edge. */
final class HemLine {

  private final double margin;
  private double from;
  private double to;

  private HemLine(double margin, double length) {
    this.margin = margin;
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
    HemLine line = new HemLine(margin / unit, spare);
    Bounds box = bin.bounds();
    double left = (box.minX() + bin.offset()) / unit;
    double right = (box.maxX() + bin.offset()) / unit;
    // The other edges keep their margin; across the hem's own edge there is none.
    line.clip(rx, unitWay.getX(), turns.minX[o], turns.maxX[o], left, right);
    double low = box.minY() / unit;
    double high = box.maxY() / unit;
    line.clip(ry, unitWay.getY(), turns.minY[o], turns.maxY[o], low, high);
    if (line.from > line.to) {
      return new double[0];
    }
    return new double[] {
      rx + line.from * unitWay.getX(),
      ry + line.from * unitWay.getY(),
      rx + line.to * unitWay.getX(),
      ry + line.to * unitWay.getY()
    };
  }

  private void clip(double at, double way, double min, double max, double low, double high) {
    if (Math.abs(way) < 1e-12) {
      if (at + min < low - NoFit.TOUCH || at + max > high + NoFit.TOUCH) {
        to = Double.NEGATIVE_INFINITY;
      }
      return;
    }
    double a = (low + margin - min - at) / way;
    double b = (high - margin - max - at) / way;
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
}
