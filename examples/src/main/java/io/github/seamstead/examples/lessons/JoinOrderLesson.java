package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanOptions;
import io.github.seamstead.assembly.merge.TreeLayout;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.ArrayList;
import java.util.List;

/** Lesson 8: the order of joining, and what it costs the crew. */
public final class JoinOrderLesson implements Lesson {

  private static final int PIECES = 10;

  /** Creates the lesson. */
  public JoinOrderLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new JoinOrderLesson().text());
  }

  @Override
  public String title() {
    return "The order of joining";
  }

  @Override
  public String question() {
    return "Ten equal pieces of 1 kg are joined into one strip. Each joint takes in hand all that"
        + " is already joined on both sides. Joining in pairs, then the pairs in pairs,"
        + " handles 36 kg over all joints. Can it be less?";
  }

  @Override
  public Drawing picture() {
    TreeLayout tree = TreeLayout.of(best(PIECES));
    Canvas canvas = Canvas.fit(0, 0, tree.width(), tree.height(), 24, 260);
    for (TreeLayout.Node node : tree.nodes()) {
      if (node.parent().isPresent()) {
        TreeLayout.Node up = tree.nodes().get(node.parent().getAsInt());
        canvas.line(node.x(), node.y(), up.x(), up.y(), Ink.THIN);
      }
    }
    for (TreeLayout.Node node : tree.nodes()) {
      canvas.dot(node.x(), node.y(), 8, Ink.CUT, Shade.PAPER);
      canvas.label(node.x(), node.y(), Integer.toString((int) Math.round(node.massKg())));
    }
    return canvas.drawing(
        "lesson-join-order",
        "Tree of the joins",
        "Ten pieces below, the whole strip on top. Each knot is a join; the number is the mass in"
            + " hand there. The sum of all joins is the handled mass.");
  }

  @Override
  public Derivation worked() {
    return Worked.of(
        "assembly.merge.handledmass",
        "Handled mass of the best order",
        steps -> HandledMass.of(best(PIECES), steps));
  }

  @Override
  public String answer() {
    return "Yes: "
        + kilograms("", HandledMass.of(best(PIECES))).shownAnswer()
        + ". The fifth pair goes to a four at once and makes six; in the other order it waits and"
        + " is joined to the eight at the very end. Piece after piece would be "
        + kilograms("", onePieceAfterAnother(PIECES)).shownAnswer()
        + ".";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        kilograms("What is the least for eight such pieces?", HandledMass.of(best(8))),
        kilograms("And for six?", HandledMass.of(best(6))),
        kilograms(
            "Ten pieces become a ring: the last joint has the whole in hand once more. How much is"
                + " it then?",
            HandledMass.of(
                JoinPlanner.plan(
                        PieceRing.ofEqualPieces(PIECES, 1, 1),
                        PlanOptions.least(Objective.HANDLED_MASS))
                    .orThrow())));
  }

  private static MergePlan best(int pieces) {
    List<Piece> row = new ArrayList<>();
    List<Double> joints = new ArrayList<>();
    for (int i = 1; i <= pieces; i++) {
      row.add(Piece.of(Integer.toString(i), Load.ofMass(1)));
      if (i > 1) {
        joints.add(1.0);
      }
    }
    return JoinPlanner.plan(PieceRing.line(row, joints), PlanOptions.least(Objective.HANDLED_MASS))
        .orThrow();
  }

  private static double onePieceAfterAnother(int pieces) {
    double sum = 0;
    for (int inHand = 2; inHand <= pieces; inHand++) {
      sum += inHand;
    }
    return sum;
  }

  private static Exercise kilograms(String question, double mass) {
    return new Exercise(question, mass, "kg", 3);
  }
}
