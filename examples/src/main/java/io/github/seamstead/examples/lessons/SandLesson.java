package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.BulkingCurve;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.water.Moisture;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;

/** Lesson 10: how much sand makes a clay soil into a floor. */
public final class SandLesson implements Lesson {

  private static final double CLAY = 0.42;
  private static final ClayBand BAND = ClayBand.of(0.12, 0.18);

  /** Creates the lesson. */
  public SandLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new SandLesson().text());
  }

  @Override
  public String title() {
    return "Parts of sand";
  }

  @Override
  public String question() {
    return "A pit soil is 42 % clay. For the floor, clay should be 15 % of the dry mass. How much"
        + " washed sand goes to one part of soil, and how many buckets?";
  }

  @Override
  public Drawing picture() {
    ClayBlend blend = blend(CLAY);
    double sand = blend.sandPerSoilDryMass();
    double whole = 1 + sand;
    Canvas canvas = Canvas.fit(0, -0.4, whole, 0.8, 12, 130);
    canvas.path(bar(0, CLAY), true, Ink.CUT, Shade.MIDDLE);
    canvas.path(bar(CLAY, 1), true, Ink.CUT, Shade.HATCH);
    canvas.path(bar(1, whole), true, Ink.CUT, Shade.DOTS);
    canvas.label(CLAY / 2, 0.4, "clay");
    canvas.label(0.5, -0.15, "soil: 1 part");
    canvas.label(1 + sand / 2, -0.15, "sand: r parts");
    return canvas.drawing(
        "lesson-sand",
        "Soil and sand by dry mass",
        "One part of soil and r parts of sand as a bar. The clay at its left end must be the wanted"
            + " share of the whole bar.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "materials.mix.clay_blend",
        "Sand for a clay soil",
        steps ->
            ClayBlend.of(
                soil(CLAY), MixComponent.washedSand("sand"), BAND, BucketRounding.HALF, steps));
  }

  @Override
  public String answer() {
    ClayBlend blend = blend(CLAY);
    return parts("", blend.sandPerSoilDryMass()).shownAnswer()
        + " of sand to one of soil by dry mass. In buckets: "
        + blend.rounded().proportion(Basis.LOOSE_VOLUME).text()
        + ". Always say what is counted, mass or buckets, dry or damp.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        parts(
            "A soil with 30 % clay is to come to 15 %. How many parts of sand by dry mass?",
            blend(0.30).sandPerSoilDryMass()),
        new Exercise(
            "Damp sand stands 125 mm high in a tin; flooded, 100 mm. By how many per cent does damp"
                + " sand bulk?",
            100 * BulkingCurve.measured(0.125, 0.100, Steps.none()),
            "%",
            3),
        new Exercise(
            "A load of 104 kg with 4 % moisture is to have 12 %. How much water goes in?",
            Moisture.waterToAdd(104, 0.04, 0.12, Steps.none()), "kg", 3));
  }

  private static ClayBlend blend(double clay) {
    return ClayBlend.of(soil(clay), MixComponent.washedSand("sand"), BAND, BucketRounding.HALF);
  }

  private static MixComponent soil(double clay) {
    return MixComponent.claySoil("pit soil", new Uncertain(clay, 0.02));
  }

  private static Exercise parts(String question, double ratio) {
    return new Exercise(question, ratio, "parts", 3);
  }

  private static List<double[]> bar(double from, double to) {
    return List.of(
        new double[] {from, 0},
        new double[] {to, 0},
        new double[] {to, 0.8},
        new double[] {from, 0.8});
  }
}
