package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Why the angles at the tip make less than a full turn. */
final class FlatPanelLesson {

  private FlatPanelLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.FLAT_PANELS)
        .aim("Find the angle at the tip of a face, and the gap that the flat faces leave.", 45)
        .needs("lesson 2: the pole e", "sine in a right-angled triangle")
        .materials("card", "scissors", "compasses or string", "protractor", "tape")
        .scene(
            "Five equal triangles of cloth cover the shelter. Laid flat on the ground, tip to tip,"
                + " they do not fill the full turn. Closing the gap lifts the tip.")
        .figure(FlatPanelLesson::draw)
        .because("", "A face has two equal sides e; its middle line halves the side a and the tip.")
        .because("sin(alpha / 2) = (a / 2) / e", "sine in one half of the face")
        .because("alpha = 2 * asin(a / (2 * e))", "solved for the angle at the tip")
        .because("g = 360 - n * alpha", "what n faces leave of the full turn, in degrees")
        .problem(FlatPanelLesson::gap)
        .problem(FlatPanelLesson::side)
        .problem(FlatPanelLesson::cone)
        .why(
            "Why must the gap be more than 0°?",
            "With a gap of 0° the faces fill the turn and lie flat on the floor.",
            "Without a gap the cloth would be too heavy to lift.")
        .why(
            "Why do the panels fill less than the cone through the same corners?",
            "A straight side is shorter than the arc between its ends.",
            "A cone has no corners, so it has no gap.")
        .build(
            "Draw a circle of {e:model} on card, step off five chords of {a:model}, cut along the"
                + " outer edges and the gap, fold the four inner lines and close with tape.")
        .check(
            "Measure the gap with the protractor: {g} within 2°. If it is out, the chord was"
                + " stepped off along the arc instead of straight across.")
        .onSite("The gap says how steep the tip is before anything is sewn: here {g}.");
  }

  private static FrameMeasures frame(int n, double a, double e) {
    return FrameSolver.solve(n, Map.of(PyramidMeasure.BASE_SIDE, a, PyramidMeasure.HIP_EDGE, e))
        .single()
        .measures();
  }

  private static Task gap(Sheet s) {
    int n = s.count("n", "number of faces", Shelter.SIDES, 4, 6);
    double a = s.given("a", "side of the base", "m", 2, Shelter.SIDE, 1.6, 2.6);
    double e = s.given("e", "pole", "m", 2, Shelter.measures().hipEdge(), 2.8, 4);
    s.ask(
        "{n} faces with poles of {e} and sides of {a} are laid flat, tip to tip. How large is the"
            + " gap that they leave of the full turn?");
    FrameMeasures m = frame(n, a, e);
    s.step("alpha", "angle at the tip of a face", "2 * asin(a / (2 * e))", m.apexAngle(), "rad");
    double all = s.step("sigma", "all faces", "n * alpha", m.developedAngle(), "rad");
    s.step("g", "gap", "2 * pi - sigma", 2 * Math.PI - all, "rad");
    double share = n * a / (2 * Math.PI * e);
    s.estimate(
        "The sides together are n a of the circle's 2 π e: the faces fill nearly as much of the"
            + " turn, or a little more.",
        2 * Math.PI * (1 - 1.15 * share),
        2 * Math.PI * (1 - share));
    s.slip("The side was not halved.", "2 * pi - n * 2 * asin(a / e)");
    s.slip("The angle was not doubled.", "2 * pi - n * asin(a / (2 * e))");
    return s.task(4);
  }

  private static Task side(Sheet s) {
    s.count("n", "number of faces", Shelter.SIDES, 4, 8);
    s.given("e", "pole", "m", 2, 3.7, 2.6, 4);
    s.given("g", "gap", "°", 0, 170, 100, 200);
    s.ask("{n} flat faces with poles of {e} are to leave a gap of {g}. How long is a side?");
    s.step("alpha", "angle at the tip of a face", "(2 * pi - g) / n", "rad");
    double a = s.step("a", "side", "2 * e * sin(alpha / 2)", "m");
    s.estimate(
        "A little less than the arc: the filled share of 2 π e, divided by n.", 0.9 * a, 1.1 * a);
    s.slip("The angle was not halved.", "2 * e * sin(alpha)");
    s.slip("Only half the side was found.", "e * sin(alpha / 2)");
    return s.task(4);
  }

  private static Task cone(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 4, 6);
    double a = s.given("a", "side of the base", "m", 2, Shelter.SIDE, 1.6, 2.6);
    double e = s.given("e", "pole", "m", 2, Shelter.measures().hipEdge(), 2.8, 4);
    s.ask(
        "A round tent, a cone, goes through the same tip and corners as a frame with {n} sides of"
            + " {a} and poles of {e}. Its edge is a circle of radius R = a / (2 sin(180°/n)); flat,"
            + " the edge is an arc of radius e. Which angle has its flat sector?");
    FrameMeasures m = frame(n, a, e);
    s.step("w", "half the angle of one triangle of the floor", "pi / n", "rad");
    s.step("R", "radius of the edge", "a / (2 * sin(w))", m.circumradius(), "m");
    s.step("phi", "angle of the flat sector", "2 * pi * R / e", m.coneAngle(), "rad");
    s.estimate(
        "R is to e as the sector is to the full turn; R is near the side a.",
        2 * Math.PI * 0.6 * a / e,
        2 * Math.PI * 1.05 * a / e);
    s.slip("The side was taken for the radius.", "2 * pi * a / e");
    s.slip("Half the turn was taken.", "pi * R / e");
    return s.task(4);
  }

  private static Drawing draw(Task t) {
    int n = (int) t.value("n");
    double e = t.value("e");
    double gap = t.value("g");
    Canvas canvas = Canvas.fit(-e, -1.1 * e, e, 1.1 * e, 8, 300);
    List<double[]> turn = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double angle = gap / 2 + i * t.value("alpha");
      turn.add(Shapes.at(e * StrictMath.cos(angle), e * StrictMath.sin(angle)));
    }
    for (int i = 0; i < n; i++) {
      canvas.path(
          List.of(Shapes.at(0, 0), turn.get(i), turn.get(i + 1)), true, Ink.CUT, Shade.LIGHT);
    }
    canvas.path(Shapes.arc(0, 0, e * 0.3, -gap / 2, gap / 2), false, Ink.THIN, Shade.NONE);
    canvas.label(e * 0.55, 0, "gap g");
    double[] first = turn.get(0);
    double[] next = turn.get(1);
    double[] last = turn.get(n);
    canvas.label(last[0] / 2 + 0.24 * e, last[1] * 0.7, "e = " + t.text("e"));
    canvas.label(
        (first[0] + next[0]) * 0.5 + 0.24 * e, (first[1] + next[1]) * 0.54, "a = " + t.text("a"));
    double mid = gap / 2 + t.value("alpha") * 1.5;
    canvas.label(e * 0.4 * StrictMath.cos(mid), e * 0.4 * StrictMath.sin(mid), "α");
    return canvas.drawing(
        "lesson-flat-panels",
        "Faces laid flat around their tip",
        n
            + " triangular faces with two sides e = "
            + t.text("e")
            + " and one side a = "
            + t.text("a")
            + " laid flat around one point. Each has the angle α there; together they"
            + " leave the gap g.");
  }
}
