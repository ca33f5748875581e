package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How deep two outlines lie in one another, by plain sampling of their edges: at their ends, where
 * they cross the other's edges, beside its corners and midway between. It shares nothing with the
 * search, whose results it checks. O(n m²) for n and m corners, and less where the boxes are apart.
 */
final class Intrusion {

  private Intrusion() {}

  /**
   * A length that is 0 for outlines that only touch and is not above the greatest depth to which
   * one lies in the other; it is above 0 where they share an area.
   */
  static double depth(Outline a, Outline b) {
    if (!boxesMeet(a.bounds(), b.bounds())) {
      return 0;
    }
    double deepest = Math.max(deepest(a, b, true), deepest(b, a, true));
    // Of outlines that coincide no edge lies inside the other.
    Vector2D core = core(a);
    boolean shared = b.contains(core) && a.contains(core);
    return shared
        ? Math.max(deepest, Math.min(a.distanceToEdge(core), b.distanceToEdge(core)))
        : deepest;
  }

  /** A length that is 0 for an outline that lies in a sheet, its edges included. */
  static double outside(Outline piece, Outline sheet) {
    return Math.max(deepest(piece, sheet, false), deepest(sheet, piece, true));
  }

  private static boolean boxesMeet(Bounds a, Bounds b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** The greatest distance from b's edges of a sampled point of a's edges on one side of them. */
  private static double deepest(Outline a, Outline b, boolean inside) {
    Bounds box = b.bounds();
    double deepest = 0;
    for (int i = 0; i < a.size(); i++) {
      Vector2D from = a.vertex(i);
      Vector2D way = a.vertex(i + 1).subtract(from);
      List<Double> at = breaks(from, way, b);
      for (int k = 0; k + 1 < 2 * at.size(); k++) {
        double t = k % 2 == 0 ? at.get(k / 2) : (at.get(k / 2) + at.get(k / 2 + 1)) / 2;
        Vector2D p = from.add(way.multiply(t));
        boolean inBox =
            p.getX() > box.minX()
                && p.getX() < box.maxX()
                && p.getY() > box.minY()
                && p.getY() < box.maxY();
        if (inside ? inBox && b.contains(p) : !inBox || !b.contains(p)) {
          deepest = Math.max(deepest, b.distanceToEdge(p));
        }
      }
    }
    return deepest;
  }

  /** Where a segment crosses the lines of an outline's edges or passes its corners, in order. */
  private static List<Double> breaks(Vector2D from, Vector2D way, Outline b) {
    List<Double> at = new ArrayList<>(List.of(0.0, 1.0));
    for (int j = 0; j < b.size(); j++) {
      Vector2D corner = b.vertex(j).subtract(from);
      Vector2D edge = b.vertex(j + 1).subtract(b.vertex(j));
      keep(at, corner.signedArea(edge) / way.signedArea(edge));
      keep(at, corner.dot(way) / way.normSq());
    }
    Collections.sort(at);
    return at;
  }

  private static void keep(List<Double> at, double t) {
    if (t > 0 && t < 1) {
      at.add(t);
    }
  }

  /**
   * A point inside an outline: the middle of the widest chord midway between two corners' heights.
   */
  private static Vector2D core(Outline o) {
    double[] heights = o.vertices().stream().mapToDouble(Vector2D::getY).sorted().toArray();
    int widest = 0;
    for (int i = 1; i + 1 < heights.length; i++) {
      if (heights[i + 1] - heights[i] > heights[widest + 1] - heights[widest]) {
        widest = i;
      }
    }
    double y = (heights[widest] + heights[widest + 1]) / 2;
    List<Double> crossed = new ArrayList<>();
    for (int i = 0; i < o.size(); i++) {
      Vector2D a = o.vertex(i);
      Vector2D b = o.vertex(i + 1);
      if ((a.getY() > y) != (b.getY() > y)) {
        crossed.add(a.getX() + (y - a.getY()) / (b.getY() - a.getY()) * (b.getX() - a.getX()));
      }
    }
    Collections.sort(crossed);
    int best = 0;
    for (int i = 2; i + 1 < crossed.size(); i += 2) {
      if (crossed.get(i + 1) - crossed.get(i) > crossed.get(best + 1) - crossed.get(best)) {
        best = i;
      }
    }
    return Vector2D.of((crossed.get(best) + crossed.get(best + 1)) / 2, y);
  }
}
