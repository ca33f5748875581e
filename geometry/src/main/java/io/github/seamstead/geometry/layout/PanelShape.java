package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Outline;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A triangle or a trapezoid standing on its base: base b from (0, 0) to (b, 0), top t at height h
 * from (l, h) to (l + t, h); t is 0 for a triangle and l may have either sign.
 *
 * @param b base, in metres
 * @param t top, in metres, 0 to b
 * @param h height, in metres
 * @param l where the top begins, in metres
 * @param turn the turn that stands the drawn outline on its base, in radians
 * @param origin the base's left corner as drawn, in metres
 */
record PanelShape(double b, double t, double h, double l, double turn, Vector2D origin) {

  /**
   * Stands the outline on the given edge, or gives empty if it is no triangle or trapezoid then.
   */
  static Optional<PanelShape> on(Outline o, int baseEdge) {
    if (o.size() > 4) {
      return Optional.empty();
    }
    Vector2D a = o.vertex(baseEdge);
    Vector2D along = o.vertex(baseEdge + 1).subtract(a);
    double b = along.norm();
    Vector2D unit = along.multiply(1 / b);
    Vector2D c = local(o.vertex(baseEdge + 2), a, unit);
    double turn = -StrictMath.atan2(unit.getY(), unit.getX());
    if (o.size() == 3) {
      return Optional.of(new PanelShape(b, 0, c.getY(), c.getX(), turn, a));
    }
    Vector2D d = local(o.vertex(baseEdge + 3), a, unit);
    double t = c.getX() - d.getX();
    boolean parallel = Math.abs(c.getY() - d.getY()) <= 1e-12 * (b + c.getY());
    if (!parallel || t < 0 || t > b * (1 + 1e-12)) {
      return Optional.empty();
    }
    double h = Math.max(c.getY(), d.getY());
    return Optional.of(new PanelShape(b, Math.min(t, b), h, d.getX(), turn, a));
  }

  /** Every way to stand the outline on a base with a parallel top. */
  static java.util.List<PanelShape> all(Outline o) {
    java.util.List<PanelShape> out = new java.util.ArrayList<>();
    for (int e = 0; e < o.size(); e++) {
      on(o, e).ifPresent(out::add);
    }
    return out;
  }

  private static Vector2D local(Vector2D p, Vector2D origin, Vector2D unit) {
    Vector2D v = p.subtract(origin);
    return Vector2D.of(v.dot(unit), unit.signedArea(v));
  }

  /** How far the gap across a left or right leg reaches along the base for a spacing. */
  double legGap(boolean right, double spacing) {
    double run = right ? b - l - t : l;
    return spacing * StrictMath.hypot(run, h) / h;
  }

  /** How far apart bases stand when all panels stand the same way up. */
  double baseGap(double spacing) {
    double gap = spacing;
    // A leg that leans out over the neighbour comes nearer to its base corner than the bases do.
    if (l < 0) {
      gap = Math.max(gap, legGap(false, spacing));
    }
    if (l + t > b) {
      gap = Math.max(gap, legGap(true, spacing));
    }
    return gap;
  }
}
