package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.shared.derivation.Steps;
import java.util.List;

/** From a layer in millimetres to the heap to order. */
final class HeapLesson {

  private HeapLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.HEAPS)
        .aim("Turn a packed layer into a loose heap: mass stays, volume does not.", 45)
        .needs("lesson 1: area of the floor", "volume", "density")
        .materials("sand", "a measuring jug", "a straight tin and a block to ram with", "scales")
        .scene(
            "The floor of lesson 1 gets a dry pack of {t}. Packed, a cubic metre holds {rho_p} of"
                + " dry earth; tipped from the barrow only {rho_l}.")
        .figure(HeapLesson::draw)
        .because("V_p = A * t / 1000", "room of the layer; t in mm")
        .because("m = V_p * rho_p", "dry mass that fills it")
        .because("m = V_l * rho_l", "the same dry mass, loose")
        .because("V_l = m / rho_l", "solved for the heap")
        .problem(HeapLesson::heap)
        .problem(HeapLesson::loads)
        .problem(HeapLesson::trips)
        .why(
            "Why is the mass the same and not the volume?",
            "Ramming presses air out of the earth; the grains stay.",
            "Ramming adds weight to a smaller volume.")
        .why(
            "Why is the number of loads rounded up?",
            "What is left over after the last full load is mixed too.",
            "Loads are always a little too small.")
        .build(
            "Fill a tin loosely with damp sand, weigh it, ram it in three layers and measure how"
                + " far it has sunk.")
        .check(
            "Mass before and after must agree within the scales' division. The ratio of heights is"
                + " the ratio of the two densities; if it is below 1, the tin was shaken while it"
                + " was filled.")
        .onSite("Order {V_l}, not {V_p}: an order by packed volume is a third short.");
  }

  private static double[] given(Sheet s) {
    double area = s.given("A", "floor", "m²", 2, Shelter.measures().baseArea(), 8, 24);
    double t = s.given("t", "thickness of the layer", "mm", 0, 50, 30, 90);
    double packed = s.given("rho_p", "packed dry earth", "kg/m³", 0, 1900, 1750, 2000);
    double loose = s.given("rho_l", "loose dry earth", "kg/m³", 0, 1300, 1150, 1400);
    return new double[] {area, t, packed, loose};
  }

  private static void volume(Sheet s, double[] g) {
    EarthQuantity q =
        BuildUp.level(
                Footprint.of(new double[] {0, g[0], g[0], 0}, new double[] {0, 0, 1, 1}),
                List.of(
                    EarthLayer.coat(
                        "dry pack", g[1] / 1000, FloorMix.single("earth", g[2], g[3], 0.05, 0.01))))
            .earth()
            .get(0);
    s.step("V_p", "room of the layer", "A * t / 1000", "m3");
    s.step("m", "dry mass", "V_p * rho_p", q.dryMass().likely(), "kg");
    s.step("V_l", "loose heap", "m / rho_l", q.looseVolume(Steps.none()), "m3");
  }

  private static Task heap(Sheet s) {
    double[] g = given(s);
    s.ask(
        "A layer {t} thick covers {A}. Packed it holds {rho_p} of dry earth, loose {rho_l}. How"
            + " large is the heap?");
    volume(s, g);
    double packed = g[0] * g[1] / 1000;
    s.estimate("More than the packed room, less than twice that.", packed, 2 * packed);
    s.slip("The packed room was ordered.", "V_p");
    s.slip("The two densities were exchanged.", "V_p * rho_l / rho_p");
    return s.task(3);
  }

  private static Task loads(Sheet s) {
    double[] g = given(s);
    double drum = s.given("V_d", "loose earth in a mixer load", "L", 0, 90, 60, 120);
    s.ask(
        "A layer {t} thick covers {A}. Packed it holds {rho_p} of dry earth, loose {rho_l}. A mixer"
            + " load takes {V_d} of loose earth. How many loads?");
    volume(s, g);
    s.step("N", "loads", "ceil(1000 * V_l / V_d)", "");
    double packed = g[0] * g[1] / drum;
    s.estimate(
        "More than the packed room in litres over the load, less than twice that.",
        packed,
        2 * packed + 1);
    s.slip("Packed litres were divided by loose ones.", "ceil(1000 * V_p / V_d)");
    s.slip("The number was rounded down.", "floor(1000 * V_l / V_d)");
    return s.task(3);
  }

  private static Task trips(Sheet s) {
    double volume = s.given("V", "heap", "m³", 1, 2.2, 1.5, 5);
    double body = s.given("V_b", "room of the trailer", "m³", 1, 1, 0.7, 1.5);
    double load = s.given("P", "what it may carry", "kg", 0, 650, 450, 900);
    double density = s.given("rho", "damp heap", "kg/m³", 0, 1365, 1250, 1500);
    s.ask(
        "A trailer holds {V_b} and may carry {P}; the damp heap weighs {rho}. How many trips for"
            + " {V}?");
    s.step("V_t", "one legal load", "min(V_b, P / rho)", "m3");
    int trips = new Trailer(body, load).trips(volume, density, 0.01, Steps.none());
    s.step("N", "trips", "ceil(V / V_t)", trips, "");
    s.estimate(
        "At least as many as by room alone.",
        Math.ceil(volume / body),
        Math.ceil(volume / body) * 4);
    s.slip("The trailer was filled to the brim.", "ceil(V / V_b)");
    s.slip("The number was rounded down.", "floor(V / V_t)");
    return s.task(2);
  }

  private static Drawing draw(Task t) {
    double ratio = t.value("V_l") / t.value("V_p");
    Canvas canvas = Canvas.fit(0, -0.5, 3.4, ratio, 12, 200);
    canvas.path(Shapes.box(0, 1.2, 0, ratio), true, Ink.CUT, Shade.DOTS);
    canvas.path(Shapes.box(2, 3.2, 0, 1), true, Ink.CUT, Shade.HATCH);
    canvas.arrow(1.3, 0.5, 1.9, 0.5, Ink.THIN);
    canvas.label(1.6, 0.66, "m");
    canvas.label(0.6, -0.14, "loose: V_l");
    canvas.label(0.6, -0.36, t.text("rho_l"));
    canvas.label(2.6, -0.14, "packed: V_p");
    canvas.label(2.6, -0.36, t.text("rho_p"));
    return canvas.drawing(
        "lesson-heap",
        "Loose and packed earth of the same dry mass",
        "The same dry mass m twice: loose as a heap V_l of "
            + t.text("rho_l")
            + " on the left, packed into the floor V_p of "
            + t.text("rho_p")
            + " on the right.");
  }
}
