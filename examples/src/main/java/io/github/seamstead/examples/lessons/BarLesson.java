package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.bars.BarStock;
import java.util.List;

/** Cutting poles from bars, and what is wasted. */
final class BarLesson {

  private BarLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.BARS)
        .aim("Count bars with rounding in the right direction, the saw cut included.", 45)
        .needs("division with remainder", "percentages")
        .materials("strips of paper", "ruler", "scissors")
        .scene(
            "The model's {m} poles are cut from sticks as sold. A saw turns a little of the stick"
                + " into dust at each cut, and a rest shorter than a pole is no pole.")
        .figure(BarLesson::draw)
        .because("", "q pieces take q lengths l and, between them, q − 1 saw cuts k.")
        .because("", "They fit if q l + (q − 1) k is at most L, that is q (l + k) at most L + k.")
        .because(
            "q = floor((L + k) / (l + k))", "pieces from a bar: rounded down, a part is no piece")
        .because("B = ceil(m / q)", "bars: rounded up, a part of a bar is bought whole")
        .problem(BarLesson::bars)
        .problem(BarLesson::waste)
        .why(
            "Why is one division rounded down and the other up?",
            "Too few pieces from a bar is safe to promise; too few bars is not.",
            "Rounding errors cancel if one goes up and one goes down.")
        .why(
            "Why does k stand beside L as well?",
            "The last piece needs no cut after it, so one cut fewer than pieces is made.",
            "The bar gets longer when it is cut.")
        .build("Cut {m} strips of {l} from paper strips of {L}, folding away {k} at every cut.")
        .check(
            "Lay the pieces of each strip end to end with the cuts between: they must not be longer"
                + " than {L}. If the last one hangs over, a cut was forgotten.")
        .onSite("Ask for {B} bars and keep the rests: ring pieces may come out of them.");
  }

  private static double[] given(Sheet s) {
    double m = s.count("m", "poles", Shelter.SIDES, 7, 16);
    double l = s.given("l", "length of a pole", "mm", 0, 363, 240, 460);
    double bar = s.given("L", "length of a bar", "mm", 0, 1000, 1000, 1500);
    double k = s.given("k", "saw cut", "mm", 0, 1, 1, 4);
    return new double[] {m, l, bar, k};
  }

  private static BarPlan plan(double[] g) {
    return BarCutting.plan(
        List.of(new BarPiece("pole", g[1] / 1000, (int) g[0])),
        List.of(BarStock.unlimited("bar", g[2] / 1000)),
        g[3] / 1000);
  }

  private static void count(Sheet s, double[] g) {
    s.step("q", "poles from one bar", "floor((L + k) / (l + k))", "");
    s.step("B", "bars", "ceil(m / q)", plan(g).barCount(), "");
  }

  private static Task bars(Sheet s) {
    double[] g = given(s);
    s.ask("{m} poles of {l} are cut from bars of {L}; a cut takes {k}. How many bars?");
    count(s, g);
    double least = Math.ceil(g[0] * g[1] / g[2]);
    s.estimate(
        "At least as many as all poles end to end are long, and less than twice as many and one.",
        least,
        2 * least + 1);
    s.slip("All lengths were divided together, as if rests could be joined.", "ceil(m * l / L)");
    s.slip("The number of bars was rounded down.", "floor(m / q)");
    return s.task(2);
  }

  private static Task waste(Sheet s) {
    double[] g = given(s);
    s.ask(
        "{m} poles of {l} are cut from bars of {L}; a cut takes {k}. How many per cent of the bars"
            + " bought are rest and dust?");
    count(s, g);
    s.step("W", "waste", "100 * (1 - m * l / (B * L))", 100 * plan(g).wasteRatio(), "%");
    s.estimate(
        "Less than half: a rest is shorter than a pole, but the last bar may hold one only.",
        0,
        80);
    s.slip(
        "The waste was divided by what is used, not by what is bought.",
        "100 * (B * L / (m * l) - 1)");
    s.slip("The share that is used was given.", "100 * m * l / (B * L)");
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    int bars = (int) t.value("B");
    int perBar = (int) t.value("q");
    int left = (int) t.value("m");
    double length = t.value("L");
    double row = length / 9;
    Canvas canvas = Canvas.fit(0, -bars * row, length, 0.5 * row, 14, 60 + 40.0 * bars);
    canvas.label(length / 2, 0.3 * row, "L = " + t.text("L"));
    for (int bar = 1; bar <= bars; bar++) {
      double low = (-bar + 0.1) * row;
      double high = (-bar + 0.9) * row;
      canvas.path(Shapes.box(0, length, low, high), true, Ink.THIN, Shade.HATCH);
      double x = 0;
      for (int i = 0; i < Math.min(perBar, left); i++) {
        double end = x + t.value("l");
        canvas.path(Shapes.box(x, end, low, high), true, Ink.CUT, Shade.PALE);
        canvas.label((x + end) / 2, (low + high) / 2, "l = " + t.text("l"));
        x = end + t.value("k");
      }
      left -= Math.min(perBar, left);
    }
    return canvas.drawing(
        "lesson-bars",
        "Poles in the bars",
        bars
            + " bars of L = "
            + t.text("L")
            + " one below the other with poles of l = "
            + t.text("l")
            + "; what is hatched is left over.");
  }
}
