package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPolygon;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import java.util.ArrayList;
import java.util.List;

/** Lesson 1: the area of a regular polygon from its side. */
public final class PolygonLesson implements Lesson {

  private static final int SIDES = 8;
  private static final double SIDE = 1.9;

  /** Creates the lesson. */
  public PolygonLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new PolygonLesson().text());
  }

  @Override
  public String title() {
    return "The floor of a many-sided shelter";
  }

  @Override
  public String question() {
    return "A shelter stands on eight equal sides of 1.90 m. How large is its floor?";
  }

  @Override
  public Drawing picture() {
    RegularPolygon base = new RegularPolygon(SIDES, SIDE);
    double radius = base.circumradius();
    Canvas canvas = Canvas.fit(-radius, -radius, radius, radius, 26, 300);
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / SIDES - Math.PI / 2;
      corners.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
    }
    canvas.path(corners, true, Ink.CUT, Shade.NONE);
    double[] a = corners.get(SIDES - 1);
    double[] b = corners.get(0);
    canvas.path(List.of(new double[] {0, 0}, a, b), true, Ink.SEAM, Shade.LIGHT);
    canvas.line(0, 0, 0, -base.inradius(), Ink.FOLD);
    canvas.label(0.28, -base.inradius() / 2, "r");
    canvas.label(0, -base.inradius() - 0.16, "a");
    canvas.label(b[0] / 2 + 0.22, b[1] / 2 + 0.1, "R");
    return canvas.drawing(
        "lesson-polygon",
        "Regular octagon",
        "An octagon cut into triangles from its centre: a is a side, r reaches to the middle of a"
            + " side, R to a corner.");
  }

  @Override
  public Derivation worked() {
    StepRecorder steps = new StepRecorder();
    Footprint.regularArea(SIDES, SIDE, steps);
    return steps.derivation("materials.floor.regular-area", "Area of a regular polygon");
  }

  @Override
  public String answer() {
    return "The floor has "
        + new Exercise("", new RegularPolygon(SIDES, SIDE).area(), "m²", 4).shownAnswer()
        + ". Every order for gravel, sand and earth starts from this number.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "A six-sided hut has sides of 2 m. What is its floor area?",
            new RegularPolygon(6, 2).area(),
            "m²",
            4),
        new Exercise(
            "How far is it from the centre of the octagon above to a corner?",
            new RegularPolygon(SIDES, SIDE).circumradius(),
            "m",
            4),
        new Exercise(
            "A ten-sided frame measures 6 m across flats. How long is a side?",
            RegularPolygon.ofInradius(10, 3).side(),
            "m",
            4));
  }
}
