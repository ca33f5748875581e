package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.soil.LinearShrinkage;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.List;

/** Lesson 12: shrinkage, cracks and the slip that fills them. */
public final class DryingLesson implements Lesson {

  private static final double SHRINKAGE = 0.006;
  private static final double RESTRAINT = 0.8;
  private static final double STRETCH = 0.0003;
  private static final double AREA = 17.43;
  private static final double COAT = 0.025;
  private static final double SKIM = 0.001;

  /** Creates the lesson. */
  public DryingLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new DryingLesson().text());
  }

  @Override
  public String title() {
    return "Cracks, and slip to fill them";
  }

  @Override
  public String question() {
    return "A coat of 25 mm shrinks by 0.6 % as it dries. The rough base holds back 80 % of that;"
        + " the coat stretches by 0.03 % before it cracks. How wide are the cracks in a"
        + " metre, and how much slip fills them on 17.43 m² with a skim of 1 mm over all?";
  }

  @Override
  public Drawing picture() {
    Canvas canvas = Canvas.fit(0, 0, 4, 1, 12, 130);
    canvas.path(box(0, 4, 0, 0.35), true, Ink.CUT, Shade.HATCH);
    for (int i = 0; i < 4; i++) {
      canvas.path(box(i + 0.04, i + 0.96, 0.35, 0.8), true, Ink.CUT, Shade.DOTS);
    }
    canvas.label(2, 0.92, "cracks between the pieces of the coat");
    return canvas.drawing(
        "lesson-cracks",
        "Cracked coat on its base",
        "A cut through the floor: the dotted coat has dried and shrunk on the hatched base, and"
            + " cracks stand open between its pieces.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "materials.drying.slip",
        "Cracks and slip",
        steps -> {
          steps.section("The cracks");
          double width = Cracking.widthPerMetre(SHRINKAGE, RESTRAINT, STRETCH, steps);
          steps.section("The slip");
          double share =
              steps
                  .step("a", "share of the floor that is cracks, in two directions")
                  .formula("2 * w_c")
                  .with("w_c", width, "m/m")
                  .gives(2 * width, "");
          SlipRepair.volume(share, AREA, COAT, SKIM, steps);
        });
  }

  @Override
  public String answer() {
    double width = Cracking.widthPerMetre(SHRINKAGE, RESTRAINT, STRETCH, Steps.none());
    double slip = SlipRepair.volume(2 * width, AREA, COAT, SKIM, Steps.none());
    return new Exercise("", 1000 * width, "mm in a metre", 3).shownAnswer()
        + ", and "
        + new Exercise("", 1000 * slip, "litres of slip", 3).shownAnswer()
        + ". Above "
        + new Exercise("", 1000 * Cracking.CHANGE_THE_MIX, "mm in a metre", 2).shownAnswer()
        + " more sand or straw is better than more slip: try the mix again.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "A mix shrinks by 1 %; the base holds back 60 %, the coat stretches by 0.1 %. How many"
                + " millimetres of cracks are in a metre?",
            1000 * Cracking.widthPerMetre(0.01, 0.6, 0.001, Steps.none()), "mm", 3),
        new Exercise(
            "A bar of 600 mm dries and leaves a gap of 12 mm in its mould. What is its linear"
                + " shrinkage?",
            100 * LinearShrinkage.ofGap(0.6, 0.012).ratio(),
            "%",
            3),
        new Exercise(
            "How many litres of slip for a skim of 2 mm on 20 m² without cracks, with 15 % waste?",
            1000 * SlipRepair.volume(0, 20, COAT, 0.002, Steps.none()), "L", 3));
  }

  private static List<double[]> box(double left, double right, double low, double high) {
    return List.of(
        new double[] {left, low},
        new double[] {right, low},
        new double[] {right, high},
        new double[] {left, high});
  }
}
