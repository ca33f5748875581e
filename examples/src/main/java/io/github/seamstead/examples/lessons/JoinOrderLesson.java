package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
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
import java.util.ArrayList;
import java.util.List;

/** The order of joining, and what it costs the crew. */
final class JoinOrderLesson {

  private JoinOrderLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.JOINING)
        .aim("Add up a tree of joins in two ways, joint by joint and piece by piece.", 45)
        .needs("powers of two", "adding up a table")
        .materials("ten equal cards with paper clips", "paper for a table")
        .scene(
            "{N} equal pieces of cloth are joined into one strip. At each joint the crew has in"
                + " hand all that is joined so far on both sides. Some orders are heavy work, some"
                + " light.")
        .figure(JoinOrderLesson::draw)
        .because("", "A piece is in hand once for every joint on its way to the whole: its depth.")
        .because("", "So the mass in hand, over all joints, is mass times depth over all pieces.")
        .because("", "Depths nearly equal are best (lesson 14 proves it): k or k + 1.")
        .because("s = 2 * (N - 2^k)", "pieces that need k + 1 joints; the others need k")
        .because("W = m * (k * (N - s) + (k + 1) * s)", "mass times depth, added up")
        .problem(JoinOrderLesson::least)
        .problem(JoinOrderLesson::oneByOne)
        .problem(JoinOrderLesson::ring)
        .why(
            "Why do both ways of adding give the same?",
            "Each counts every piece once for every joint that it lies in.",
            "Both start from the same number of pieces.")
        .why(
            "Why is piece after piece the worst order?",
            "The first piece lies in every joint that follows.",
            "It has more joints than pairing does.")
        .build(
            "Clip ten cards in the order of the figure. After each clip write down how many cards"
                + " you have in hand; add up. Then clip card after card and add up again.")
        .check(
            "Any order of ten cards has nine clips. A sum below {W} per kilogram of card means a"
                + " clip was forgotten.")
        .onSite("Fewer kilograms in hand, fewer hours and backs: {W} at best.");
  }

  private static double[] pieces(Sheet s) {
    int n = s.count("N", "pieces", 10, 5, 15);
    int k = 31 - Integer.numberOfLeadingZeros(n);
    s.printed("k", "power of two that fits into N", "", 0, k);
    double m = s.given("m", "mass of a piece", "kg", 1, 1, 0.5, 2);
    return new double[] {n, m};
  }

  private static void best(Sheet s, double[] g) {
    s.step("s", "pieces that need one joint more", "2 * (N - 2^k)", "");
    s.step(
        "W",
        "mass in hand over all joints",
        "m * (k * (N - s) + (k + 1) * s)",
        g[1] * HandledMass.of(row((int) g[0])),
        "kg");
  }

  private static Task least(Sheet s) {
    double[] g = pieces(s);
    s.ask(
        "{N} equal pieces of {m} are joined into one strip, in the best order. 2 fits {k} times as"
            + " a factor into numbers up to {N}. How many kilograms are in hand over all joints?");
    best(s, g);
    int k = 31 - Integer.numberOfLeadingZeros((int) g[0]);
    s.estimate("Each piece is in hand k or k + 1 times.", k * g[0] * g[1], (k + 1) * g[0] * g[1]);
    s.slip("Piece was joined to strip after piece.", "m * (N * (N + 1) / 2 - 1)");
    s.slip("Only the last joint was counted.", "m * N");
    return s.task(3);
  }

  private static Task oneByOne(Sheet s) {
    int n = s.count("N", "pieces", 10, 5, 15);
    double m = s.given("m", "mass of a piece", "kg", 1, 1, 0.5, 2);
    s.ask(
        "{N} equal pieces of {m} are joined one after another: the first joint has two pieces in"
            + " hand, the next three, and so on. How many kilograms over all joints?");
    s.step("S", "1 + 2 + … + N", "N * (N + 1) / 2", "");
    double w = s.step("W", "without the first, which no joint has alone", "m * (S - 1)", "kg");
    s.estimate("About half of N times N pieces.", 0.4 * n * n * m, Math.max(w, 0.6 * n * n * m));
    s.slip("The lone first piece was counted as a joint.", "m * S");
    s.slip("Every joint was given the whole.", "m * N * (N - 1)");
    return s.task(4);
  }

  private static Task ring(Sheet s) {
    double[] g = pieces(s);
    s.ask(
        "{N} equal pieces of {m} become a ring: they are joined into a strip in the best order,"
            + " where 2 fits {k} times as a factor into numbers up to {N}, and the last joint has"
            + " the whole in hand once more. How many kilograms over all joints?");
    best(s, g);
    MergePlan plan =
        JoinPlanner.plan(
                PieceRing.ofEqualPieces((int) g[0], 1, 1),
                PlanOptions.least(Objective.HANDLED_MASS))
            .orThrow();
    double w =
        s.step("V", "with the closing joint", "W + m * N", g[1] * HandledMass.of(plan), "kg");
    s.estimate("One whole more than the strip.", w - g[0] * g[1] * 0.5, w + g[0] * g[1] * 0.5);
    s.slip("The closing joint was forgotten.", "W");
    return s.task(3);
  }

  private static MergePlan row(int pieces) {
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

  private static Drawing draw(Task t) {
    TreeLayout tree = TreeLayout.of(row((int) t.value("N")));
    Canvas canvas = Canvas.fit(0, 0, tree.width(), tree.height(), 24, 260);
    for (TreeLayout.Node node : tree.nodes()) {
      if (node.parent().isPresent()) {
        TreeLayout.Node up = tree.nodes().get(node.parent().get());
        canvas.line(node.x(), node.y(), up.x(), up.y(), Ink.THIN);
      }
    }
    for (TreeLayout.Node node : tree.nodes()) {
      canvas.dot(node.x(), node.y(), 8, Ink.CUT, Shade.PAPER);
      canvas.label(node.x(), node.y(), Integer.toString((int) Math.round(node.mass())));
    }
    return canvas.drawing(
        "lesson-join-order",
        "Tree of the joins",
        t.text("N")
            + " pieces below, the whole strip on top. Each knot above is a joint; its number"
            + " is the mass in hand there, in pieces. Their sum is the mass in hand over all"
            + " joints.");
  }
}
