package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;
import java.util.Map;

/** Lesson 2: the whole pyramid from two measures. */
public final class PyramidLesson implements Lesson {

  private static final int SIDES = 8;
  private static final double SIDE = 1.9;
  private static final double HIP = 3.1;

  /** Creates the lesson. */
  public PyramidLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new PyramidLesson().text());
  }

  @Override
  public String title() {
    return "Two measures make a pyramid";
  }

  @Override
  public String question() {
    return "The eight poles of the shelter are 3.10 m long from base corner to tip, and the sides"
        + " of the base 1.90 m. How high is the tip?";
  }

  @Override
  public Drawing picture() {
    FrameMeasures m = frame().measures();
    double radius = m.circumradius();
    Canvas canvas = Canvas.fit(-radius, 0, radius, m.apexHeight(), 30, 240);
    canvas.path(
        List.of(
            new double[] {-radius, 0}, new double[] {radius, 0}, new double[] {0, m.apexHeight()}),
        true,
        Ink.CUT,
        Shade.NONE);
    canvas.path(
        List.of(new double[] {0, 0}, new double[] {radius, 0}, new double[] {0, m.apexHeight()}),
        true,
        Ink.SEAM,
        Shade.LIGHT);
    canvas.label(0.16, m.apexHeight() * 0.4, "H");
    canvas.label(radius / 2, -0.2, "R");
    canvas.label(radius / 2 + 0.2, m.apexHeight() / 2 + 0.1, "e");
    return canvas.drawing(
        "lesson-pyramid",
        "Upright cut through two poles",
        "The shelter cut upright through two opposite poles: the pole e, the height H and the"
            + " radius R to a base corner make a right-angled triangle.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "geometry.frame.solve",
        "Height of a pyramid from side and hip",
        steps -> FrameSolver.solve(SIDES, given(SIDE, HIP), FrameSolver.DEFAULT_AGREEMENT, steps));
  }

  @Override
  public String answer() {
    return "The tip is "
        + new Exercise("", frame().apexHeight(), "m", 4).shownAnswer()
        + " high. Any two measures that do not follow from one another fix the whole pyramid; a"
        + " third is a check on the first two.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "The base has six sides of 2 m, the poles are 2.5 m long. How high is the tip?",
            solve(6, given(2, 2.5)).apexHeight(),
            "m",
            4),
        new Exercise(
            "An eight-sided base has sides of 1.90 m and the tip is 2 m high. How long is a pole?",
            RegularPyramid.ofBaseSideAndHeight(SIDES, SIDE, 2).measures().hipEdge(),
            "m",
            4),
        new Exercise(
            "How long is the middle line of a face of the shelter above, from the base to the tip?",
            frame().measures().slantHeight(),
            "m",
            4));
  }

  private static RegularPyramid frame() {
    return solve(SIDES, given(SIDE, HIP));
  }

  private static RegularPyramid solve(int sides, Map<PyramidMeasure, Double> given) {
    return FrameSolver.solve(sides, given).single();
  }

  private static Map<PyramidMeasure, Double> given(double side, double hip) {
    return Map.of(PyramidMeasure.BASE_SIDE, side, PyramidMeasure.HIP_EDGE, hip);
  }
}
