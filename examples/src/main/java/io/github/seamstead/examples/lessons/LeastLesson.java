package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarStock;
import java.util.List;

/** What least means, and how it is proved. */
final class LeastLesson {

  private LeastLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.LEAST)
        .aim("Prove that nothing better exists: by a swap, and by a bound.", 90)
        .needs("lesson 8: mass times depth", "lesson 5: bars", "inequalities")
        .materials("the ten cards of lesson 8", "paper strips of lesson 5")
        .scene(
            "Lesson 8 handles 34 kg with ten pieces of 1 kg. Nobody has tried all orders, and yet"
                + " no order does with less. Here is why: a tree with a very deep pair and a"
                + " shallow piece can always be bettered.")
        .figure(LeastLesson::draw)
        .because(
            "",
            "Let two pieces joined first lie d2 deep, and another piece d1 deep, at least two"
                + " less.")
        .because(
            "",
            "Swap: the pair becomes one piece's place, the other piece's place becomes the pair's.")
        .because("a = d1 + 2 * d2", "depths of the three before")
        .because("b = 2 * (d1 + 1) + (d2 - 1)", "after: two at d1 + 1, one at d2 − 1")
        .because(
            "a - b = d2 - d1 - 1",
            "more than 0: bettered. So in a best tree all depths are k or k + 1, and that fixes the"
                + " sum: for ten pieces 6 · 3 + 4 · 4 = 34.")
        .problem(LeastLesson::swap)
        .problem(LeastLesson::bound)
        .why(
            "Why is trying many orders no proof?",
            "The one not tried may be better; the swap covers every tree at once.",
            "Computers round.")
        .why(
            "A bound says at least three bars and a plan needs four. Is four best?",
            "Not proved: the bound may be out of reach, or the plan poor. One must look at the"
                + " cases.",
            "Yes, a plan is always best if it is one above the bound.")
        .build(
            "Clip the ten cards one after another. Take the first two apart from the strip, put"
                + " their place to use as in the swap, and add up again. Repeat until no swap"
                + " helps.")
        .check(
            "From card after card to the best tree the sum must fall at every swap and stop at 34"
                + " for ten pieces of 1 kg. If it stops above, a pair two deeper than another piece"
                + " was overlooked.")
        .onSite(
            "The model's five poles of 363 mm and five ring pieces of 232 mm need four sticks of 1"
                + " m, though the bound says three: a stick holds two poles and one ring piece, or"
                + " one pole and two, or four ring pieces; three sticks with five poles leave room"
                + " for four ring pieces only.");
  }

  private static Task swap(Sheet s) {
    double m = s.given("m", "mass of a piece", "kg", 1, 1, 0.5, 2);
    int n = s.count("N", "pieces", 10, 7, 16);
    int deep = n - 1;
    s.printed("d2", "depth of the first two", "", 0, deep);
    double d1 = s.count("d1", "depth of the last piece", 1, 1, 3);
    s.printed("W", "mass in hand before", "kg", 1, m * (n * (n + 1) / 2.0 - 1));
    s.ask(
        "{N} pieces of {m} are joined one after another; that has {W} in hand over all joints. The"
            + " first two pieces lie {d2} deep. They change places with a piece {d1} deep, as in"
            + " the swap. How much is in hand afterwards?");
    s.step("a", "depths of the three before", "d1 + 2 * d2", "");
    s.step("b", "depths of the three after", "2 * (d1 + 1) + (d2 - 1)", "");
    s.step("V", "mass in hand afterwards", "W - m * (a - b)", "kg");
    s.estimate(
        "Less, by fewer pieces than the first ones are deep.",
        m * (n * (n + 1) / 2.0 - 1 - deep),
        m * (n * (n + 1) / 2.0 - 1));
    s.slip("The saving was added.", "W + m * (a - b)");
    s.slip("The mass of a piece was forgotten.", "W - 2 * (a - b) * m");
    if (d1 > deep - 2) {
      throw new IllegalStateException("no swap to make");
    }
    return s.task(4);
  }

  private static Task bound(Sheet s) {
    double m = s.count("m", "poles", Shelter.SIDES, 5, 9);
    double l = s.given("l", "a pole", "mm", 0, 363, 300, 420);
    double r = s.given("r", "a ring piece", "mm", 0, 232, 180, 280);
    double bar = s.given("L", "a bar", "mm", 0, 1000, 1000, 1200);
    double k = s.given("k", "saw cut", "mm", 0, 1, 1, 3);
    s.ask(
        "{m} poles of {l} and equally many ring pieces of {r} are cut from bars of {L}; a cut takes"
            + " {k}. Without trying plans: fewer than how many bars can it not be?");
    s.step("S", "all pieces, each with a cut", "m * (l + k) + m * (r + k)", "mm");
    s.step("T", "a bar, with the cut that its last piece spares", "L + k", "mm");
    double bound = s.step("B", "bound, rounded up", "ceil(S / T)", "");
    int plan =
        BarCutting.plan(
                List.of(
                    new BarPiece("pole", l / 1000, (int) m),
                    new BarPiece("ring", r / 1000, (int) m)),
                List.of(BarStock.unlimited("bar", bar / 1000)),
                k / 1000)
            .barCount();
    if (plan < bound) {
      throw new IllegalStateException("a plan below its bound");
    }
    s.estimate("As many as all pieces end to end are long.", Math.floor(m * (l + r) / bar), plan);
    s.slip("The bound was rounded down.", "floor(S / T)");
    s.slip(
        "Poles and ring pieces were counted apart.",
        "ceil(m * (l + k) / T) + ceil(m * (r + k) / T)");
    return s.task(2);
  }

  private static void knot(Canvas canvas, double x, double y, String text) {
    canvas.dot(x, y, 17, Ink.CUT, Shade.PAPER);
    canvas.label(x, y, text);
  }

  private static Drawing draw(Task t) {
    Canvas canvas = Canvas.fit(0, -0.4, 8, 3.6, 16, 230);
    canvas.line(1, 3, 0.4, 2, Ink.THIN);
    canvas.line(1, 3, 2, 2, Ink.THIN);
    canvas.line(2, 2, 2.6, 1, Ink.DOTTED);
    canvas.line(2.6, 1, 2, 0, Ink.THIN);
    canvas.line(2.6, 1, 3.2, 0, Ink.THIN);
    knot(canvas, 0.4, 2, "d1");
    knot(canvas, 2, 0, "d2");
    knot(canvas, 3.2, 0, "d2");
    canvas.label(1.5, 3.4, "before: a = " + t.text("a"));
    canvas.arrow(3.6, 1.6, 4.3, 1.6, Ink.CUT);
    canvas.line(6, 3, 5.2, 2, Ink.THIN);
    canvas.line(5.2, 2, 4.6, 1, Ink.THIN);
    canvas.line(5.2, 2, 5.8, 1, Ink.THIN);
    canvas.line(6, 3, 7, 2, Ink.THIN);
    canvas.line(7, 2, 7.6, 1, Ink.DOTTED);
    knot(canvas, 4.6, 1, "d1+1");
    knot(canvas, 5.8, 1, "d1+1");
    knot(canvas, 7.6, 1, "d2−1");
    canvas.label(6, 3.4, "after: b = " + t.text("b"));
    return canvas.drawing(
        "lesson-least",
        "A swap that betters a tree",
        "Left, a tree with a piece at depth d1 = "
            + t.text("d1")
            + " and a first pair at depth d2 = "
            + t.text("d2")
            + ". Right, after the swap two pieces lie at d1 + 1 and one at d2 − 1. The sum of the"
            + " three depths falls from "
            + t.text("a")
            + " to "
            + t.text("b")
            + ".");
  }
}
