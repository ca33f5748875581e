package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.BarCutting;
import io.github.seamstead.geometry.frame.BarPiece;
import io.github.seamstead.geometry.frame.BarPlan;
import io.github.seamstead.geometry.frame.BarStock;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;

/** Lesson 5: cutting poles from bars, and what is wasted. */
public final class BarLesson implements Lesson {

  private static final double KERF = 0.003;
  private static final double BAR = 6;
  private static final List<BarPiece> PIECES =
      List.of(new BarPiece("pole", 2.85, 8), new BarPiece("ring", 1.42, 8));

  /** Creates the lesson. */
  public BarLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new BarLesson().text());
  }

  @Override
  public String title() {
    return "Poles from bars";
  }

  @Override
  public String question() {
    return "Eight poles of 2.85 m and eight ring pieces of 1.42 m are cut from bars of 6 m; a saw"
        + " cut takes 3 mm. How many bars, and how much is waste?";
  }

  @Override
  public Drawing picture() {
    BarPlan plan = plan(PIECES);
    Canvas canvas = Canvas.fit(0, -plan.bars().size(), BAR, 0, 14, 40 + 34.0 * plan.bars().size());
    double y = 0;
    for (BarPlan.CutBar bar : plan.bars()) {
      y -= 1;
      canvas.path(box(0, y, BAR), true, Ink.THIN, Shade.HATCH);
      double x = 0;
      for (BarPiece piece : bar.pieces()) {
        for (int i = 0; i < piece.count(); i++) {
          canvas.path(box(x, y, x + piece.length()), true, Ink.CUT, Shade.PALE);
          canvas.label(x + piece.length() / 2, y + 0.5, piece.name());
          x += piece.length() + KERF;
        }
      }
    }
    return canvas.drawing(
        "lesson-bars",
        "Cutting patterns of the bars",
        "Each row is a cutting pattern of one bar; what is hatched is left over. "
            + patterns(plan));
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "geometry.frame.bars",
        "Bars for poles and ring",
        steps ->
            BarCutting.plan(
                PIECES,
                List.of(BarStock.unlimited("bar", BAR)),
                KERF,
                Work.of(Budget.ofWork(20_000), 1),
                steps));
  }

  @Override
  public String answer() {
    BarPlan plan = plan(PIECES);
    return plan.barCount()
        + " bars; "
        + new Exercise("", 100 * plan.wasteRatio(), "%", 3).shownAnswer()
        + " of the metal is left over or sawdust. All pieces together are longer than five bars, so"
        + " no cleverer cutting does with fewer.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "How many bars of 6 m do ten poles of 2.9 m take?",
            plan(List.of(new BarPiece("pole", 2.9, 10))).barCount(),
            "bars",
            2),
        new Exercise(
            "How many per cent of those bars are waste?",
            100 * plan(List.of(new BarPiece("pole", 2.9, 10))).wasteRatio(),
            "%",
            3),
        new Exercise(
            "And how many bars if the poles are 3 m long?",
            plan(List.of(new BarPiece("pole", 3, 10))).barCount(),
            "bars",
            2));
  }

  private static BarPlan plan(List<BarPiece> pieces) {
    return BarCutting.plan(pieces, List.of(BarStock.unlimited("bar", BAR)), KERF);
  }

  private static String patterns(BarPlan plan) {
    return plan.bars().size() + " patterns for " + plan.barCount() + " bars.";
  }

  private static List<double[]> box(double from, double y, double to) {
    return List.of(
        new double[] {from, y + 0.12},
        new double[] {to, y + 0.12},
        new double[] {to, y + 0.88},
        new double[] {from, y + 0.88});
  }
}
