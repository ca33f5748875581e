package io.github.seamstead.geometry.plane;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Finds edges of a closed polygon that cross or touch where they must not. */
final class Crossings {

  private Crossings() {}

  /** Throws if the closed polygon is not simple; O(n²) with a bounding-box test first. */
  static void requireSimple(List<Vector2D> vertices) {
    int n = vertices.size();
    for (int i = 0; i < n; i++) {
      Vector2D a = vertices.get(i);
      Vector2D b = vertices.get((i + 1) % n);
      Args.require(!a.equals(b), "outline: corners " + (i + 1) + " and next coincide at " + a);
      Vector2D c = vertices.get((i + 2) % n);
      Args.require(
          !foldsBack(a, b, c), "outline: edge " + (i + 2) + " runs back along edge " + (i + 1));
      for (int j = i + 2; j < n; j++) {
        if (i == 0 && j == n - 1) {
          continue;
        }
        Args.require(
            !meet(a, b, vertices.get(j), vertices.get((j + 1) % n)),
            "outline: edges " + (i + 1) + " and " + (j + 1) + " cross or touch");
      }
    }
  }

  private static boolean foldsBack(Vector2D a, Vector2D b, Vector2D c) {
    return turn(a, b, c) == 0 && b.subtract(a).dot(c.subtract(b)) < 0;
  }

  /** Tells whether two segments cross or touch. */
  static boolean meet(Vector2D a, Vector2D b, Vector2D c, Vector2D d) {
    if (Math.max(a.getX(), b.getX()) < Math.min(c.getX(), d.getX())
        || Math.max(c.getX(), d.getX()) < Math.min(a.getX(), b.getX())
        || Math.max(a.getY(), b.getY()) < Math.min(c.getY(), d.getY())
        || Math.max(c.getY(), d.getY()) < Math.min(a.getY(), b.getY())) {
      return false;
    }
    double abc = turn(a, b, c);
    double abd = turn(a, b, d);
    double cda = turn(c, d, a);
    double cdb = turn(c, d, b);
    return Math.signum(abc) * Math.signum(abd) <= 0 && Math.signum(cda) * Math.signum(cdb) <= 0;
  }

  private static double turn(Vector2D a, Vector2D b, Vector2D c) {
    return b.subtract(a).signedArea(c.subtract(a));
  }
}
