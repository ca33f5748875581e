package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;

/** Five tiles, one of them odd: what a fair test says. */
final class FairTestLesson {

  private static final int TILES = 5;

  private FairTestLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.FAIR_TEST)
        .aim(
            "Plan a test that changes one thing, and judge an odd reading before leaving it out.",
            45)
        .needs("mean and range", "lesson 12: shrinkage of a tile")
        .materials("five equal moulds or tins", "one batch of mix", "ruler", "a shady place")
        .scene(
            "Five tiles of one batch dry side by side. Their shrinkages are {x1}, {x2}, {x3}, {x4}"
                + " and {x5} %. One looks odd. May it be left out?")
        .figure(FairTestLesson::draw)
        .because("R = x5 - x1", "range: from the least to the greatest reading")
        .because("g = x5 - x4", "how far the odd one stands from its neighbour")
        .because("Q = g / R", "between 0 and 1: near 1 if one reading stands alone")
        .because(
            "",
            "For five readings of one kind Q exceeds 0.710 in only one test of twenty (Dixon's"
                + " ratio, two-sided; table of Rorabacher 1991, from memory). Then look for a"
                + " cause.")
        .problem(FairTestLesson::ratio)
        .problem(FairTestLesson::mean)
        .problem(FairTestLesson::change)
        .why(
            "Q is above the limit. Is the reading wrong?",
            "Not by that alone: one fair test of twenty looks so. Look for a cause; without one,"
                + " test again.",
            "Yes, a reading above the limit must be struck out.")
        .why(
            "Two mixes are compared, one dried in the sun, one in the shade. What is wrong?",
            "Two things were changed, so the difference belongs to neither.",
            "The sun makes better tiles.")
        .build(
            "Make five tiles from one batch in equal tins, number them, dry them side by side and"
                + " measure each twice, the second time in another order and without looking at the"
                + " first list.")
        .check(
            "The two lists must agree within 0.5 mm tile by tile. If not, the measuring scatters"
                + " more than the tiles do, and no tile may be called odd.")
        .onSite(
            "Q = {Q}: write the odd reading down, say why it is kept or left out, and give the mean"
                + " both ways.");
  }

  private static double[] readings(Sheet s, boolean odd) {
    double least = s.hidden(1, 0.6, 1.6, 0.1);
    double[] gaps = {
      s.hidden(0.1, 0.1, 0.2, 0.1),
      s.hidden(0.1, 0.1, 0.2, 0.1),
      s.hidden(0.2, 0.1, 0.2, 0.1),
      odd ? s.hidden(1.2, 0.5, 1.6, 0.1) : s.hidden(0.1, 0.1, 0.3, 0.1)
    };
    double[] readings = new double[TILES];
    double x = least;
    for (int i = 0; i < TILES; i++) {
      readings[i] = s.printed("x" + (i + 1), "tile, in order of size", "", 1, x);
      x += i < gaps.length ? gaps[i] : 0;
    }
    return readings;
  }

  private static Task ratio(Sheet s) {
    readings(s, true);
    s.ask(
        "Five tiles shrank by {x1}, {x2}, {x3}, {x4} and {x5} %. How large is the ratio Q for the"
            + " greatest, to be compared with 0.710?");
    s.step("R", "range", "x5 - x1", "%");
    s.step("g", "gap to the neighbour", "x5 - x4", "%");
    s.step("Q", "ratio", "g / R", "");
    s.estimate("The gap is a part of the range.", 0, 1);
    s.slip("The range was taken without the odd tile.", "g / (x4 - x1)");
    s.slip("The gap to the mean was taken.", "(x5 - (x1 + x2 + x3 + x4 + x5) / 5) / R");
    return s.task(2);
  }

  private static Task mean(Sheet s) {
    double[] x = readings(s, false);
    s.ask("Five tiles shrank by {x1}, {x2}, {x3}, {x4} and {x5} %. What is their mean?");
    s.step("S", "sum", "x1 + x2 + x3 + x4 + x5", "%");
    s.step("M", "mean", "S / 5", "%");
    s.estimate("Between the least and the greatest.", x[0], x[TILES - 1]);
    s.slip("Only the least and the greatest were averaged.", "(x1 + x5) / 2");
    s.slip("The sum was divided by 4.", "S / 4");
    return s.task(3);
  }

  private static Task change(Sheet s) {
    readings(s, true);
    s.ask(
        "Five tiles shrank by {x1}, {x2}, {x3}, {x4} and {x5} %. A leak is found in the mould of"
            + " the greatest, so it is left out, with a note. By how much does the mean fall?");
    s.step("M", "mean of all", "(x1 + x2 + x3 + x4 + x5) / 5", "%");
    s.step("K", "mean of the four kept", "(x1 + x2 + x3 + x4) / 4", "%");
    double d = s.step("D", "fall of the mean", "M - K", "%");
    s.estimate("A fifth of how far the odd tile stands off the others.", 0, 2 * d);
    s.slip("The sum of four was still divided by five.", "M - (x1 + x2 + x3 + x4) / 5");
    return s.task(2);
  }

  private static Drawing draw(Task t) {
    double low = t.value("x1");
    double high = t.value("x5");
    double span = high - low;
    Canvas canvas = Canvas.fit(low, -0.3 * span, high, 0.3 * span, 40, 200);
    canvas.line(low - 0.05 * span, 0, high + 0.05 * span, 0, Ink.THIN);
    for (int i = 1; i <= TILES; i++) {
      double x = t.value("x" + i);
      canvas.dot(x, 0, 6, Ink.CUT, i == TILES ? Shade.MIDDLE : Shade.PAPER);
      canvas.label(x, i % 2 == 0 ? 0.12 * span : -0.12 * span, t.text("x" + i));
    }
    double x4 = t.value("x4");
    canvas.line(x4, 0.2 * span, high, 0.2 * span, Ink.CUT);
    canvas.label((x4 + high) / 2, 0.26 * span, "g = " + t.text("g"));
    canvas.line(low, -0.22 * span, high, -0.22 * span, Ink.CUT);
    canvas.label((low + high) / 2, -0.28 * span, "R = " + t.text("R"));
    return canvas.drawing(
        "lesson-fair-test",
        "Five readings on a line",
        "Five shrinkages in per cent on a line: four close together, the fifth apart. R = "
            + t.text("R")
            + " is the range, g = "
            + t.text("g")
            + " the gap to the odd one.");
  }
}
