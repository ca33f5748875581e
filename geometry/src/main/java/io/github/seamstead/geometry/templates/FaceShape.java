package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Draws a flat face from its measures, by the face contract: base left at the origin. */
final class FaceShape {

  private static final double ROUNDING = 1e-12;

  private FaceShape() {}

  static Outline outline(Map<FaceMeasure, Double> measures) {
    double base = length(measures, FaceMeasure.BASE);
    double right = length(measures, FaceMeasure.RIGHT_HIP);
    double left = length(measures, FaceMeasure.LEFT_HIP);
    Vector2D baseLeft = Vector2D.ZERO;
    Vector2D baseRight = Vector2D.of(base, 0);
    if (!measures.containsKey(FaceMeasure.TOP)) {
      return new Outline(List.of(baseLeft, baseRight, third(baseLeft, baseRight, left, right)));
    }
    double top = length(measures, FaceMeasure.TOP);
    double diagonal = length(measures, FaceMeasure.DIAGONAL);
    Vector2D topRight = third(baseLeft, baseRight, diagonal, right);
    Vector2D topLeft = third(baseLeft, topRight, left, top);
    return new Outline(List.of(baseLeft, baseRight, topRight, topLeft));
  }

  /**
   * Lengthens the left hip and the top of a quadrilateral until its other diagonal, from base right
   * to top left, is as long as needed. The top left corner moves by the least that the longer of
   * the two has to give: straight away from base right, or along the circle of one of the two
   * lengths where the straight way would shorten that one. Nothing else changes.
   */
  static Map<FaceMeasure, Double> withOtherDiagonal(
      Map<FaceMeasure, Double> measures, double needed) {
    if (!measures.containsKey(FaceMeasure.TOP)) {
      return measures;
    }
    Outline outline = outline(measures);
    Vector2D baseLeft = outline.vertex(0);
    Vector2D baseRight = outline.vertex(1);
    Vector2D topRight = outline.vertex(2);
    Vector2D topLeft = outline.vertex(3);
    double have = baseRight.distance(topLeft);
    if (have >= needed) {
      return measures;
    }
    double left = length(measures, FaceMeasure.LEFT_HIP);
    double top = length(measures, FaceMeasure.TOP);
    List<Vector2D> moved = new ArrayList<>();
    moved.add(baseRight.lerp(topLeft, needed / have));
    double base = baseLeft.distance(baseRight);
    if (needed < base + left) {
      moved.add(third(baseLeft, baseRight, left, needed));
    }
    if (needed < baseRight.distance(topRight) + top) {
      moved.add(third(baseRight, topRight, needed, top));
    }
    double least = Double.POSITIVE_INFINITY;
    Vector2D best = moved.get(0);
    for (Vector2D corner : moved) {
      double hipGrows = corner.distance(baseLeft) - left;
      double topGrows = corner.distance(topRight) - top;
      double growth = Math.max(hipGrows, topGrows);
      if (Math.min(hipGrows, topGrows) > -ROUNDING && growth < least) {
        least = growth;
        best = corner;
      }
    }
    Map<FaceMeasure, Double> longer = new EnumMap<>(measures);
    longer.put(FaceMeasure.LEFT_HIP, Math.max(left, best.distance(baseLeft)));
    longer.put(FaceMeasure.TOP, Math.max(top, best.distance(topRight)));
    return longer;
  }

  static double length(Map<FaceMeasure, Double> measures, FaceMeasure measure) {
    Double length = measures.get(measure);
    if (length == null) {
      throw ArgumentFault.finding(
          "measure: given " + measure.label() + ", the shape has only " + measures.keySet());
    }
    return length;
  }

  /** The corner to the left of the way from a to b, at given distances from both. */
  private static Vector2D third(Vector2D a, Vector2D b, double fromA, double fromB) {
    double ab = a.distance(b);
    double along = (ab * ab + fromA * fromA - fromB * fromB) / (2 * ab);
    double square = fromA * fromA - along * along;
    Args.require(
        square > 0,
        "face: given sides "
            + Numbers.plain(ab)
            + " m, "
            + Numbers.plain(fromA)
            + " m and "
            + Numbers.plain(fromB)
            + " m, no triangle has them");
    Vector2D way = b.subtract(a).multiply(1 / ab);
    Vector2D square2 = Vector2D.of(-way.getY(), way.getX()).multiply(Math.sqrt(square));
    return a.add(way.multiply(along)).add(square2);
  }

  /**
   * The diagonal of the flat quadrilateral that keeps all four edges of a skew one and is off by
   * the same amount in both diagonals (both come out a little too long). Bisection to the last
   * digit.
   */
  static double flatDiagonal(
      double base, double right, double top, double left, double diagonal, double otherDiagonal) {
    double low = diagonal;
    double high = Math.min(base + right, left + top);
    for (int i = 0; i < 200 && Math.nextUp(low) < high; i++) {
      double middle = low + (high - low) / 2;
      double excess = other(base, right, top, left, middle) - otherDiagonal;
      if (middle - diagonal < excess) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double other(double base, double right, double top, double left, double diagonal) {
    // The angles at base left, on either side of the diagonal, add up to the corner's.
    double lower = angle(base, diagonal, right);
    double upper = angle(left, diagonal, top);
    double square = base * base + left * left - 2 * base * left * StrictMath.cos(lower + upper);
    return Math.sqrt(Math.max(square, 0));
  }

  private static double angle(double a, double b, double opposite) {
    double cosine = (a * a + b * b - opposite * opposite) / (2 * a * b);
    return StrictMath.acos(Math.min(Math.max(cosine, -1), 1));
  }
}
