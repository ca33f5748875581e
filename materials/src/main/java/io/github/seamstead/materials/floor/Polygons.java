package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Plane geometry of corner lists: counter-clockwise, closed implicitly, metres. */
final class Polygons {

  /** A corner closer than this to its neighbour is the same corner: a tenth of a millimetre. */
  private static final double SAME = 1e-4;

  private static final String SMALLER = "must be smaller";

  private Polygons() {}

  static double signedArea(List<PlanPoint> corners) {
    double twice = 0;
    PlanPoint origin = corners.get(0);
    for (int i = 1; i + 1 < corners.size(); i++) {
      twice += cross(origin, corners.get(i), corners.get(i + 1));
    }
    return twice / 2;
  }

  static double cross(PlanPoint a, PlanPoint b, PlanPoint c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  static PlanPoint centroid(List<PlanPoint> corners) {
    PlanPoint origin = corners.get(0);
    double area = 0;
    double x = 0;
    double y = 0;
    for (int i = 1; i + 1 < corners.size(); i++) {
      PlanPoint b = corners.get(i);
      PlanPoint c = corners.get(i + 1);
      double twice = cross(origin, b, c);
      area += twice;
      x += twice * (b.x() - origin.x() + c.x() - origin.x());
      y += twice * (b.y() - origin.y() + c.y() - origin.y());
    }
    return origin.plus(x / (3 * area), y / (3 * area));
  }

  static double perimeter(List<PlanPoint> corners) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += corners.get(i).distanceTo(corners.get((i + 1) % corners.size()));
    }
    return sum;
  }

  /** Checks a corner list and turns it counter-clockwise. O(n²). */
  static List<PlanPoint> checked(String name, List<PlanPoint> corners) {
    Args.require(corners.size() >= 3, name, corners.size() + " corners", "must have 3 or more");
    double area = signedArea(corners);
    double size = perimeter(corners);
    Args.agree(
        Math.abs(area) > 1e-12 * size * size,
        name + ": the corners lie on one line",
        "must enclose an area");
    List<PlanPoint> turned = new ArrayList<>(corners);
    if (area < 0) {
      Collections.reverse(turned);
    }
    int n = turned.size();
    for (int i = 0; i < n; i++) {
      Args.require(
          turned.get(i).distanceTo(turned.get((i + 1) % n)) > SAME,
          name + ": corners " + (i + 1) + " and " + ((i + 1) % n + 1) + " coincide");
    }
    Args.agree(isSimple(turned), name + ": two edges cross or touch", "must not");
    return List.copyOf(turned);
  }

  static boolean isConvex(List<PlanPoint> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      if (cross(corners.get(i), corners.get((i + 1) % n), corners.get((i + 2) % n)) < 0) {
        return false;
      }
    }
    return true;
  }

  static boolean isSimple(List<PlanPoint> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours
            && touch(
                corners.get(i), corners.get(i + 1), corners.get(j), corners.get((j + 1) % n))) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean touch(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) {
    double abc = cross(a, b, c);
    double abd = cross(a, b, d);
    double cda = cross(c, d, a);
    double cdb = cross(c, d, b);
    if (abc * abd < 0 && cda * cdb < 0) {
      return true;
    }
    return (abc == 0 && between(a, b, c))
        || (abd == 0 && between(a, b, d))
        || (cda == 0 && between(c, d, a))
        || (cdb == 0 && between(c, d, b));
  }

  private static boolean between(PlanPoint a, PlanPoint b, PlanPoint c) {
    return c.x() >= Math.min(a.x(), b.x())
        && c.x() <= Math.max(a.x(), b.x())
        && c.y() >= Math.min(a.y(), b.y())
        && c.y() <= Math.max(a.y(), b.y());
  }

  /** Even-odd rule; a point on an edge may go either way. */
  static boolean contains(List<PlanPoint> corners, PlanPoint p) {
    boolean inside = false;
    int n = corners.size();
    for (int i = 0, j = n - 1; i < n; j = i++) {
      PlanPoint a = corners.get(i);
      PlanPoint b = corners.get(j);
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Distance from a point to the nearest edge. */
  static double distanceToEdge(List<PlanPoint> corners, PlanPoint p) {
    double least = Double.POSITIVE_INFINITY;
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      least = Math.min(least, distance(corners.get(i), corners.get((i + 1) % n), p));
    }
    return least;
  }

  private static double distance(PlanPoint a, PlanPoint b, PlanPoint p) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double along = ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / (dx * dx + dy * dy);
    double held = Math.max(0, Math.min(1, along));
    return p.distanceTo(a.plus(held * dx, held * dy));
  }

  /** True if no edge of one meets an edge of the other and the inner one starts inside. O(n m). */
  static boolean holds(List<PlanPoint> outer, List<PlanPoint> inner) {
    return contains(outer, inner.get(0)) && !edgesMeet(outer, inner);
  }

  static boolean apart(List<PlanPoint> one, List<PlanPoint> other) {
    return !edgesMeet(one, other) && !contains(one, other.get(0)) && !contains(other, one.get(0));
  }

  private static boolean edgesMeet(List<PlanPoint> one, List<PlanPoint> other) {
    for (int i = 0; i < one.size(); i++) {
      for (int j = 0; j < other.size(); j++) {
        if (touch(
            one.get(i),
            one.get((i + 1) % one.size()),
            other.get(j),
            other.get((j + 1) % other.size()))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Keeps the part of a polygon on the left of the line from a to b; may return fewer than 3. */
  static List<PlanPoint> leftOf(List<PlanPoint> corners, PlanPoint a, PlanPoint b) {
    List<PlanPoint> kept = new ArrayList<>();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      PlanPoint p = corners.get(i);
      PlanPoint q = corners.get((i + 1) % n);
      double sp = cross(a, b, p);
      double sq = cross(a, b, q);
      if (sp >= 0) {
        kept.add(p);
      }
      if ((sp > 0 && sq < 0) || (sp < 0 && sq > 0)) {
        kept.add(p.towards(q, sp / (sp - sq)));
      }
    }
    return kept;
  }

  /**
   * Gives the middle of the part from which all of the edge can be seen: the outline clipped by the
   * inner half plane of each of its edges.
   */
  static Optional<PlanPoint> kernelCentre(List<PlanPoint> corners) {
    List<PlanPoint> kernel = corners;
    int n = corners.size();
    for (int i = 0; i < n && kernel.size() > 2; i++) {
      kernel = leftOf(kernel, corners.get(i), corners.get((i + 1) % n));
    }
    boolean room = kernel.size() > 2 && signedArea(kernel) > SAME * SAME;
    return room ? Optional.of(centroid(kernel)) : Optional.empty();
  }

  /** Clips any polygon to a convex one; the area is exact, doubled-back edges enclose none. */
  static List<PlanPoint> clip(List<PlanPoint> subject, List<PlanPoint> convex) {
    List<PlanPoint> kept = subject;
    for (int i = 0; i < convex.size() && !kept.isEmpty(); i++) {
      kept = leftOf(kept, convex.get(i), convex.get((i + 1) % convex.size()));
    }
    return kept;
  }

  static double areaWithin(List<PlanPoint> subject, List<PlanPoint> convex) {
    List<PlanPoint> both = clip(subject, convex);
    return both.size() < 3 ? 0 : Math.max(0, signedArea(both));
  }

  /**
   * Moves every edge inwards and keeps the numbers of the edges; only a convex polygon may lose an
   * edge, and is then numbered anew.
   */
  static List<PlanPoint> inset(String name, List<PlanPoint> corners, double distance) {
    List<PlanPoint> moved = mitred(corners, distance);
    int lost = lostEdge(corners, moved);
    if (lost < 0 && isSimple(moved)) {
      return moved;
    }
    Args.agree(
        isConvex(corners),
        nothingLeft(lost < 0 ? name : name + ": edge " + (lost + 1), distance),
        SMALLER);
    List<PlanPoint> kept = corners;
    int n = corners.size();
    for (int i = 0; i < n && kept.size() >= 3; i++) {
      PlanPoint a = corners.get(i);
      PlanPoint b = corners.get((i + 1) % n);
      double length = a.distanceTo(b);
      double nx = -(b.y() - a.y()) / length * distance;
      double ny = (b.x() - a.x()) / length * distance;
      kept = leftOf(kept, a.plus(nx, ny), b.plus(nx, ny));
    }
    Args.agree(kept.size() >= 3, nothingLeft(name, distance), SMALLER);
    return kept;
  }

  /** The first edge that vanishes or turns round, or −1. */
  private static int lostEdge(List<PlanPoint> corners, List<PlanPoint> moved) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      PlanPoint a = corners.get(i);
      PlanPoint b = corners.get((i + 1) % n);
      PlanPoint c = moved.get(i);
      PlanPoint d = moved.get((i + 1) % n);
      double along = (b.x() - a.x()) * (d.x() - c.x()) + (b.y() - a.y()) * (d.y() - c.y());
      if (!(along > 0)) {
        return i;
      }
    }
    return -1;
  }

  private static String nothingLeft(String name, double distance) {
    return name + ": an inset of " + Numbers.plain(distance) + " m leaves nothing of it";
  }

  private static List<PlanPoint> mitred(List<PlanPoint> corners, double distance) {
    List<PlanPoint> moved = new ArrayList<>();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      PlanPoint before = corners.get((i + n - 1) % n);
      PlanPoint here = corners.get(i);
      PlanPoint after = corners.get((i + 1) % n);
      double inLength = before.distanceTo(here);
      double outLength = here.distanceTo(after);
      double ux = (here.x() - before.x()) / inLength;
      double uy = (here.y() - before.y()) / inLength;
      double vx = (after.x() - here.x()) / outLength;
      double vy = (after.y() - here.y()) / outLength;
      double size = distance / (1 + ux * vx + uy * vy);
      moved.add(here.plus(size * (-uy - vy), size * (ux + vx)));
    }
    return moved;
  }
}
