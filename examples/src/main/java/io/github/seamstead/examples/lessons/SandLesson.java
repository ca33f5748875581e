package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.water.Moisture;
import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Uncertain;

/** How much sand makes a clay soil into a floor, by mass and by bucket. */
final class SandLesson {

  private SandLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.SAND)
        .aim("Mix two materials to a wanted share, and turn mass into damp buckets.", 90)
        .needs("percentages", "solving a linear equation", "density")
        .materials("soil and sand", "scales", "two equal tins", "ruler", "water")
        .scene(
            "The jar of lesson 9 shows {c_s} % of clay in the pit soil. A floor coat should have"
                + " {c} %. Washed sand, which has none, thins it. The sand heap is damp.")
        .figure(SandLesson::draw)
        .because(
            "c_s * 1 = c * (1 + r)",
            "clay is not lost: one part of soil brings it, 1 + r parts hold it")
        .because("r = (c_s - c) / c", "solved for r, parts of dry sand by mass")
        .because(
            "q = rho_n / (1 + B / 100)",
            "a bucket of damp sand holds less: water films hold grains apart")
        .because("v = r * rho_s / q", "the same masses, counted in buckets")
        .problem(SandLesson::buckets)
        .problem(SandLesson::bulking)
        .problem(SandLesson::water)
        .why(
            "Why is c in the denominator and not c_s?",
            "c is the share of the whole mix, and the whole is what grows with the sand.",
            "c is the smaller one, and the smaller one stands below.")
        .why(
            "Why do damp buckets need to be more?",
            "A damp bucket holds less sand by mass than a dry one.",
            "Water weighs something, so a damp bucket is heavier.")
        .build(
            "Fill a tin to the brim with damp sand, level it, then flood it and let it settle."
                + " Measure both heights. Mix one tin of soil with {v} tins of that sand and make a"
                + " tile.")
        .check(
            "Weigh a tin of the damp sand, dry it, weigh again: the dry mass must be 1 / (1 + B) of"
                + " a tin of dry sand within a twentieth. If not, the tin was shaken while"
                + " filling.")
        .onSite(
            "Always say what is counted: {r} parts by dry mass are {v} buckets as damp as the heap"
                + " lies.");
  }

  private static Task buckets(Sheet s) {
    double rich = s.given("c_s", "clay of the soil, % of its dry mass", "", 0, 42, 32, 55);
    double aim = s.given("c", "clay wanted, %", "", 0, 15, 12, 20);
    MixComponent plain = MixComponent.claySoil("soil", new Uncertain(rich / 100, 0.02));
    MixComponent washed = MixComponent.washedSand("sand");
    s.printed("rho_s", "loose dry soil", "kg/m³", 0, plain.looseDryDensity().value());
    s.printed("rho_n", "loose dry sand", "kg/m³", 0, washed.looseDryDensity().value());
    double b = s.given("B", "bulking of the damp sand, %", "", 0, 25, 15, 35);
    s.ask(
        "A soil has {c_s} % of clay by dry mass; {c} % are wanted. Loose and dry, soil weighs"
            + " {rho_s} and sand {rho_n}; the damp sand is bulked by {B} %, the soil is dry. How"
            + " many buckets of the damp sand go to one bucket of soil?");
    ClayBlend blend =
        ClayBlend.of(
            plain,
            washed.damp(0.05, b / 100),
            ClayBand.of(aim / 100 - 0.01, aim / 100 + 0.01),
            BucketRounding.HALF);
    s.step("r", "parts of sand by dry mass", "(c_s - c) / c", blend.sandPerSoilDryMass(), "");
    s.step("q", "dry sand in a damp cubic metre", "rho_n / (1 + B / 100)", "kg/m3");
    double v = s.step("v", "buckets of damp sand to a bucket of soil", "r * rho_s / q", "");
    s.estimate(
        "By mass r parts; buckets come out much the same, within a third.", 0.67 * v, 1.5 * v);
    s.slip("The damp sand was counted as dry.", "r * rho_s / rho_n");
    s.slip("Bulking was turned round.", "r * rho_s / (rho_n * (1 + B / 100))");
    s.slip("Parts by mass were counted as buckets.", "r");
    return s.task(3);
  }

  private static Task bulking(Sheet s) {
    double damp = s.given("h_d", "height of the damp sand", "mm", 0, 125, 115, 140);
    double flooded = s.given("h_f", "height when flooded", "mm", 0, 100, 92, 106);
    s.ask(
        "Damp sand stands {h_d} high in a tin; flooded, {h_f}. Flooded sand takes the room of dry"
            + " sand. By how many per cent of the dry height is the damp sand bulked?");
    s.step(
        "B",
        "bulking",
        "100 * (h_d / h_f - 1)",
        100 * SandBulking.tin(damp / 1000, flooded / 1000, Steps.none()),
        "%");
    s.estimate("Damp sand takes up to half as much room again.", 0, 55);
    s.slip("The difference was divided by the damp height.", "100 * (1 - h_f / h_d)");
    return s.task(3);
  }

  private static Task water(Sheet s) {
    double mass = s.given("m", "load as it lies", "kg", 0, 104, 80, 160);
    double has = s.given("u1", "its moisture, %", "", 0, 4, 2, 7);
    double wants = s.given("u2", "moisture wanted, %", "", 0, 12, 10, 16);
    s.ask(
        "A load of {m} has a moisture of {u1} % of its dry mass and is to have {u2} % of its dry"
            + " mass. How much water goes in?");
    s.step("m_d", "dry mass", "m / (1 + u1 / 100)", "kg");
    s.step(
        "w",
        "water to add",
        "m_d * (u2 - u1) / 100",
        Moisture.waterToAdd(mass, has / 100, wants / 100, Steps.none()),
        "kg");
    s.estimate(
        "A little less than the difference in per cent of the load.",
        0.9 * mass * (wants - has) / 100,
        mass * (wants - has) / 100);
    s.slip("The per cent were taken of the damp load.", "m * (u2 - u1) / 100");
    s.slip("The water that is there was forgotten.", "m * u2 / 100");
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    double clay = t.value("c_s") / 100;
    double sand = t.value("r");
    double whole = 1 + sand;
    Canvas canvas = Canvas.fit(0, -0.5, whole, 1.2, 12, 150);
    canvas.path(Shapes.box(0, clay, 0, 0.8), true, Ink.CUT, Shade.MIDDLE);
    canvas.path(Shapes.box(clay, 1, 0, 0.8), true, Ink.CUT, Shade.HATCH);
    canvas.path(Shapes.box(1, whole, 0, 0.8), true, Ink.CUT, Shade.DOTS);
    canvas.label(clay / 2, 0.4, "clay");
    canvas.label(clay / 2 + 0.02, 0.98, "c_s = " + t.text("c_s") + " %");
    canvas.label(0.5, -0.2, "soil: 1 part");
    canvas.label(1 + sand / 2, -0.2, "sand: r = " + t.text("r") + " parts");
    return canvas.drawing(
        "lesson-sand",
        "Soil and sand by dry mass",
        "One part of soil and r = "
            + t.text("r")
            + " parts of sand as a bar. The clay at its left"
            + " end is "
            + t.text("c_s")
            + " % of the soil and "
            + t.text("c")
            + " % of the whole bar.");
  }
}
