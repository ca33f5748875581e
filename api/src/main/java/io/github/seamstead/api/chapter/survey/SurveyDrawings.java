package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.survey.ResidualPlot;
import io.github.seamstead.shared.quantity.Numbers;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The surveyed frame in plan: where it leaves the regular one, and what each reading is off by. */
final class SurveyDrawings {

  /** Where the bars of the residuals start. */
  private static final double MIDDLE = 38;

  private SurveyDrawings() {}

  /** Draws deviations of the nodes, magnified, over the taped lines. */
  static Drawing deviations(ResidualPlot plot, Words words) {
    double extent = plot.extent();
    double magnification = plot.deviationMagnification();
    Canvas canvas = Canvas.fit(-extent, -extent, extent, extent, 34, 350);
    for (ResidualPlot.Line line : plot.lines()) {
      canvas.line(
          line.from().getX(),
          line.from().getY(),
          line.to().getX(),
          line.to().getY(),
          line.suspect() ? Ink.HEAVY : Ink.THIN);
    }
    for (ResidualPlot.Deviation node : plot.nodes()) {
      Vector3D at = node.regular();
      Vector3D tip = at.add(node.way().multiply(magnification));
      canvas.dot(at.getX(), at.getY(), 3, Ink.CUT, Shade.PAPER);
      if (StrictMath.hypot(tip.getX() - at.getX(), tip.getY() - at.getY()) * canvas.scale() > 2) {
        canvas.arrow(at.getX(), at.getY(), tip.getX(), tip.getY(), Ink.CUT);
      }
      double out = 1 + 16 / canvas.scale() / Math.max(1e-9, StrictMath.hypot(at.getX(), at.getY()));
      boolean centre = StrictMath.hypot(at.getX(), at.getY()) < extent * 0.05;
      canvas.label(
          centre ? at.getX() + extent * 0.09 : at.getX() * out,
          centre ? at.getY() + extent * 0.07 : at.getY() * out,
          node.node().name());
    }
    canvas.scaleBar(words.scaleUnit(), words::scale);
    return canvas.drawing(
        "survey-deviations",
        "Where the frame stands",
        "Seen from above. Thin lines: readings"
            + (plot.lines().stream().anyMatch(ResidualPlot.Line::suspect)
                ? "; heavy lines: suspect readings"
                : "")
            + ". Arrows: from the regular frame to the frame as it stands, drawn "
            + Numbers.significant(magnification, 3)
            + " times too long; the longest stands for "
            + words.error(plot.greatestDeviation())
            + ".");
  }

  /** Draws the residual of each reading as a bar. */
  static Drawing residuals(ResidualPlot plot, Words words) {
    int n = plot.lines().size();
    double greatest = Math.max(1e-9, plot.greatestResidual());
    double row = 15;
    Canvas canvas = Canvas.fit(-180, -row * n, 180, row, 4, row * (n + 1) + 8);
    canvas.line(MIDDLE, -row * n, MIDDLE, row * 0.2, Ink.THIN);
    for (int i = 0; i < n; i++) {
      ResidualPlot.Line line = plot.lines().get(i);
      double y = -row * (i + 0.5);
      double length = 88 * line.residual() / greatest;
      canvas.text(-178, y, line.number() + ". " + line.name(), Canvas.SMALL_TEXT, "start", 0);
      if (Math.abs(length) > 0.5) {
        canvas.line(MIDDLE, y, MIDDLE + length, y, line.suspect() ? Ink.HEAVY : Ink.CUT);
      }
      canvas.text(
          172,
          y,
          words.inErrorUnit(line.residual()) + (line.suspect() ? " !" : ""),
          Canvas.SMALL_TEXT,
          "end",
          0);
    }
    canvas.text(172, row * 0.5, words.errorUnit(), Canvas.SMALL_TEXT, "end", 0);
    return canvas.drawing(
        "survey-residuals",
        "Residuals of the readings",
        "Adjusted length less taped length of each reading; the longest bar is "
            + words.error(greatest)
            + ". A heavy bar with an exclamation mark is a suspect reading.");
  }
}
