package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.soil.Stokes;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;

/** Lesson 9: the settling jar and the law of Stokes. */
public final class JarLesson implements Lesson {

  private static final double DEPTH = 0.1;
  private static final double SILT = 20e-6;
  private static final double GRAINS = 2650;

  /** Creates the lesson. */
  public JarLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new JarLesson().text());
  }

  @Override
  public String title() {
    return "Reading the settling jar";
  }

  @Override
  public String question() {
    return "Soil is shaken in a jar of water at 20 °C. How long does a grain of silt, 0.020 mm"
        + " across, take to sink 10 cm?";
  }

  @Override
  public Drawing picture() {
    Canvas canvas = Canvas.fit(-0.6, 0, 1.4, 1.6, 12, 260);
    canvas.path(
        List.of(
            new double[] {-0.5, 1.55},
            new double[] {-0.5, 0},
            new double[] {0.5, 0},
            new double[] {0.5, 1.55}),
        false,
        Ink.CUT,
        Shade.NONE);
    canvas.path(band(0, 0.35), true, Ink.THIN, Shade.DOTS);
    canvas.path(band(0.35, 0.6), true, Ink.THIN, Shade.HATCH);
    canvas.path(band(0.6, 0.7), true, Ink.THIN, Shade.MIDDLE);
    canvas.line(-0.5, 1.4, 0.5, 1.4, Ink.FOLD);
    canvas.arrow(0, 1.4, 0, 0.72, Ink.THIN);
    canvas.label(0.12, 1.05, "h");
    canvas.label(0.8, 0.17, "sand");
    canvas.label(0.8, 0.47, "silt");
    canvas.label(0.8, 0.68, "clay");
    canvas.label(0.82, 1.1, "water");
    return canvas.drawing(
        "lesson-jar",
        "Settling jar",
        "A jar of water over three layers: sand at the bottom, silt above it, clay on top. Grains"
            + " sink through the depth h, large ones first.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "materials.soil.settling_time",
        "Time for silt to settle",
        steps -> Stokes.settlingTime(DEPTH, SILT, 20, GRAINS, steps));
  }

  @Override
  public String answer() {
    return "About "
        + new Exercise("", Stokes.settlingTime(DEPTH, SILT, 20, GRAINS) / 60, "min", 2)
            .shownAnswer()
        + ". The time goes with the square of the grain: clay, ten times finer, needs a hundred"
        + " times as long, most of a day. A mark made too early counts silt as clay.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "How many hours does clay of 0.002 mm take for the same 10 cm at 20 °C?",
            Stokes.settlingTime(DEPTH, 2e-6, 20, GRAINS) / 3600,
            "h",
            3),
        new Exercise(
            "In water of 10 °C, how many minutes does the silt of 0.020 mm take?",
            Stokes.settlingTime(DEPTH, SILT, 10, GRAINS) / 60,
            "min",
            3),
        new Exercise(
            "Which is the smallest grain that has sunk 10 cm after one minute at 20 °C?",
            1000 * Stokes.smallestSettled(DEPTH, 60, 20, GRAINS),
            "mm",
            3));
  }

  private static List<double[]> band(double from, double to) {
    return List.of(
        new double[] {-0.5, from},
        new double[] {0.5, from},
        new double[] {0.5, to},
        new double[] {-0.5, to});
  }
}
