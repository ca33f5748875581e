package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.Mixer;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.List;

/** Lesson 11: from a layer in millimetres to the heap to order. */
public final class OrderLesson implements Lesson {

  private static final int SIDES = 8;
  private static final double SIDE = 1.9;
  private static final FloorMix MIX = FloorMix.single("earth mix", 1900, 1300, 0.05, 0.01);
  private static final Mixer MIXER = Mixer.of(0.09, 160, 0.01);

  /** Creates the lesson. */
  public OrderLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new OrderLesson().text());
  }

  @Override
  public String title() {
    return "From millimetres to heaps";
  }

  @Override
  public String question() {
    return "The floor of lesson 1 gets a dry pack of 50 mm. Packed it holds 1900 kg of dry earth in"
        + " a cubic metre, tipped from the barrow only 1300 kg. How large a heap is it, and"
        + " how many mixer loads?";
  }

  @Override
  public Drawing picture() {
    double loose = 1900.0 / 1300;
    Canvas canvas = Canvas.fit(0, -0.3, 3.4, loose, 12, 190);
    canvas.path(box(0, loose), true, Ink.CUT, Shade.DOTS);
    canvas.path(box(2, 1), true, Ink.CUT, Shade.HATCH);
    canvas.arrow(1.5, 0.5, 1.9, 0.5, Ink.THIN);
    canvas.label(0.6, -0.16, "loose");
    canvas.label(2.6, -0.16, "packed");
    return canvas.drawing(
        "lesson-heap",
        "Loose and packed earth of the same dry mass",
        "The same dry earth twice: loose as a heap on the left, packed into the floor on the right."
            + " Mass stays, volume does not.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "materials.floor.loose-volume",
        "Heap and loads for a layer",
        steps -> {
          steps.section("The heap");
          dryPack().looseVolume(steps);
          steps.section("The loads");
          loads().likelyCount(steps);
        });
  }

  @Override
  public String answer() {
    return "A heap of "
        + new Exercise("", dryPack().looseVolume(Steps.none()), "m³", 3).shownAnswer()
        + ", mixed in "
        + loads().likelyCount()
        + " loads. An order by packed volume would be a third short.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "How many kilograms of dry earth are in that layer?",
            dryPack().dryMass().likely(),
            "kg",
            4),
        new Exercise(
            "How large is the heap for 30 m² of the same dry pack?",
            layer(new double[] {0, 6, 6, 0}, new double[] {0, 0, 5, 5}).looseVolume(Steps.none()),
            "m³",
            3),
        new Exercise(
            "A trailer holds 1 m³ and may carry 650 kg; the damp heap weighs 1365 kg in a cubic"
                + " metre. How many trips for 2.2 m³?",
            new Trailer(1, 650).trips(2.2, 1365, 0.01, Steps.none()),
            "trips",
            2));
  }

  private static EarthQuantity dryPack() {
    return quantity(Footprint.regular(SIDES, SIDE));
  }

  private static EarthQuantity layer(double[] x, double[] y) {
    return quantity(Footprint.of(x, y));
  }

  private static EarthQuantity quantity(Footprint footprint) {
    return BuildUp.level(footprint, List.of(EarthLayer.dryPack(MIX))).earth().get(0);
  }

  private static BatchPlan loads() {
    return BatchPlan.of(dryPack(), MIXER);
  }

  private static List<double[]> box(double from, double height) {
    return List.of(
        new double[] {from, 0},
        new double[] {from + 1.2, 0},
        new double[] {from + 1.2, height},
        new double[] {from, height});
  }
}
