package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Moves every edge of an outline inwards by the same width; corner for corner. */
final class Inset {

  private Inset() {}

  static Outline of(String where, Outline outline, double width) {
    int n = outline.size();
    List<Vector2D> corners = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      Vector2D v = outline.vertex(i);
      Vector2D e1 = v.subtract(outline.vertex(i - 1)).normalize();
      Vector2D e2 = outline.vertex(i + 1).subtract(v).normalize();
      // Along the bisector: both inward normals have a component of the width.
      Vector2D normals = Vector2D.of(-e1.getY() - e2.getY(), e1.getX() + e2.getX());
      corners.add(v.add(normals.multiply(width / (1 + e1.dot(e2)))));
    }
    for (int i = 0; i < n; i++) {
      Vector2D before = outline.vertex(i + 1).subtract(outline.vertex(i));
      Vector2D after = corners.get((i + 1) % n).subtract(corners.get(i));
      Args.require(
          before.dot(after) > 0,
          where
              + ": given "
              + Numbers.plain(width)
              + " m, is wider than the opening allows at edge "
              + (i + 1));
    }
    return new Outline(corners);
  }
}
