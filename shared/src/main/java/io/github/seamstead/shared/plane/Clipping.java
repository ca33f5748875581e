package io.github.seamstead.shared.plane;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What is left of a polygon after half planes were cut away: clipping, kernel, inset. */
final class Clipping {

  /** A kernel smaller than this is no room for a point: the square of a tenth of a millimetre. */
  private static final double LEAST_KERNEL = 1e-8;

  private static final String SMALLER = "must be smaller";

  private Clipping() {}

  /** Keeps the part of a polygon on the left of the line from a to b; may return fewer than 3. */
  static List<Vector2D> leftOf(List<Vector2D> corners, Vector2D a, Vector2D b) {
    List<Vector2D> kept = new ArrayList<>();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      Vector2D p = corners.get(i);
      Vector2D q = corners.get((i + 1) % n);
      double sp = Crossings.turn(a, b, p);
      double sq = Crossings.turn(a, b, q);
      if (sp >= 0) {
        kept.add(p);
      }
      if ((sp > 0 && sq < 0) || (sp < 0 && sq > 0)) {
        kept.add(p.lerp(q, sp / (sp - sq)));
      }
    }
    return kept;
  }

  /** Clips any polygon to a convex one; the area is exact, doubled-back edges enclose none. */
  static double areaWithin(List<Vector2D> subject, List<Vector2D> convex) {
    List<Vector2D> kept = subject;
    for (int i = 0; i < convex.size() && !kept.isEmpty(); i++) {
      kept = leftOf(kept, convex.get(i), convex.get((i + 1) % convex.size()));
    }
    return kept.size() < 3 ? 0 : Math.max(0, Outline.signedArea(kept));
  }

  static double extentBetween(List<Vector2D> corners, double from, double to) {
    List<Vector2D> right = leftOf(corners, Vector2D.of(from, 1), Vector2D.of(from, 0));
    List<Vector2D> band = leftOf(right, Vector2D.of(to, 0), Vector2D.of(to, 1));
    double low = band.stream().mapToDouble(Vector2D::getY).min().orElse(0);
    double high = band.stream().mapToDouble(Vector2D::getY).max().orElse(0);
    return high - low;
  }

  /** The middle of the outline clipped by the inner half plane of each of its edges. */
  static Optional<Vector2D> kernelCentre(List<Vector2D> corners) {
    List<Vector2D> kernel = corners;
    int n = corners.size();
    for (int i = 0; i < n && kernel.size() > 2; i++) {
      kernel = leftOf(kernel, corners.get(i), corners.get((i + 1) % n));
    }
    boolean room = kernel.size() > 2 && Outline.signedArea(kernel) > LEAST_KERNEL;
    return room ? Optional.of(Outline.centroid(kernel)) : Optional.empty();
  }

  /** Moves every edge inwards; only a convex polygon may lose an edge, and is then cut anew. */
  static List<Vector2D> inset(String name, Outline outline, double distance) {
    List<Vector2D> corners = outline.vertices();
    List<Vector2D> moved = mitred(outline, distance);
    int lost = lostEdge(corners, moved);
    if (lost < 0 && Crossings.first(moved).isEmpty()) {
      return moved;
    }
    Args.agree(
        outline.isConvex(),
        nothingLeft(lost < 0 ? name : name + ": edge " + (lost + 1), distance),
        SMALLER);
    List<Vector2D> kept = corners;
    for (int i = 0; i < corners.size() && kept.size() >= 3; i++) {
      Vector2D inwards = inwards(outline, i).multiply(distance);
      kept = leftOf(kept, outline.vertex(i).add(inwards), outline.vertex(i + 1).add(inwards));
    }
    Args.agree(kept.size() >= 3, nothingLeft(name, distance), SMALLER);
    return kept;
  }

  private static String nothingLeft(String name, double distance) {
    return name + ": an inset of " + Numbers.plain(distance) + " m leaves nothing of it";
  }

  /** The unit normal of an edge, towards the inside. */
  private static Vector2D inwards(Outline outline, int edge) {
    Vector2D along = outline.vertex(edge + 1).subtract(outline.vertex(edge));
    double length = outline.edgeLength(edge);
    return Vector2D.of(-along.getY() / length, along.getX() / length);
  }

  /** Each corner moves along the bisector: by both normals over 1 + the cosine between edges. */
  private static List<Vector2D> mitred(Outline outline, double distance) {
    List<Vector2D> moved = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Vector2D before = inwards(outline, i - 1);
      Vector2D after = inwards(outline, i);
      double size = distance / (1 + before.dot(after));
      moved.add(outline.vertex(i).add(before.add(after).multiply(size)));
    }
    return moved;
  }

  /** The first edge that vanishes or turns round, or −1. */
  private static int lostEdge(List<Vector2D> corners, List<Vector2D> moved) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      Vector2D was = corners.get((i + 1) % n).subtract(corners.get(i));
      Vector2D is = moved.get((i + 1) % n).subtract(moved.get(i));
      if (!(was.dot(is) > 0)) {
        return i;
      }
    }
    return -1;
  }
}
