package io.github.seamstead.api.compare;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Small pictures of frames from the side, all at one scale, with a person beside them. */
final class FrameMiniature {

  private static final double MARGIN = 10;
  private static final double PERSON = 1.7;
  private static final double HEAD = 0.12;
  private static final double SHOULDER = 1.4;
  private static final double HIP = 0.85;
  private static final double STEP = 0.18;

  private final double halfWidth;
  private final double height;

  private FrameMiniature(double halfWidth, double height) {
    this.halfWidth = halfWidth;
    this.height = height;
  }

  /** A scale at which each of the rows' frames fits. */
  static FrameMiniature scale(List<VariantRow> rows) {
    double width = 1;
    double height = PERSON;
    for (VariantRow row : rows) {
      if (row.frame().isPresent()) {
        RegularPyramid frame = row.frame().get();
        width = Math.max(width, frame.base().circumradius());
        height = Math.max(height, frame.frameHeight());
      }
    }
    return new FrameMiniature(width, height);
  }

  /** Draws the poles that face the reader, the ground and a person. */
  Drawing draw(RegularPyramid frame, String name, String title, String description) {
    double right = halfWidth + 1;
    Canvas canvas = Canvas.fit(-halfWidth, 0, right, height, MARGIN, 260);
    canvas.line(-halfWidth, 0, right, 0, Ink.THIN);
    List<double[]> outline = new ArrayList<>();
    double reach = frame.base().circumradius();
    double top = frame.isTruncated() ? frame.openingSide() / frame.baseSide() * reach : 0;
    outline.add(new double[] {-reach, 0});
    outline.add(new double[] {-top, frame.frameHeight()});
    outline.add(new double[] {top, frame.frameHeight()});
    outline.add(new double[] {reach, 0});
    canvas.path(outline, true, Ink.THIN, Shade.PALE);
    for (int hip = 1; hip <= frame.sides(); hip++) {
      Vector3D foot = frame.baseCorner(hip);
      Vector3D end = frame.isTruncated() ? frame.topCorner(hip) : frame.apex();
      if (foot.getY() <= reach * 1e-9) {
        canvas.line(foot.getX(), foot.getZ(), end.getX(), end.getZ(), Ink.CUT);
      }
    }
    person(canvas, halfWidth + 0.6);
    return canvas.drawing(name, title, description);
  }

  private static void person(Canvas canvas, double x) {
    canvas.dot(x, PERSON - HEAD, HEAD * canvas.scale(), Ink.THIN, Shade.MIDDLE);
    canvas.line(x, PERSON - 2 * HEAD, x, HIP, Ink.HEAVY);
    canvas.line(x, HIP, x - STEP, 0, Ink.CUT).line(x, HIP, x + STEP, 0, Ink.CUT);
    canvas.line(x, SHOULDER, x - STEP, HIP, Ink.CUT).line(x, SHOULDER, x + STEP, HIP, Ink.CUT);
  }
}
