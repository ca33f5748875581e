package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.soil.Stokes;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.StepRecorder;
import java.util.List;

/** The settling jar and the law of Stokes. */
final class JarLesson {

  private static final double GRAINS = 2650;
  private static final double GRAVITY = 9.81;

  private JarLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.JAR)
        .aim("Derive the speed of a sinking grain from three forces, and time a settling jar.", 90)
        .needs("force, weight and density", "volume of a sphere", "powers of ten")
        .materials(
            "a straight jar with lid",
            "soil",
            "water",
            "clock",
            "a little washing soda (goggles: it irritates the eyes)",
            "marker pen",
            "ruler")
        .scene(
            "Soil for the floor is shaken in a jar of water. Sand settles first, then silt, then"
                + " clay. Marks made at the right time divide them.")
        .figure(JarLesson::draw)
        .because("W = rho_s * pi * d^3 / 6 * g", "down: weight of a sphere of diameter d")
        .because("U = rho_w * pi * d^3 / 6 * g", "up: the water that it pushes aside")
        .because("F = 3 * pi * mu * d * v", "up: drag of a slow sphere (Stokes)")
        .because("W - U = F", "at steady speed the three are in balance")
        .because("v = (rho_s - rho_w) * g * d^2 / (18 * mu)", "solved for the speed")
        .problem(JarLesson::time)
        .problem(JarLesson::grain)
        .problem(JarLesson::clay)
        .why(
            "Why does a grain half as large sink only a quarter as fast?",
            "Weight goes with d³ and drag with d v, so v goes with d².",
            "It has a quarter of the mass.")
        .why(
            "Why is the washing soda needed?",
            "Clay without it clots into flocs that sink like silt, and the jar shows too little"
                + " clay.",
            "Soda water is heavier, so that the grains float.")
        .build(
            "Fill a jar a third with crushed soil, add water and soda, shake for a minute. Mark the"
                + " layer after a minute (sand), after {t_m} of settling through {h} (silt), and"
                + " the next day (all).")
        .check(
            "Shake again and repeat: each mark must come back within a tenth of the whole height."
                + " If the water clears within an hour, the clay has clotted: more soda, new test.")
        .onSite(
            "Silt needs {t_m}; clay ten times finer a hundred times as long, a working day. A mark"
                + " made too early counts silt as clay.");
  }

  /** Viscosity and density of water as the library computes them for a temperature. */
  private static void water(Sheet s) {
    double celsius = s.given("T", "temperature of the water", "°C", 0, 20, 8, 26);
    StepRecorder steps = new StepRecorder();
    Stokes.settlingTime(0.1, 2e-5, celsius, GRAINS, steps);
    Derivation sum = steps.derivation("lesson.water", "Water");
    s.printed("mu", "viscosity of water then", "mPa s", 3, 1000 * value(sum, "mu"));
    s.printed("rho_w", "density of water then", "kg/m³", 0, value(sum, "rho_w"));
    s.printed("rho_s", "density of the grains", "kg/m³", 0, GRAINS);
    s.printed("g", "gravity", "m/s²", 2, GRAVITY);
  }

  private static double value(Derivation sum, String symbol) {
    return sum.steps().stream()
        .filter(step -> step.symbol().equals(symbol))
        .mapToDouble(Step::value)
        .findFirst()
        .orElseThrow();
  }

  private static Task time(Sheet s) {
    s.given("d", "diameter of the grain", "mm", 3, 0.02, 0.012, 0.04);
    s.given("h", "depth", "mm", 0, 100, 60, 140);
    water(s);
    s.ask(
        "Water of {T} has a viscosity of {mu} and a density of {rho_w}. How long does a grain of"
            + " {rho_s}, {d} across, take to sink {h}? Take g as {g}. (Millimetres and mPa s go in"
            + " as they are: the speed then comes out in mm/s.)");
    s.step("v", "speed", "(rho_s - rho_w) * g * d^2 / (18 * mu)", "mm/s");
    s.step("t", "time", "h / v", "s");
    double t = s.step("t_m", "the same in minutes", "t / 60", "min");
    s.estimate(
        "Silt of 0.02 mm sinks a finger's length in some minutes; half the size, four times.",
        t / 2.5,
        t * 2.5);
    s.slip("The radius was taken for the diameter.", "t_m * 4");
    s.slip("The lift of the water was forgotten.", "h / (rho_s * g * d^2 / (18 * mu)) / 60");
    return s.task(3);
  }

  private static Task grain(Sheet s) {
    s.given("t", "time", "s", 0, 60, 40, 400);
    s.given("h", "depth", "mm", 0, 100, 60, 140);
    water(s);
    s.ask(
        "Water of {T} has a viscosity of {mu} and a density of {rho_w}. Which is the smallest grain"
            + " of {rho_s} that has sunk {h} after {t}? Take g as {g}.");
    s.step("v", "its speed", "h / t", "mm/s");
    double d = s.step("d", "its diameter", "sqrt(18 * mu * v / ((rho_s - rho_w) * g))", "mm");
    s.estimate("Between silt and fine sand: some hundredths of a millimetre.", d / 3, d * 3);
    s.slip("The root was forgotten.", "18 * mu * v / ((rho_s - rho_w) * g)");
    s.slip("The radius was given.", "d / 2");
    return s.task(3);
  }

  private static Task clay(Sheet s) {
    s.given("t1", "time of silt", "min", 1, 4.6, 3, 9);
    s.printed("d1", "silt", "mm", 3, 0.02);
    s.given("d2", "finer grain", "mm", 4, 0.002, 0.0015, 0.004);
    s.ask(
        "Silt of {d1} takes {t1} for a depth. How many hours does a grain of {d2} take for the same"
            + " depth?");
    s.step("f", "how many times longer", "(d1 / d2)^2", "");
    double t2 = s.step("t2", "time of the finer grain", "t1 * f / 60", "h");
    s.estimate("Ten times finer takes a hundred times as long.", t2 / 3, t2 * 3);
    s.slip("Time was taken to go with the diameter, not its square.", "t1 * d1 / d2 / 60");
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    Canvas canvas = Canvas.fit(-0.6, 0, 3.7, 1.6, 12, 260);
    canvas.path(Shapes.box(-0.5, 0.5, 0, 0.35), true, Ink.THIN, Shade.DOTS);
    canvas.path(Shapes.box(-0.5, 0.5, 0.35, 0.6), true, Ink.THIN, Shade.HATCH);
    canvas.path(Shapes.box(-0.5, 0.5, 0.6, 0.7), true, Ink.THIN, Shade.MIDDLE);
    canvas.path(
        List.of(Shapes.at(-0.5, 1.55), Shapes.at(-0.5, 0), Shapes.at(0.5, 0), Shapes.at(0.5, 1.55)),
        false,
        Ink.CUT,
        Shade.NONE);
    canvas.line(-0.5, 1.4, 0.5, 1.4, Ink.FOLD);
    canvas.arrow(-0.25, 1.4, -0.25, 0.7, Ink.THIN);
    canvas.label(0.1, 1.05, "h = " + t.text("h"));
    canvas.text(0.58, 0.17, "sand", Canvas.TEXT, "start", 0);
    canvas.text(0.58, 0.47, "silt", Canvas.TEXT, "start", 0);
    canvas.text(0.58, 0.66, "clay", Canvas.TEXT, "start", 0);
    canvas.dot(2.2, 0.8, 26, Ink.CUT, Shade.LIGHT);
    canvas.arrow(2.2, 0.8, 2.2, 0.15, Ink.CUT);
    canvas.arrow(2.12, 0.8, 2.12, 1.25, Ink.CUT);
    canvas.arrow(2.28, 0.8, 2.28, 1.4, Ink.CUT);
    canvas.text(2.27, 0.25, "W weight", Canvas.TEXT, "start", 0);
    canvas.text(2.06, 1.25, "U lift", Canvas.TEXT, "end", 0);
    canvas.text(2.34, 1.35, "F drag", Canvas.TEXT, "start", 0);
    canvas.text(2.55, 0.8, "d = " + t.text("d"), Canvas.TEXT, "start", 0);
    return canvas.drawing(
        "lesson-jar",
        "Settling jar, and the forces on a grain",
        "Left, a jar: sand below, silt on it, clay on top; grains sink h = "
            + t.text("h")
            + ". Right, one grain of diameter d = "
            + t.text("d")
            + ": weight W pulls down, lift U and drag F push up.");
  }
}
