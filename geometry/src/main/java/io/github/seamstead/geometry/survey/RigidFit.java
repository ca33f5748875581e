package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * The rigid move that brings points nearest to others of the same order: {@code sum |s R p + t -
 * q|^2 = min} (orthogonal Procrustes problem, by singular values of the 3 by 3 cross-covariance).
 * It compares a frame as built with the frame as drawn, wherever the axes of either lie.
 *
 * @param rotationRows the three rows of R; a rotation, or with a mirror image if that was allowed
 * @param shift t, in metres
 * @param scale s, a pure number; 1 unless scaling was allowed
 * @param sumOfSquares what is left, in square metres
 * @param points how many points were fitted
 */
public record RigidFit(
    List<Vector3D> rotationRows, Vector3D shift, double scale, double sumOfSquares, int points) {

  /** What the fit may change beside turn and shift. */
  public enum Freedom {
    /** Nothing else. */
    RIGID,
    /** Also one scale for all. */
    SCALED,
    /** Also a mirror image. */
    MIRRORED,
    /** Also a mirror image and one scale for all. */
    MIRRORED_AND_SCALED;

    boolean mayMirror() {
      return this == MIRRORED || this == MIRRORED_AND_SCALED;
    }

    boolean mayScale() {
      return this == SCALED || this == MIRRORED_AND_SCALED;
    }
  }

  /**
   * Copies the rows.
   *
   * @param rotationRows three rows
   * @param shift in metres
   * @param scale a pure number
   * @param sumOfSquares in square metres
   * @param points how many points were fitted
   */
  public RigidFit {
    rotationRows = List.copyOf(rotationRows);
  }

  /**
   * Fits points to others. O(n).
   *
   * @param points the points p to move, in metres, not all in one place
   * @param targets the points q, in metres, as many and in the same order
   * @param freedom what may change beside turn and shift
   * @return the fit
   * @throws IllegalArgumentException if there are no points, the counts differ, or all points are
   *     in one place
   */
  public static RigidFit of(List<Vector3D> points, List<Vector3D> targets, Freedom freedom) {
    Args.notEmpty("points", points);
    Args.require(
        points.size() == targets.size(),
        "targets",
        String.valueOf(targets.size()),
        "must be as many as the " + points.size() + " points");
    Vector3D from = Vector3D.centroid(points);
    Vector3D to = Vector3D.centroid(targets);
    double[][] cross = new double[3][3];
    double size = 0;
    for (int k = 0; k < points.size(); k++) {
      double[] p = points.get(k).subtract(from).toArray();
      double[] q = targets.get(k).subtract(to).toArray();
      for (int i = 0; i < 3; i++) {
        size += p[i] * p[i];
        for (int j = 0; j < 3; j++) {
          cross[i][j] += q[i] * p[j];
        }
      }
    }
    Args.agree(size > 0, "points: all lie in one place", "must be apart");
    SingularValueDecomposition svd =
        new SingularValueDecomposition(new Array2DRowRealMatrix(cross, false));
    double[] singular = svd.getSingularValues();
    RealMatrix u = svd.getU();
    RealMatrix v = svd.getV();
    boolean mirror = determinant(u) * determinant(v) < 0;
    double sign = 1;
    if (mirror && !freedom.mayMirror()) {
      sign = -1; // turn the axis that costs least
    }
    double trace = singular[0] + singular[1] + sign * singular[2];
    double scale = freedom.mayScale() ? trace / size : 1;
    Vector3D[] rows = new Vector3D[3];
    for (int i = 0; i < 3; i++) {
      double[] row = new double[3];
      for (int j = 0; j < 3; j++) {
        row[j] =
            u.getEntry(i, 0) * v.getEntry(j, 0)
                + u.getEntry(i, 1) * v.getEntry(j, 1)
                + sign * u.getEntry(i, 2) * v.getEntry(j, 2);
      }
      rows[i] = Vector3D.of(row);
    }
    Vector3D turned = turn(List.of(rows), from).multiply(scale);
    RigidFit fit = new RigidFit(List.of(rows), to.subtract(turned), scale, 0, points.size());
    double sum = 0;
    for (int k = 0; k < points.size(); k++) {
      sum += fit.apply(points.get(k)).subtract(targets.get(k)).normSq();
    }
    return new RigidFit(fit.rotationRows, fit.shift, scale, sum, points.size());
  }

  /**
   * Moves a point.
   *
   * @param point p, in metres
   * @return s R p + t, in metres
   */
  public Vector3D apply(Vector3D point) {
    return turn(rotationRows, point).multiply(scale).add(shift);
  }

  /**
   * Gives the root mean square of what is left.
   *
   * @return in metres
   */
  public double rootMeanSquare() {
    return Math.sqrt(sumOfSquares / points);
  }

  private static Vector3D turn(List<Vector3D> rows, Vector3D point) {
    return Vector3D.of(rows.get(0).dot(point), rows.get(1).dot(point), rows.get(2).dot(point));
  }

  private static double determinant(RealMatrix m) {
    return Vector3D.of(m.getRow(0)).cross(Vector3D.of(m.getRow(1))).dot(Vector3D.of(m.getRow(2)));
  }
}
