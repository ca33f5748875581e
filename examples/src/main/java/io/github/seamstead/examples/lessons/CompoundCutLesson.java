package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.CompoundCut;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.ArrayList;
import java.util.List;

/** Lesson 4: the saw setting for a ring of leaning boards. */
public final class CompoundCutLesson implements Lesson {

  private static final int SIDES = 8;
  private static final double SLOPE = Math.toRadians(35);

  /** Creates the lesson. */
  public CompoundCutLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new CompoundCutLesson().text());
  }

  @Override
  public String title() {
    return "Two angles on the saw";
  }

  @Override
  public String question() {
    return "A ring of eight boards lies against the sloping faces, which rise at 35°. How are mitre"
        + " and tilt of the saw set so that the boards meet without a gap?";
  }

  @Override
  public Drawing picture() {
    Canvas canvas = Canvas.fit(-1.25, -1.25, 1.25, 1.25, 10, 260);
    double inner = 0.72;
    for (int i = 0; i < SIDES; i++) {
      double a = 2 * Math.PI * (i - 0.5) / SIDES;
      double b = 2 * Math.PI * (i + 0.5) / SIDES;
      List<double[]> board = new ArrayList<>();
      board.add(new double[] {Math.cos(a), Math.sin(a)});
      board.add(new double[] {Math.cos(b), Math.sin(b)});
      board.add(new double[] {inner * Math.cos(b), inner * Math.sin(b)});
      board.add(new double[] {inner * Math.cos(a), inner * Math.sin(a)});
      canvas.path(board, true, Ink.CUT, i == 0 ? Shade.LIGHT : Shade.NONE);
    }
    return canvas.drawing(
        "lesson-compound-cut",
        "Ring of eight boards from above",
        "A ring of eight boards seen from above, one of them shaded. Each leans inwards, so its"
            + " ends are cut at a mitre and with the blade tilted.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "geometry.frame.ringcut",
        "Compound cut of a ring",
        steps -> CompoundCut.ringCorner(SIDES, SLOPE, steps));
  }

  @Override
  public String answer() {
    CompoundCut cut = CompoundCut.ringCorner(SIDES, SLOPE);
    return "Mitre "
        + degrees("", cut.mitre()).shownAnswer()
        + ", tilt "
        + degrees("", cut.tilt()).shownAnswer()
        + ". Cut two offcuts first and hold them together: a wrong tilt shows at once.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        degrees(
            "A level ring of six flat boards: what mitre?", CompoundCut.ringCorner(6, 0).mitre()),
        degrees(
            "Ten boards lean at 45°. What is the tilt?",
            CompoundCut.ringCorner(10, Math.PI / 4).tilt()),
        degrees(
            "Four boards stand upright as a box (slope 90°). What is the tilt?",
            CompoundCut.ringCorner(4, Math.PI / 2).tilt()));
  }

  private static Exercise degrees(String question, double radians) {
    return new Exercise(question, Math.toDegrees(radians), "°", 4);
  }
}
