package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Plan and elevation of the frame. */
final class FrameDrawings {

  private static final double MARGIN = 30;

  private FrameDrawings() {}

  /**
   * Draws the frame from above, with its hips and faces numbered.
   *
   * @param frame the frame
   * @param door the face at the bottom of the drawing
   * @param words how lengths are written
   */
  static Drawing plan(RegularPyramid frame, int door, Words words) {
    double radius = frame.base().circumradius();
    Canvas canvas = Canvas.fit(-radius, -radius, radius, radius, MARGIN, 340);
    int n = frame.sides();
    double turn = turn(frame, door);
    List<double[]> base = new ArrayList<>();
    List<double[]> opening = new ArrayList<>();
    for (int hip = 1; hip <= n; hip++) {
      Vector3D corner = turned(frame.baseCorner(hip), turn);
      Vector3D top = turned(frame.isTruncated() ? frame.topCorner(hip) : frame.apex(), turn);
      base.add(new double[] {corner.getX(), corner.getY()});
      opening.add(new double[] {top.getX(), top.getY()});
      canvas.line(corner.getX(), corner.getY(), top.getX(), top.getY(), Ink.CUT);
    }
    canvas.path(base, true, Ink.HEAVY, Shade.NONE);
    if (frame.isTruncated()) {
      canvas.path(opening, true, Ink.CUT, Shade.LIGHT);
    }
    int shown = Math.max(1, n / 24);
    for (int hip = 1; hip <= n; hip += shown) {
      Vector3D corner = turned(frame.baseCorner(hip), turn);
      double out = 1 + 14 / canvas.scale() / radius;
      canvas.label(corner.getX() * out, corner.getY() * out, "B" + hip);
    }
    for (int face = 1; face <= n; face += shown) {
      double[] right = base.get(face - 1);
      double[] left = base.get(Math.floorMod(face - 2, n));
      double part = 0.62;
      canvas.label((left[0] + right[0]) / 2 * part, (left[1] + right[1]) / 2 * part, "" + face);
    }
    double[] low = base.get(Math.floorMod(door - 2, n));
    double sill = Math.max(low[1], base.get(door - 1)[1]);
    canvas.label(0, sill + 10 / canvas.scale(), "door");
    canvas.scaleBar(words.scaleUnit(), words::scale);
    return canvas.drawing(
        "frame-plan",
        "The frame from above",
        "A regular polygon of "
            + n
            + " sides of "
            + words.length(frame.baseSide())
            + ". Base corners B1 to B"
            + n
            + " and faces 1 to "
            + n
            + " run counter-clockwise; hip pole i stands at corner Bi, between faces i and i + 1."
            + " The door, at face "
            + door
            + ", is at the bottom.");
  }

  /** How far the frame is turned so that a face lies at the bottom. */
  private static double turn(RegularPyramid frame, int face) {
    List<Vector3D> corners = frame.faceCorners(face);
    Vector3D middle = corners.get(0).lerp(corners.get(1), 0.5);
    return -Math.PI / 2 - StrictMath.atan2(middle.getY(), middle.getX());
  }

  private static Vector3D turned(Vector3D p, double turn) {
    return Vector3D.of(
        p.getX() * StrictMath.cos(turn) - p.getY() * StrictMath.sin(turn),
        p.getX() * StrictMath.sin(turn) + p.getY() * StrictMath.cos(turn),
        p.getZ());
  }

  /**
   * Draws the frame's outline from the side with its heights: through two opposite hips, or where
   * the sides are odd through a hip and the middle of the face opposite.
   *
   * @param frame the frame
   * @param words how lengths are written
   */
  static Drawing elevation(RegularPyramid frame, Words words) {
    boolean even = frame.sides() % 2 == 0;
    double half = frame.base().circumradius();
    double right = even ? half : frame.base().inradius();
    double height = frame.frameHeight();
    double part = frame.isTruncated() ? 1 - height / frame.apexHeight() : 0;
    Canvas canvas = Canvas.fit(-half * 1.05, -0.12 * height, half * 1.35, height, MARGIN, 320);
    canvas.line(-half * 1.05, 0, half * 1.05, 0, Ink.HEAVY);
    canvas.path(
        List.of(
            new double[] {-half, 0},
            new double[] {-half * part, height},
            new double[] {right * part, height},
            new double[] {right, 0}),
        false,
        Ink.CUT,
        Shade.PALE);
    double at = half * 1.12;
    canvas.arrow(at, height / 2, at, height, Ink.THIN).arrow(at, height / 2, at, 0, Ink.THIN);
    canvas.text(
        at - 8 / canvas.scale(), height / 2, words.length(height), canvas.textSize(), "middle", 90);
    double below = -0.09 * height;
    canvas.arrow(0, below, -half, below, Ink.THIN).arrow(0, below, right, below, Ink.THIN);
    canvas.label(0, below - 9 / canvas.scale(), words.length(half + right));
    canvas.text(
        -half * (1 + part) / 2 + 14 / canvas.scale(),
        height / 2,
        "hip " + words.length(frame.measures().hipLength()),
        canvas.textSize(),
        "start",
        0);
    canvas.scaleBar(words.scaleUnit(), words::scale);
    return canvas.drawing(
        "frame-elevation",
        "The frame from the side",
        (even
                ? "Seen along the ground through two opposite hips: across the base corners "
                : "Seen along the ground through a hip and the face opposite: from the base corner"
                    + " to the side ")
            + words.length(half + right)
            + ", height "
            + words.length(height)
            + (frame.isTruncated()
                ? ", opening across "
                    + (even ? "its corners " : "in the same way ")
                    + words.length((half + right) * part)
                    + "."
                : ", closed to a point."));
  }
}
