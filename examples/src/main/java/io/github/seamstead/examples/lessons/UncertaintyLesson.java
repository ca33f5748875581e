package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.shared.uncertainty.Uncertain;

/** How doubt travels through a sum, and what more samples buy. */
final class UncertaintyLesson {

  private UncertaintyLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.DOUBT)
        .aim(
            "Carry the doubt of measurements into a result as a sum of shares, and plan samples.",
            90)
        .needs("square roots", "percentages", "mean of several readings")
        .materials("a test tile from lesson 10", "ruler", "calliper if there is one", "calculator")
        .scene(
            "A tile of {l} by {b} by {t} is measured with a ruler. Length and breadth are known to"
                + " {u_l}, the thickness, which varies, to {u_t} (standard uncertainties). How sure"
                + " is the volume?")
        .figure(UncertaintyLesson::draw)
        .because("V = l * b * t", "the volume; change l by 1 % and V changes by 1 %")
        .because("p_l = 100 * u_l / l", "each doubt in per cent of its own length")
        .because("", "Independent doubts rarely all pull the same way: their squares add up.")
        .because("p = sqrt(p_l^2 + p_b^2 + p_t^2)", "per cent of the volume")
        .because("S_t = 100 * p_t^2 / p^2", "the share of the thickness in the square")
        .problem(UncertaintyLesson::volume)
        .problem(UncertaintyLesson::area)
        .problem(UncertaintyLesson::samples)
        .why(
            "Why are the per cent not just added?",
            "Independent errors cancel in part; adding would be right only if all pull the same"
                + " way.",
            "The sum would be more than 100 %.")
        .why(
            "Which measurement should be improved first?",
            "The one with the largest share; halving a small share changes nothing that shows.",
            "The longest one, since its error is the largest in millimetres.")
        .build(
            "Measure one tile ten times in different places, ten pupils without looking at each"
                + " other's numbers. The scatter of the ten is the doubt of one.")
        .check(
            "Sink the tile, wrapped in thin film, into a jug and read the water: two of three"
                + " classes should find the volume within {u_V} of the sum. If it is out by three"
                + " times that, a doubt was left out: edges are round, film holds air.")
        .onSite(
            "{S_t} of the doubt's square come from the thickness: measure that in more places"
                + " before buying a better ruler.");
  }

  private static Task volume(Sheet s) {
    double l = s.given("l", "length", "mm", 0, 200, 150, 300);
    double b = s.given("b", "breadth", "mm", 0, 100, 60, 140);
    double t = s.given("t", "thickness", "mm", 0, 25, 15, 40);
    double ul = s.given("u_l", "doubt of length and breadth", "mm", 1, 1, 0.5, 1.5);
    double ut = s.given("u_t", "doubt of the thickness", "mm", 1, 1, 0.5, 1.5);
    s.ask(
        "A tile is {l} by {b} by {t}; length and breadth are known to {u_l}, the thickness to {u_t}"
            + " (standard uncertainties). What is the standard uncertainty of its volume?");
    Uncertain v =
        new Uncertain(l, ul).times(new Uncertain(b, ul)).times(new Uncertain(t, ut)).times(1e-3);
    s.step("p_l", "doubt of the length", "100 * u_l / l", "%");
    s.step("p_b", "doubt of the breadth", "100 * u_l / b", "%");
    double pt = s.step("p_t", "doubt of the thickness", "100 * u_t / t", "%");
    s.step("p", "doubt of the volume", "sqrt(p_l^2 + p_b^2 + p_t^2)", "%");
    s.step("S_t", "share of the thickness in the square", "100 * p_t^2 / p^2", "%");
    s.step("V", "volume", "l * b * t / 1000", v.value(), "cm³");
    s.step(
        "u_V", "standard uncertainty of the volume", "p * V / 100", v.standardUncertainty(), "cm³");
    s.estimate(
        "At least the per cent of the thickness, at most all three per cent together.",
        pt / 100 * v.value(),
        (pt + 100 * ul / b + 100 * ul / l) / 100 * v.value());
    s.slip("The per cent were added.", "(p_l + p_b + p_t) * V / 100");
    s.slip("The doubts were multiplied like the lengths.", "u_l * u_l * u_t / 1000");
    return s.task(2);
  }

  private static Task area(Sheet s) {
    double area = s.given("A", "floor", "m²", 2, Shelter.measures().baseArea(), 8, 24);
    s.given("a", "side", "m", 2, Shelter.SIDE, 1.6, 3);
    s.given("u", "doubt of the side", "mm", 0, 10, 4, 20);
    s.ask(
        "The floor of a regular base with sides of {a} has {A}. The side is known to {u}. The area"
            + " goes with a²: 1 % more side is 2 % more area. What is the standard uncertainty of"
            + " the area?");
    s.step("p", "doubt of the side", "100 * u / (1000 * a)", "%");
    double u = s.step("u_A", "doubt of the area", "2 * p * A / 100", "m2");
    s.estimate(
        "Twice the per cent of the side: below a few per cent of the area.",
        0,
        Math.max(u, 0.03 * area));
    s.slip("The per cent were not doubled.", "p * A / 100");
    s.slip("They were squared instead of doubled.", "p^2 * A / 100");
    return s.task(2);
  }

  private static Task samples(Sheet s) {
    s.given("s", "scatter of one reading (standard deviation)", "mm", 1, 1.5, 0.8, 3);
    s.given("u", "doubt wanted of the mean", "mm", 1, 0.5, 0.3, 0.7);
    s.ask(
        "Readings of a thickness scatter by {s} (standard deviation). The mean of n readings"
            + " scatters by that over √n. How many readings make the mean sure to {u}?");
    s.step("r", "scatter over doubt", "s / u", "");
    double n = s.step("n", "readings, rounded up", "ceil(r^2)", "");
    s.estimate("Half the doubt costs four times the readings.", 1, n * 2);
    s.slip("The root was forgotten: n taken as the plain ratio.", "ceil(r)");
    return s.task(2);
  }

  private static Drawing draw(Task t) {
    double all = StrictMath.pow(t.value("p"), 2);
    double length = StrictMath.pow(t.value("p_l"), 2) / all;
    double breadth = StrictMath.pow(t.value("p_b"), 2) / all;
    Canvas canvas = Canvas.fit(0, -0.2, 1, 0.42, 16, 220);
    canvas.path(Shapes.box(0, length, 0, 0.12), true, Ink.CUT, Shade.MIDDLE);
    canvas.path(Shapes.box(length, length + breadth, 0, 0.12), true, Ink.CUT, Shade.HATCH);
    canvas.path(Shapes.box(length + breadth, 1, 0, 0.12), true, Ink.CUT, Shade.DOTS);
    canvas.text(
        0, 0.18, "l = " + t.text("l") + ": p_l = " + t.text("p_l"), Canvas.TEXT, "start", 0);
    canvas.text(
        0, -0.06, "b = " + t.text("b") + ": p_b = " + t.text("p_b"), Canvas.TEXT, "start", 0);
    canvas.text(1, 0.25, "t = " + t.text("t") + ": p_t = " + t.text("p_t"), Canvas.TEXT, "end", 0);
    canvas.label(0.5, 0.36, "p² = p_l² + p_b² + p_t²");
    canvas.text(1, -0.06, "S_t = " + t.text("S_t"), Canvas.TEXT, "end", 0);
    return canvas.drawing(
        "lesson-uncertainty",
        "Shares of the doubt",
        "The square of the doubt as a bar: a small piece from the length with p_l = "
            + t.text("p_l")
            + ", one from the breadth with p_b = "
            + t.text("p_b")
            + ", and the largest from the thickness with p_t = "
            + t.text("p_t")
            + ", which is "
            + t.text("S_t")
            + " of the whole.");
  }
}
