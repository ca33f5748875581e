package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Turns;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What single pieces need of a strip, for lower bounds. O(corners² · turns) for each piece. */
final class SizeBounds {

  private SizeBounds() {}

  /** The least length along the strip over the turns that fit its width; infinite if none fits. */
  static double leastLength(Piece piece, double width, boolean over) {
    if (PieceTurns.isFree(piece)) {
      // Any strip that holds the piece is at least as long as its area needs.
      return piece.outline().area() / width;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Outline o : turned(piece, over)) {
      Bounds b = o.bounds();
      if (b.height() <= width * (1 + 1e-12)) {
        least = Math.min(least, b.width());
      }
    }
    return least;
  }

  /** Length of the strip's middle line that a piece covers at least, wherever it lies. */
  static double leastMiddleChord(Piece piece, double width, boolean over) {
    if (PieceTurns.isFree(piece)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Outline o : turned(piece, over)) {
      Bounds b = o.bounds();
      double h = b.height();
      if (h > width * (1 + 1e-12)) {
        continue;
      }
      if (h <= width / 2) {
        return 0;
      }
      double from = b.minY() + h - width / 2;
      double to = b.minY() + width / 2;
      double step = 1e-9 * h;
      least = Math.min(least, Math.min(chord(o, from + step), chord(o, to - step)));
      for (Vector2D v : o.vertices()) {
        if (v.getY() > from + step && v.getY() < to - step) {
          least = Math.min(least, chord(o, v.getY() - step));
          least = Math.min(least, chord(o, v.getY() + step));
        }
      }
    }
    // A chord changes by no more than this over the step beside a corner.
    return least == Double.POSITIVE_INFINITY ? 0 : Math.max(0, least * (1 - 1e-6));
  }

  static List<Outline> turned(Piece piece, boolean over) {
    List<Outline> out = new ArrayList<>();
    for (double angle : PieceTurns.of(piece, false)) {
      out.add(Turns.placed(piece.outline(), angle, Vector2D.ZERO));
    }
    if (over) {
      for (double angle : PieceTurns.of(piece, true)) {
        out.add(Turns.placed(piece.outline().mirrored(), angle, Vector2D.ZERO));
      }
    }
    return out;
  }

  /** Total length of the outline's inside on the line at height y, which meets no corner. */
  private static double chord(Outline o, double y) {
    double sum = 0;
    for (int i = 0; i < o.size(); i++) {
      Vector2D a = o.vertex(i);
      Vector2D b = o.vertex(i + 1);
      if ((a.getY() > y) != (b.getY() > y)) {
        double t = (y - a.getY()) / (b.getY() - a.getY());
        double x = a.getX() + t * (b.getX() - a.getX());
        // Counter-clockwise, the inside lies left of edges that go up.
        sum += b.getY() > a.getY() ? x : -x;
      }
    }
    return sum;
  }
}
