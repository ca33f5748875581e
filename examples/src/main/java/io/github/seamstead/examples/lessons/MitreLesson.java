package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.pattern.Mitre;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;

/** Lesson 7: seam allowances and the sharp corner at the tip. */
public final class MitreLesson implements Lesson {

  private static final double TIP = Math.toRadians(37);
  private static final double ALLOWANCE = 0.04;
  private static final double LIMIT = 2;

  /** Creates the lesson. */
  public MitreLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new MitreLesson().text());
  }

  @Override
  public String title() {
    return "Allowance at a sharp tip";
  }

  @Override
  public String question() {
    return "A panel ends in a tip of 37° and gets a seam allowance of 40 mm along both edges. How"
        + " far beyond the tip of the stitch line does the cloth reach, if it is cut off at"
        + " twice the allowance?";
  }

  @Override
  public Drawing picture() {
    double length = 0.32;
    double half = TIP / 2;
    double full = Mitre.reach(TIP, ALLOWANCE, ALLOWANCE, 100);
    double held = Mitre.reach(TIP, ALLOWANCE, ALLOWANCE, LIMIT);
    double spread = length * Math.sin(half) + ALLOWANCE / Math.cos(half);
    Canvas canvas = Canvas.fit(-spread, -length, spread, full, 16, 330);
    double low = -length * Math.cos(half);
    double wide = (full - low) * Math.tan(half);
    double narrow = (full - held) * Math.tan(half);
    canvas.path(
        List.of(
            new double[] {-wide, low},
            new double[] {-narrow, held},
            new double[] {narrow, held},
            new double[] {wide, low}),
        false,
        Ink.CUT,
        Shade.PALE);
    canvas.path(
        List.of(new double[] {-narrow, held}, new double[] {0, full}, new double[] {narrow, held}),
        false,
        Ink.DOTTED,
        Shade.NONE);
    double foot = -low * Math.tan(half);
    canvas.path(
        List.of(new double[] {-foot, low}, new double[] {0, 0}, new double[] {foot, low}),
        false,
        Ink.SEAM,
        Shade.NONE);
    canvas.arrow(0, 0, 0, held, Ink.THIN);
    canvas.label(0.018, held / 2, "l");
    return canvas.drawing(
        "lesson-mitre",
        "Tip of a panel with its allowance",
        "The dashed stitch line ends in a sharp tip. The cut line around it would run out into the"
            + " long dotted point; it is cut off square at the reach l.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "geometry.pattern.mitre",
        "Reach of the cloth beyond a sharp tip",
        steps -> Mitre.reach(TIP, ALLOWANCE, ALLOWANCE, LIMIT, steps));
  }

  @Override
  public String answer() {
    return "The whole mitre would reach "
        + millimetres("", Mitre.reach(TIP, ALLOWANCE, ALLOWANCE, 100)).shownAnswer()
        + "; cut off, the cloth reaches "
        + millimetres("", Mitre.reach(TIP, ALLOWANCE, ALLOWANCE, LIMIT)).shownAnswer()
        + " and no part of a seam loses its allowance. The saved cloth matters less than the lump:"
        + " many long points under one cap do not lie flat.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        millimetres(
            "A corner of 120° has 30 mm along both edges. How far does the whole mitre reach?",
            Mitre.reach(Math.toRadians(120), 0.03, 0.03, 100)),
        millimetres(
            "A square corner has 40 mm along one edge and 30 mm along the other. And there?",
            Mitre.reach(Math.PI / 2, 0.04, 0.03, 100)),
        millimetres(
            "A corner of 75° has 20 mm along both edges. And there?",
            Mitre.reach(Math.toRadians(75), 0.02, 0.02, 100)));
  }

  private static Exercise millimetres(String question, double metres) {
    return new Exercise(question, 1000 * metres, "mm", 4);
  }
}
