package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.ArrayList;
import java.util.List;

/** Lesson 3: the angles of a face, and why those at the tip make less than a full turn. */
public final class ApexAngleLesson implements Lesson {

  private static final int SIDES = 8;
  private static final double SIDE = 1.9;
  private static final double HEIGHT = 1.6;

  /** Creates the lesson. */
  public ApexAngleLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new ApexAngleLesson().text());
  }

  @Override
  public String title() {
    return "Why flat panels make a tent";
  }

  @Override
  public String question() {
    return "A frame has eight sides of 1.90 m and a tip 1.60 m high. Eight triangles are cut and"
        + " laid on the ground, tip to tip. How much of the full turn do they fill?";
  }

  @Override
  public Drawing picture() {
    FrameMeasures m = frame().measures();
    double hip = m.hipEdge();
    Canvas canvas = Canvas.fit(-hip, -hip, hip, hip, 14, 300);
    List<double[]> turn = new ArrayList<>();
    double gap = 2 * Math.PI - m.developedAngle();
    for (int i = 0; i <= SIDES; i++) {
      double angle = gap / 2 + i * m.apexAngle();
      turn.add(new double[] {hip * Math.cos(angle), hip * Math.sin(angle)});
    }
    for (int i = 0; i < SIDES; i++) {
      canvas.path(
          List.of(new double[] {0, 0}, turn.get(i), turn.get(i + 1)), true, Ink.CUT, Shade.LIGHT);
    }
    canvas.label(hip / 2, 0, "gap");
    return canvas.drawing(
        "lesson-apex-angles",
        "Eight faces laid flat around their tip",
        "Eight triangular faces laid flat around one point. They leave a gap; closing it lifts the"
            + " point into a tip.");
  }

  @Override
  public Derivation worked() {
    Derivation all =
        Worked.of(
            "geometry.frame.measures",
            "Apex angles of the faces",
            steps -> frame().measures(steps));
    return Worked.leadingTo(all, "sigma");
  }

  @Override
  public String answer() {
    FrameMeasures m = frame().measures();
    return "They fill "
        + degrees(m.developedAngle()).shownAnswer()
        + " of the turn and leave a gap of "
        + degrees(2 * Math.PI - m.developedAngle()).shownAnswer()
        + ". The flatter the frame, the smaller the gap; a full turn would be a flat floor. A round"
        + " tent of the same poles, a cone, would fill "
        + degrees(m.coneAngle()).shownAnswer()
        + ": the straight sides of panels always fall short of the arc.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "A base of six sides of 2 m has poles of 3 m. What is the angle at the tip of a face?",
            Math.toDegrees(sixSides().apexAngle()),
            "°",
            4),
        new Exercise(
            "How much of the full turn do those six faces fill?",
            Math.toDegrees(sixSides().developedAngle()),
            "°",
            4),
        new Exercise(
            "A cone passes through the same tip and base corners. How much of the full turn does"
                + " its flat sector fill?",
            Math.toDegrees(sixSides().coneAngle()),
            "°",
            4));
  }

  private static RegularPyramid frame() {
    return RegularPyramid.ofBaseSideAndHeight(SIDES, SIDE, HEIGHT);
  }

  private static FrameMeasures sixSides() {
    return RegularPyramid.ofBaseSideAndHeight(6, 2, Math.sqrt(5)).measures();
  }

  private static Exercise degrees(double radians) {
    return new Exercise("", Math.toDegrees(radians), "°", 4);
  }
}
