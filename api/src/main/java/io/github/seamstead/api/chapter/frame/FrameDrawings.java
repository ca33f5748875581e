package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Plan and elevation of the frame. */
final class FrameDrawings {

  private static final double MARGIN = 30;

  private FrameDrawings() {}

  /**
   * Draws the frame from above, with its hips and faces numbered.
   *
   * @param frame the frame
   * @param length writes a length in metres for people
   */
  static Drawing plan(RegularPyramid frame, DoubleFunction<String> length) {
    double radius = frame.base().circumradius();
    Canvas canvas = Canvas.fit(-radius, -radius, radius, radius, MARGIN, 340);
    int n = frame.sides();
    List<double[]> base = new ArrayList<>();
    List<double[]> opening = new ArrayList<>();
    for (int hip = 1; hip <= n; hip++) {
      Vector3D corner = frame.baseCorner(hip);
      Vector3D top = frame.isTruncated() ? frame.topCorner(hip) : frame.apex();
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
      Vector3D corner = frame.baseCorner(hip);
      double out = 1 + 14 / canvas.scale() / radius;
      canvas.label(corner.getX() * out, corner.getY() * out, "B" + hip);
    }
    for (int face = 1; face <= n; face += shown) {
      double[] right = base.get(face - 1);
      double[] left = base.get(Math.floorMod(face - 2, n));
      double part = 0.68;
      canvas.label((left[0] + right[0]) / 2 * part, (left[1] + right[1]) / 2 * part, "" + face);
    }
    return canvas.drawing(
        "frame-plan",
        "The frame from above",
        "A regular polygon of "
            + n
            + " sides of "
            + length.apply(frame.baseSide())
            + ". Base corners B1 to B"
            + n
            + " and faces 1 to "
            + n
            + " run counter-clockwise; hip pole i stands at corner Bi, between faces i and i + 1.");
  }

  /**
   * Draws the frame's outline from the side through two hips or a hip and a face, with its heights.
   *
   * @param frame the frame
   * @param length writes a length in metres for people
   */
  static Drawing elevation(RegularPyramid frame, DoubleFunction<String> length) {
    double half = frame.base().circumradius();
    double height = frame.frameHeight();
    double top = frame.isTruncated() ? half * (1 - height / frame.apexHeight()) : 0;
    Canvas canvas = Canvas.fit(-half * 1.05, -0.12 * height, half * 1.35, height, MARGIN, 320);
    canvas.line(-half * 1.05, 0, half * 1.05, 0, Ink.HEAVY);
    canvas.path(
        List.of(
            new double[] {-half, 0},
            new double[] {-top, height},
            new double[] {top, height},
            new double[] {half, 0}),
        false,
        Ink.CUT,
        Shade.PALE);
    double at = half * 1.12;
    canvas.arrow(at, height / 2, at, height, Ink.THIN).arrow(at, height / 2, at, 0, Ink.THIN);
    canvas.text(at, height / 2, length.apply(height), canvas.textSize(), "middle", 90);
    double below = -0.09 * height;
    canvas.arrow(0, below, -half, below, Ink.THIN).arrow(0, below, half, below, Ink.THIN);
    canvas.label(0, below, length.apply(2 * half));
    canvas.text(
        -(half + top) / 2 + 6 / canvas.scale(),
        height / 2,
        "hip " + length.apply(frame.measures().hipLength()),
        canvas.textSize(),
        "start",
        0);
    return canvas.drawing(
        "frame-elevation",
        "The frame from the side",
        "Seen along the ground through two opposite hips: across the base corners "
            + length.apply(2 * half)
            + ", height "
            + length.apply(height)
            + (frame.isTruncated()
                ? ", opening across its corners " + length.apply(2 * top) + "."
                : ", closed to a point."));
  }
}
