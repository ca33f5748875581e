package io.github.seamstead.geometry.internal;

import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Finished outlines of what goes above, beside and below the faces: pyramid caps, apron strips,
 * ground skirts and linings. Each is a face again, with the base as edge 0, so that {@link
 * Panel#of} draws its pieces.
 */
public final class Strips {

  private Strips() {}

  /**
   * Gives one face of a small pyramid over the opening: the hips go on to their meeting point and
   * down over the cover by the overlap.
   *
   * @param face a face cut off at the top, with four corners, in metres
   * @param overlap from the opening's corners down both hips, in metres, more than 0 and less than
   *     the shorter hip
   * @return a triangle
   * @throws IllegalArgumentException if the face has not four corners, its hips do not meet above
   *     it, or the overlap is out of range
   */
  public static Outline pyramidCap(Outline face, double overlap) {
    requireTruncated("pyramid cap", face);
    Vector2D left = hip(face, true);
    Vector2D right = hip(face, false);
    requireOnHips("cap overlap", overlap, face);
    double turn = left.signedArea(right);
    Args.require(
        turn > 1e-9,
        "pyramid cap",
        "hips that do not meet above the face",
        "must slope together",
        "use a cone cap");
    Vector2D base = face.vertex(1).subtract(face.vertex(0));
    Vector2D apex = face.vertex(1).add(right.multiply(base.signedArea(left) / turn));
    return laid(
        face.vertex(3).subtract(left.multiply(overlap)),
        face.vertex(2).subtract(right.multiply(overlap)),
        apex);
  }

  /**
   * Gives one strip of an apron under the cap: the part of the face between two distances from the
   * opening down the hips.
   *
   * @param face a face cut off at the top, with four corners, in metres
   * @param upper from the opening's corners down both hips to the strip's upper edge, in metres, 0
   *     or more
   * @param lower to its lower edge, in metres, more than {@code upper} and less than the shorter
   *     hip
   * @return a quadrilateral
   * @throws IllegalArgumentException if the face has not four corners or a distance is out of range
   */
  public static Outline apron(Outline face, double upper, double lower) {
    requireTruncated("apron", face);
    requireOnHips("apron's lower edge", lower, face);
    Args.require(
        upper >= 0 && upper < lower,
        "apron's upper edge",
        Numbers.plain(upper) + " m",
        "must be 0 m or more and less than the lower edge's " + Numbers.plain(lower) + " m");
    Vector2D left = hip(face, true);
    Vector2D right = hip(face, false);
    return laid(
        face.vertex(3).subtract(left.multiply(lower)),
        face.vertex(2).subtract(right.multiply(lower)),
        face.vertex(2).subtract(right.multiply(upper)),
        face.vertex(3).subtract(left.multiply(upper)));
  }

  /**
   * Gives one side of a skirt that lies flat on level ground outside the base, mitred to its
   * neighbours: its outer edge is longer than the base by {@code w / tan(α/2)} at either corner.
   * With straight angles it is the rectangle of a skirt that hangs or stands upright.
   *
   * <p>Edge 0 is the outer edge; edge 2 meets the cover's base and lies under it, so that water
   * runs off.
   *
   * @param base length of the cover's base, in metres, greater than 0
   * @param width w of the skirt, square to the base, in metres, greater than 0
   * @param leftCorner α, inner angle of the base's plan at its left corner seen from outside, in
   *     radians, more than 0 and up to π
   * @param rightCorner the same at its right corner, in radians, more than 0 and up to π
   * @return a quadrilateral
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static Outline groundSkirt(
      double base, double width, double leftCorner, double rightCorner) {
    Args.positive("skirt base", base, "m");
    Args.positive("skirt width", width, "m");
    double left = mitre("left", width, leftCorner);
    double right = mitre("right", width, rightCorner);
    return Outline.of(
        Vector2D.ZERO,
        Vector2D.of(left + base + right, 0),
        Vector2D.of(left + base, width),
        Vector2D.of(left, width));
  }

  /**
   * Gives a face as seen from inside, as a lining's good side is: left and right change, and the
   * base is edge 0 again. Its right hip is the left one of the face seen from outside.
   *
   * @param face the lining's face as seen from outside, such as that of the inward offset pyramid
   * @return the face seen from inside
   */
  public static Outline seenFromInside(Outline face) {
    int n = face.size();
    Vector2D origin = face.vertex(1);
    Vector2D[] corners = new Vector2D[n];
    for (int i = 0; i < n; i++) {
      Vector2D v = face.vertex(1 - i);
      corners[i] = Vector2D.of(origin.getX() - v.getX(), v.getY() - origin.getY());
    }
    return Outline.of(corners);
  }

  private static double mitre(String side, double width, double corner) {
    Args.require(
        corner > 0 && corner <= Math.PI,
        "skirt's " + side + " corner",
        Numbers.plain(corner) + " rad",
        "must be more than 0 and up to π rad");
    return corner == Math.PI ? 0 : width / StrictMath.tan(corner / 2);
  }

  private static void requireTruncated(String what, Outline face) {
    Args.require(
        face.size() == 4,
        what,
        "a face with " + face.size() + " corners",
        "must have 4: cut off at the top");
  }

  private static void requireOnHips(String what, double distance, Outline face) {
    Args.between(what, distance, 0, Math.min(face.edgeLength(1), face.edgeLength(3)), "m");
  }

  /** The direction up a hip. */
  private static Vector2D hip(Outline face, boolean left) {
    return left
        ? face.vertex(3).subtract(face.vertex(0)).normalize()
        : face.vertex(2).subtract(face.vertex(1)).normalize();
  }

  /** Moves corner 0 to the origin and corner 1 onto the x axis. */
  private static Outline laid(Vector2D... corners) {
    Vector2D base = corners[1].subtract(corners[0]);
    double angle = -StrictMath.atan2(base.getY(), base.getX());
    Outline figure = Outline.of(corners);
    Outline turned = figure.placed(angle, Vector2D.ZERO);
    return turned.placed(0, turned.vertex(0).negate());
  }
}
