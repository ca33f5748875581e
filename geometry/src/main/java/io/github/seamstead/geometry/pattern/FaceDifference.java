package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How far a piece that was cut for one outline is off another: the frame was taped again, say.
 *
 * @param edges for each edge the length it should have less the length it was made with, in metres
 * @param corners for each corner how far it lies from where it should when the two outlines are
 *     laid on one another as well as they go by turning and moving, in metres; each 0 or more
 */
public record FaceDifference(List<Double> edges, List<Double> corners) {

  public FaceDifference {
    edges = List.copyOf(edges);
    corners = List.copyOf(corners);
  }

  /**
   * Compares two outlines corner by corner. The best fit is that of least squares over the corners:
   * the middles are laid on one another, and the turn is {@code atan2(sum a x b, sum a . b)} over
   * the corners seen from the middles. O(n) for n corners.
   *
   * @param made the outline that the piece was made for
   * @param wanted the outline that it should have, with as many corners in the same order
   * @return the differences
   * @throws IllegalArgumentException if the numbers of corners differ
   */
  public static FaceDifference of(Outline made, Outline wanted) {
    int n = made.size();
    Args.require(
        wanted.size() == n,
        "outline wanted",
        wanted.size() + " corners",
        "must have " + n + " as made");
    List<Double> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      edges.add(wanted.edgeLength(i) - made.edgeLength(i));
    }
    Vector2D from = middle(made);
    Vector2D to = middle(wanted);
    double turned = 0;
    double along = 0;
    for (int i = 0; i < n; i++) {
      Vector2D a = made.vertex(i).subtract(from);
      Vector2D b = wanted.vertex(i).subtract(to);
      turned += a.signedArea(b);
      along += a.dot(b);
    }
    double angle = StrictMath.atan2(turned, along);
    double c = StrictMath.cos(angle);
    double s = StrictMath.sin(angle);
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vector2D a = made.vertex(i).subtract(from);
      Vector2D laid = Vector2D.of(c * a.getX() - s * a.getY(), s * a.getX() + c * a.getY());
      corners.add(laid.distance(wanted.vertex(i).subtract(to)));
    }
    return new FaceDifference(edges, corners);
  }

  private static Vector2D middle(Outline o) {
    Vector2D sum = Vector2D.ZERO;
    for (Vector2D v : o.vertices()) {
      sum = sum.add(v);
    }
    return sum.multiply(1.0 / o.size());
  }

  /**
   * Gives the greatest difference of all.
   *
   * @return of edges and corners, in metres, 0 or more
   */
  public double greatest() {
    double edge = edges.stream().mapToDouble(Math::abs).max().orElse(0);
    return Math.max(edge, corners.stream().mapToDouble(Double::doubleValue).max().orElse(0));
  }
}
