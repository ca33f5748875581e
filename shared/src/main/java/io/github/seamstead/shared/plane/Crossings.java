package io.github.seamstead.shared.plane;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Finds edges of a closed polygon that cross or touch where they must not. */
final class Crossings {

  private Crossings() {}

  /** Throws if the closed polygon is not simple; O(n²) with a bounding-box test first. */
  static void requireSimple(String name, List<Vector2D> vertices) {
    Optional<String> found = first(vertices);
    Args.require(found.isEmpty(), name + ": " + found.orElse(""));
  }

  /** Says what is first found that makes the closed polygon not simple; empty if nothing does. */
  static Optional<String> first(List<Vector2D> vertices) {
    int n = vertices.size();
    for (int i = 0; i < n; i++) {
      Vector2D a = vertices.get(i);
      Vector2D b = vertices.get((i + 1) % n);
      int next = (i + 1) % n + 1;
      if (a.equals(b)) {
        return Optional.of("corners " + (i + 1) + " and " + next + " coincide");
      }
      if (foldsBack(a, b, vertices.get((i + 2) % n))) {
        return Optional.of("edge " + next + " runs back along edge " + (i + 1));
      }
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && meet(a, b, vertices.get(j), vertices.get((j + 1) % n))) {
          return Optional.of("edges " + (i + 1) + " and " + (j + 1) + " cross or touch");
        }
      }
    }
    return Optional.empty();
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

  /** Twice the signed area of the triangle a, b, c: above 0 where c lies to the left. */
  static double turn(Vector2D a, Vector2D b, Vector2D c) {
    return b.subtract(a).signedArea(c.subtract(a));
  }
}
