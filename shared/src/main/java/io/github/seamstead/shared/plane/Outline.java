package io.github.seamstead.shared.plane;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A simple polygon: at least three vertices, counter-clockwise, no edge crossing or touching
 * another but at their common vertex. Edge {@code i} runs from vertex {@code i} to vertex {@code i
 * + 1}.
 *
 * <pre>{@code
 * Outline sheet = Outline.rectangle(2, 1.5);
 * sheet.area(); // 3.0
 * sheet.size(); // 4 (corners)
 * }</pre>
 *
 * @param vertices the corners in counter-clockwise order, in metres, closed implicitly
 */
public record Outline(List<Vector2D> vertices) {

  /** An area below this share of the square of the perimeter is rounding: corners on one line. */
  private static final double LEAST_SHARE = 1e-12;

  /**
   * Checks the polygon and turns a clockwise one round. Costs O(n²) for n vertices.
   *
   * @param vertices at least three finite corners, in metres
   * @throws IllegalArgumentException if there are fewer than three corners, a coordinate is not
   *     finite, two neighbouring corners coincide, the area is zero, or edges cross or touch
   */
  public Outline {
    Args.require(
        vertices.size() >= 3, "outline", vertices.size() + " corners", "must have 3 or more");
    requireFinite("outline", vertices);
    double area = signedArea(vertices);
    Args.agree(area != 0, "outline: the corners lie on one line", "must enclose an area");
    List<Vector2D> turned = new ArrayList<>(vertices);
    if (area < 0) {
      Collections.reverse(turned);
    }
    Crossings.requireSimple("outline", turned);
    vertices = List.copyOf(turned);
  }

  /**
   * Makes an outline from corners.
   *
   * @param vertices the corners in either order, in metres
   * @return the outline, counter-clockwise
   * @throws IllegalArgumentException as the constructor does
   */
  public static Outline of(Vector2D... vertices) {
    return new Outline(List.of(vertices));
  }

  /**
   * Makes an outline whose faults speak of it by a name of the caller's.
   *
   * @param name what the outline is, for messages, as "gap 2"
   * @param vertices at least three finite corners in either order, in metres
   * @return the outline, counter-clockwise; O(n²) for n corners
   * @throws IllegalArgumentException as the constructor does
   */
  public static Outline named(String name, List<Vector2D> vertices) {
    Args.require(vertices.size() >= 3, name, vertices.size() + " corners", "must have 3 or more");
    requireFinite(name, vertices);
    double size = length(vertices);
    Args.agree(
        Math.abs(signedArea(vertices)) > LEAST_SHARE * size * size,
        name + ": the corners lie on one line",
        "must enclose an area");
    Crossings.requireSimple(name, vertices);
    return new Outline(vertices);
  }

  private static void requireFinite(String name, List<Vector2D> vertices) {
    for (Vector2D v : vertices) {
      Args.finite(name + " corner x", v.getX(), "m");
      Args.finite(name + " corner y", v.getY(), "m");
    }
  }

  /**
   * Makes a rectangle with its lower left corner at the origin.
   *
   * @param width along x, in metres, greater than 0
   * @param height along y, in metres, greater than 0
   * @return the rectangle
   * @throws IllegalArgumentException if a side is not positive
   */
  public static Outline rectangle(double width, double height) {
    Args.positive("rectangle width", width, "m");
    Args.positive("rectangle height", height, "m");
    return of(
        Vector2D.ZERO, Vector2D.of(width, 0), Vector2D.of(width, height), Vector2D.of(0, height));
  }

  /**
   * Counts the corners, and so the edges.
   *
   * @return 3 or more
   */
  public int size() {
    return vertices.size();
  }

  /**
   * Gives a corner, counted round.
   *
   * @param index any whole number; corner {@code size()} is corner 0 again
   * @return the corner, in metres
   */
  public Vector2D vertex(int index) {
    return vertices.get(Math.floorMod(index, vertices.size()));
  }

  /**
   * Gives the length of an edge.
   *
   * @param index the edge from corner {@code index} to the next, counted round
   * @return the length, in metres
   */
  public double edgeLength(int index) {
    return vertex(index).distance(vertex(index + 1));
  }

  /**
   * Gives the area by the shoelace formula {@code A = 1/2 sum(x_i y_(i+1) - x_(i+1) y_i)}.
   *
   * @return the area, in square metres, greater than 0
   */
  public double area() {
    return signedArea(vertices);
  }

  /**
   * Gives the sum of the edges.
   *
   * @return the perimeter, in metres
   */
  public double perimeter() {
    return length(vertices);
  }

  private static double length(List<Vector2D> vertices) {
    double sum = 0;
    for (int i = 0; i < vertices.size(); i++) {
      sum += vertices.get(i).distance(vertices.get((i + 1) % vertices.size()));
    }
    return sum;
  }

  /**
   * Gives the centroid of the area.
   *
   * @return the centroid, in metres
   */
  public Vector2D centroid() {
    return centroid(vertices);
  }

  static Vector2D centroid(List<Vector2D> vertices) {
    // Relative to the first corner, so that a small figure far from the origin keeps its digits.
    Vector2D origin = vertices.get(0);
    double twiceArea = 0;
    Vector2D sum = Vector2D.ZERO;
    for (int i = 1; i < vertices.size() - 1; i++) {
      Vector2D a = vertices.get(i).subtract(origin);
      Vector2D b = vertices.get(i + 1).subtract(origin);
      double cross = a.signedArea(b);
      twiceArea += cross;
      sum = sum.add(a.add(b).multiply(cross));
    }
    return origin.add(sum.multiply(1 / (3 * twiceArea)));
  }

  /**
   * Gives the least upright rectangle around the outline.
   *
   * @return the bounds
   */
  public Bounds bounds() {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Vector2D v : vertices) {
      minX = Math.min(minX, v.getX());
      minY = Math.min(minY, v.getY());
      maxX = Math.max(maxX, v.getX());
      maxY = Math.max(maxY, v.getY());
    }
    return new Bounds(minX, minY, maxX, maxY);
  }

  /**
   * Turns about the origin and then moves. Distances, angles and orientation stay.
   *
   * @param angle counter-clockwise, in radians
   * @param shift the move after the turn, in metres
   * @return the outline in its new place
   */
  public Outline placed(double angle, Vector2D shift) {
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    List<Vector2D> moved = new ArrayList<>(size());
    for (Vector2D v : vertices) {
      moved.add(
          Vector2D.of(
              cos * v.getX() - sin * v.getY() + shift.getX(),
              sin * v.getX() + cos * v.getY() + shift.getY()));
    }
    return new Outline(moved);
  }

  /**
   * Mirrors left to right ({@code x} to {@code -x}), as when a panel is turned over. The corners
   * are renumbered so that the outline stays counter-clockwise.
   *
   * @return the mirror image
   */
  public Outline mirrored() {
    List<Vector2D> flipped = new ArrayList<>(size());
    for (Vector2D v : vertices) {
      flipped.add(Vector2D.of(-v.getX(), v.getY()));
    }
    return new Outline(flipped);
  }

  /**
   * Tells whether every inner angle is at most 180°.
   *
   * @return true for a convex outline
   */
  public boolean isConvex() {
    for (int i = 0; i < size(); i++) {
      Vector2D in = vertex(i).subtract(vertex(i - 1));
      Vector2D out = vertex(i + 1).subtract(vertex(i));
      if (in.signedArea(out) < 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * Tells whether a point lies inside. A point on the outline may count as either.
   *
   * @param point in metres
   * @return true inside; O(n) for n corners
   */
  public boolean contains(Vector2D point) {
    return Nearness.inside(vertices, point);
  }

  /**
   * Tells whether another outline lies wholly inside without touching this one.
   *
   * @param other the outline that may lie inside
   * @return true if all of it is inside; O(n m) for n and m corners
   */
  public boolean contains(Outline other) {
    return contains(other.vertices.get(0)) && !Nearness.boundariesMeet(vertices, other.vertices);
  }

  /**
   * Tells whether two outlines have a point in common, be it that one lies inside the other.
   *
   * @param other the other outline
   * @return true if they overlap or touch; O(n m) for n and m corners
   */
  public boolean meets(Outline other) {
    return Nearness.boundariesMeet(vertices, other.vertices)
        || contains(other.vertices.get(0))
        || other.contains(vertices.get(0));
  }

  /**
   * Gives the distance from a point, inside or outside, to the nearest edge.
   *
   * @param point in metres
   * @return the distance, in metres, 0 on the outline; O(n) for n corners
   */
  public double distanceToEdge(Vector2D point) {
    return Nearness.pointToBoundary(vertices, point);
  }

  /**
   * Gives the distance from a straight piece, inside or outside, to the nearest edge.
   *
   * @param from one end, in metres
   * @param to the other end, in metres
   * @return the distance, in metres, 0 if they touch or cross; O(n) for n corners
   */
  public double distanceToSegment(Vector2D from, Vector2D to) {
    return Nearness.segmentToBoundary(vertices, from, to);
  }

  /**
   * Gives how far the part between two lines along y reaches, as a strip of a roll laid there must.
   *
   * @param from where the one line crosses the x axis, in metres
   * @param to where the other does, in metres, greater than {@code from}
   * @return the extent along y, in metres, 0 where no part lies between; O(n) for n corners
   */
  public double extentBetween(double from, double to) {
    return Clipping.extentBetween(vertices, from, to);
  }

  /**
   * Gives the area of the part that lies within a convex outline.
   *
   * @param convex the outline to clip to; convex
   * @return in square metres, 0 where they are apart; O(n m) for n and m corners
   */
  public double areaWithin(Outline convex) {
    return Clipping.areaWithin(vertices, convex.vertices);
  }

  /**
   * Gives the middle of the kernel: of the part from which all of the boundary can be seen.
   *
   * @return the centroid of the kernel; empty where no point sees the whole boundary, as in a
   *     horseshoe; O(n²) for n corners
   */
  public Optional<Vector2D> kernelCentre() {
    return Clipping.kernelCentre(vertices);
  }

  /**
   * Moves every edge inwards. Edges keep their numbers unless a convex outline loses one.
   *
   * @param name what the outline is, for messages
   * @param distance in metres, 0 or more
   * @return the smaller outline; O(n²) for n corners
   * @throws IllegalArgumentException if nothing is left, or an outline that is not convex loses an
   *     edge
   */
  public Outline inset(String name, double distance) {
    Args.notNegative("inset", distance, "m");
    return new Outline(Clipping.inset(name, this, distance));
  }

  /**
   * Writes the corners, rounded to a tenth of a millimetre, for messages.
   *
   * @return for example {@code [(0, 0), (1.5, 0), (0, 2)]}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("[");
    for (Vector2D v : vertices) {
      text.append(text.length() > 1 ? ", (" : "(")
          .append(Numbers.plain(Math.round(v.getX() * 1e4) / 1e4))
          .append(", ")
          .append(Numbers.plain(Math.round(v.getY() * 1e4) / 1e4))
          .append(')');
    }
    return text.append(']').toString();
  }

  /**
   * Gives the area of any closed polygon by the shoelace formula, relative to its first corner so
   * that a small figure far from the origin keeps its digits.
   *
   * @param vertices the corners in metres, the last joined to the first; one or more
   * @return in square metres: above 0 counter-clockwise, below 0 clockwise, 0 for fewer than three
   *     corners
   */
  public static double signedArea(List<Vector2D> vertices) {
    Vector2D origin = vertices.get(0);
    double twice = 0;
    for (int i = 1; i < vertices.size() - 1; i++) {
      twice += vertices.get(i).subtract(origin).signedArea(vertices.get(i + 1).subtract(origin));
    }
    return twice / 2;
  }
}
