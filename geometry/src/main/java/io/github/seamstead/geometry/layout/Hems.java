package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Tells whether a piece's hem lies on a reinforced edge. */
final class Hems {

  private static final double ON_EDGE = 1e-8;

  private Hems() {}

  /** The placement, marked if the piece has a hem and it lies on a reinforced edge. */
  static Placement marked(Placement p, Piece piece, StockItem item) {
    if (piece.hem().isEmpty()) {
      return p;
    }
    Outline o = p.place(piece.outline());
    int edge = piece.hem().get().edge();
    int e = p.mirrored() ? Math.floorMod(o.size() - 2 - edge, o.size()) : edge;
    boolean on = false;
    for (int stockEdge : item.reinforcedEdges()) {
      Vector2D a = item.outline().vertex(stockEdge);
      Vector2D b = item.outline().vertex(stockEdge + 1);
      on |= lies(o.vertex(e), a, b) && lies(o.vertex(e + 1), a, b);
    }
    return new Placement(p.pieceId(), p.copy(), p.mirrored(), p.rotation(), p.shift(), on);
  }

  private static boolean lies(Vector2D p, Vector2D a, Vector2D b) {
    double length = a.distance(b);
    Vector2D unit = b.subtract(a).multiply(1 / length);
    Vector2D v = p.subtract(a);
    double along = v.dot(unit);
    return Math.abs(unit.signedArea(v)) <= ON_EDGE * length
        && along >= -ON_EDGE * length
        && along <= length * (1 + ON_EDGE);
  }
}
