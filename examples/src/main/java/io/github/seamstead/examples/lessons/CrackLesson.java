package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.soil.LinearShrinkage;
import io.github.seamstead.shared.derivation.Steps;

/** Shrinkage, cracks and the slip that fills them. */
final class CrackLesson {

  private CrackLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.CRACKS)
        .aim("Work with small percentages of different bases, from a tile to a floor.", 45)
        .needs("percentages of a base", "lesson 11: volume of a layer")
        .materials("tiles from lesson 10 in a mould 200 mm long", "ruler", "damp cloth")
        .scene(
            "The coat shrinks by {e} % as it dries. The rough base holds back {R} % of that. The"
                + " coat stretches by {s} % before it tears; what is left opens as cracks.")
        .figure(CrackLesson::draw)
        .because("a = e * R / 100", "what the base holds back, in % of the length")
        .because("b = a - s", "what the coat cannot stretch; none if it is negative")
        .because("w = 10 * b", "1 % of a metre is 10 mm")
        .problem(CrackLesson::width)
        .problem(CrackLesson::shrinkage)
        .problem(CrackLesson::slip)
        .why(
            "Why does a coat on a smooth board hardly crack?",
            "Nothing holds it back: R is near 0, and the whole coat gets shorter.",
            "A smooth board makes the coat stronger.")
        .why(
            "Of which length are the per cent of a tile?",
            "Of the mould, the length before it shrank.",
            "Of the dry tile, the length that can be measured.")
        .build(
            "Fill a mould of 200 mm with the mix, let it dry slowly under a cloth, and measure the"
                + " gap at the end every day until it no longer grows.")
        .check(
            "Measure the tile and the gap: together they must be 200 mm within 1 mm. If not, the"
                + " tile has bent and only its middle touches the ruler.")
        .onSite(
            "Expect {w} of cracks in a metre. Above "
                + Figures.significant(1000 * Cracking.CHANGE_THE_MIX, 1)
                + " mm in a metre (a rule of the program, common practice) more sand or straw is"
                + " better than more slip.");
  }

  private static Task width(Sheet s) {
    double e = s.given("e", "shrinkage, %", "", 1, 0.6, 0.5, 1.5);
    double r = s.given("R", "share held back, %", "", 0, 80, 55, 95);
    double stretch = s.given("s", "stretch before it tears, %", "", 2, 0.03, 0.02, 0.1);
    s.ask(
        "A coat shrinks by {e} %; the base holds back {R} % of that; the coat stretches by {s} %"
            + " before it tears. How many millimetres of cracks are in a metre?");
    s.step("a", "held back, in % of the length", "e * R / 100", "");
    s.step(
        "w",
        "cracks in a metre",
        "10 * max(0, a - s)",
        1000 * Cracking.widthPerMetre(e / 100, r / 100, stretch / 100, Steps.none()),
        "mm");
    s.estimate("Less than the whole shrinkage: 1 % is 10 mm in a metre.", 0, 10 * e);
    s.slip("The stretch was added.", "10 * (a + s)");
    s.slip("The base was forgotten.", "10 * (e - s)");
    return s.task(3);
  }

  private static Task shrinkage(Sheet s) {
    double mould = s.given("l", "mould", "mm", 0, 200, 150, 600);
    double gap = s.given("g", "gap at the end", "mm", 1, 2.4, 1.5, 9);
    s.ask(
        "A tile dries in a mould of {l} and leaves a gap of {g}. Its linear shrinkage, in per cent"
            + " of the mould?");
    s.step(
        "e",
        "shrinkage",
        "100 * g / l",
        100 * LinearShrinkage.ofGap(mould / 1000, gap / 1000).ratio(),
        "%");
    s.estimate("Floor mixes shrink by less than some per cent.", 0, 7);
    s.slip("Per mille were given.", "1000 * g / l");
    s.slip("The dry length that is left was given in per cent.", "100 * (l - g) / l");
    return s.task(2);
  }

  private static Task slip(Sheet s) {
    double w = s.given("w", "cracks in a metre", "mm", 1, 4.5, 1, 6);
    double area = s.given("A", "floor", "m²", 2, Shelter.measures().baseArea(), 8, 24);
    double t = s.given("t", "thickness of the coat", "mm", 0, 25, 15, 40);
    double skim = s.given("k", "skim over all", "mm", 1, 1, 0.5, 2);
    s.ask(
        "{w} of cracks in a metre, along and across, run through a coat {t} thick on {A}. They are"
            + " filled with slip and {k} of it is skimmed over all; 15 % of this need are added for"
            + " what stays in the buckets. How many litres are mixed? (A litre covers a square"
            + " metre 1 mm deep.)");
    s.step("a", "share of the floor that is cracks, two directions", "2 * w / 1000", "");
    s.step("V_c", "slip in the cracks", "a * A * t", "L");
    s.step("V_s", "slip over all", "A * k", "L");
    s.step(
        "V",
        "with 15 % added",
        "1.15 * (V_c + V_s)",
        1000 * SlipRepair.volume(2 * w / 1000, area, t / 1000, skim / 1000, Steps.none()),
        "L");
    s.estimate(
        "A little more than the skim, which is k litres a square metre.",
        area * skim,
        1.15 * area * skim * 2.2);
    s.slip("Cracks were counted in one direction.", "1.15 * (V_c / 2 + V_s)");
    s.slip("15 % were taken off.", "0.85 * (V_c + V_s)");
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    Canvas canvas = Canvas.fit(0, -0.25, 4, 1.1, 12, 150);
    canvas.path(Shapes.box(0, 4, 0, 0.35), true, Ink.CUT, Shade.HATCH);
    for (int i = 0; i < 4; i++) {
      canvas.path(Shapes.box(i + 0.05, i + 0.95, 0.35, 0.8), true, Ink.CUT, Shade.DOTS);
    }
    canvas.label(
        2, 0.97, "coat: shrinks e = " + t.text("e") + " %, stretches s = " + t.text("s") + " %");
    canvas.label(2, -0.14, "base: holds back R = " + t.text("R") + " %");
    return canvas.drawing(
        "lesson-cracks",
        "Cracked coat on its base",
        "A cut through the floor: the dotted coat has shrunk by e = "
            + t.text("e")
            + " % on the hatched base, which holds back R = "
            + t.text("R")
            + " %, and cracks stand open between its pieces.");
  }
}
