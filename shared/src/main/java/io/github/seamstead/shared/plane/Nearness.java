package io.github.seamstead.shared.plane;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where points and segments lie relative to a polygon. */
final class Nearness {

  private Nearness() {}

  /** Even-odd rule with a half-open test, so that a ray through a corner counts once. */
  static boolean inside(List<Vector2D> polygon, Vector2D p) {
    boolean in = false;
    int n = polygon.size();
    for (int i = 0; i < n; i++) {
      Vector2D a = polygon.get(i);
      Vector2D b = polygon.get((i + 1) % n);
      if ((a.getY() > p.getY()) != (b.getY() > p.getY())) {
        double side = b.subtract(a).signedArea(p.subtract(a));
        if ((side > 0) == (b.getY() > a.getY())) {
          in = !in;
        }
      }
    }
    return in;
  }

  static double pointToBoundary(List<Vector2D> polygon, Vector2D p) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < polygon.size(); i++) {
      least =
          Math.min(least, pointToSegment(p, polygon.get(i), polygon.get((i + 1) % polygon.size())));
    }
    return least;
  }

  static double segmentToBoundary(List<Vector2D> polygon, Vector2D from, Vector2D to) {
    double least = Math.min(pointToBoundary(polygon, from), pointToBoundary(polygon, to));
    for (int i = 0; i < polygon.size(); i++) {
      Vector2D a = polygon.get(i);
      if (Crossings.meet(a, polygon.get((i + 1) % polygon.size()), from, to)) {
        return 0;
      }
      least = Math.min(least, pointToSegment(a, from, to));
    }
    return least;
  }

  private static double pointToSegment(Vector2D p, Vector2D a, Vector2D b) {
    Vector2D along = b.subtract(a);
    double t = p.subtract(a).dot(along) / along.normSq();
    return p.distance(a.add(along.multiply(Math.max(0, Math.min(1, t)))));
  }

  static boolean boundariesMeet(List<Vector2D> first, List<Vector2D> second) {
    for (int i = 0; i < first.size(); i++) {
      for (int j = 0; j < second.size(); j++) {
        if (Crossings.meet(
            first.get(i),
            first.get((i + 1) % first.size()),
            second.get(j),
            second.get((j + 1) % second.size()))) {
          return true;
        }
      }
    }
    return false;
  }
}
