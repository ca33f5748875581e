package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.List;
import java.util.Map;

/** The poles of a pyramid, and how many measures fix it. */
final class PyramidLesson {

  private PyramidLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.POLES)
        .aim(
            "Find edges and heights of a regular pyramid with Pythagoras in the right triangle.",
            45)
        .needs("lesson 1: R from the side", "Pythagoras")
        .materials("the model's base from lesson 1", "skewers or straws", "set square", "ruler")
        .scene(
            "The tip of the shelter is to be {H} above the floor of lesson 1. The poles run from"
                + " the corners of the base to the tip. They are cut before anything stands.")
        .figure(PyramidLesson::draw)
        .because("", "The tip stands upright above the centre of the floor.")
        .because("", "So H, R and the pole e make a triangle with its right angle at the centre.")
        .because("R^2 + H^2 = e^2", "Pythagoras in that triangle")
        .because("e = sqrt(R^2 + H^2)", "a length is not negative, so the positive root")
        .problem(PyramidLesson::pole)
        .problem(PyramidLesson::height)
        .problem(PyramidLesson::twin)
        .why(
            "Why does R go into the sum and not r?",
            "A pole ends at a corner, and R reaches to a corner.",
            "R is longer than r, and the longer one is on the safe side.")
        .why(
            "With the number of sides, do two measures always fix the pyramid?",
            "No: a low wide one and a high narrow one can have the same pole and the same volume.",
            "Yes: two measures that do not follow from one another always do.")
        .build(
            "Cut five skewers to {e:model} and join them over the base. Before glueing, hold the"
                + " ruler upright in the centre.")
        .check(
            "The model's tip must stand {H:model} above the centre, within 3 mm. If it is lower,"
                + " the skewers have been cut to the middle line of a face instead of to the"
                + " corners.")
        .onSite(
            "{e} is the line from point to point. The cut list is shorter by what the joints at tip"
                + " and base take.");
  }

  private static Task pole(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 4, 6);
    double a = s.given("a", "side of the base", "m", 2, Shelter.SIDE, 1.6, 2.6);
    double h = s.given("H", "height of the tip", "m", 2, Shelter.HEIGHT, 1.8, 3.4);
    s.ask("The base has {n} sides of {a}; the tip is {H} high. How long is a pole?");
    FrameMeasures m = RegularPyramid.ofBaseSideAndHeight(n, a, h).measures();
    s.step("w", "half the angle of one triangle of the floor", "pi / n", "rad");
    s.step("R", "from the centre to a corner", "a / (2 * sin(w))", m.circumradius(), "m");
    s.step("e", "pole", "sqrt(R^2 + H^2)", m.hipEdge(), "m");
    s.estimate("Longer than the height, shorter than height and side together.", h, h + a);
    s.slip("r, to the middle of a side, was taken for R.", "sqrt((a / (2 * tan(w)))^2 + H^2)");
    s.slip("The two legs were added, not their squares.", "R + H");
    return s.task(4);
  }

  private static Task height(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 4, 6);
    double a = s.given("a", "side of the base", "m", 2, Shelter.SIDE, 1.6, 2.4);
    double e = s.given("e", "pole", "m", 2, 3.7, 2.6, 3.6);
    s.ask("The base has {n} sides of {a}; the poles are {e} long. How high is the tip?");
    RegularPyramid frame =
        FrameSolver.solve(n, Map.of(PyramidMeasure.BASE_SIDE, a, PyramidMeasure.HIP_EDGE, e))
            .single();
    s.step("w", "half the angle of one triangle of the floor", "pi / n", "rad");
    s.step(
        "R",
        "from the centre to a corner",
        "a / (2 * sin(w))",
        frame.measures().circumradius(),
        "m");
    s.step("H", "height", "sqrt(e^2 - R^2)", frame.apexHeight(), "m");
    s.estimate("Shorter than the pole, longer than pole less side.", e - a, e);
    s.slip("The pole was taken for a short side: the squares were added.", "sqrt(e^2 + R^2)");
    s.slip("r was taken for R.", "sqrt(e^2 - (a / (2 * tan(w)))^2)");
    return s.task(4);
  }

  private static Task twin(Sheet s) {
    double e = s.given("e", "pole of both", "m", 2, 3.1, 2.8, 3.8);
    double low = s.given("H1", "height of the low one", "m", 2, 1.1, 0.8, 1.4);
    s.ask(
        "A low pyramid has poles of {e} and a height of {H1}. A second one, higher and narrower,"
            + " has equal poles, equally many sides and the same volume. How high is it? Hint: the"
            + " volume goes with R² H, that is with (e² − H²) H. Equal volumes give H1² + H1 H2 +"
            + " H2² = e².");
    s.step("D", "under the root of the quadratic formula", "4 * e^2 - 3 * H1^2", "m2");
    s.step("H2", "height of the high one", "(sqrt(D) - H1) / 2", "m");
    s.estimate("Higher than the low one, lower than the pole is long.", low, e);
    s.slip("The two heights were taken to make up the pole.", "e - H1");
    s.slip("The wrong sign of the linear term.", "(sqrt(D) + H1) / 2");
    return s.task(4);
  }

  private static Drawing draw(Task t) {
    int n = (int) t.value("n");
    double radius = t.value("R");
    double height = t.value("H");
    Canvas canvas = Canvas.fit(-radius, -radius * 0.35, radius, height, 30, 300);
    List<double[]> corners =
        Shapes.polygon(n, radius).stream().map(c -> Shapes.at(c[0], 0.35 * c[1])).toList();
    canvas.path(corners, true, Ink.CUT, Shade.NONE);
    double[] tip = Shapes.at(0, height);
    corners.forEach(c -> canvas.line(c[0], c[1], tip[0], tip[1], Ink.CUT));
    double[] c = corners.get(1);
    canvas.path(List.of(Shapes.at(0, 0), c, tip), true, Ink.SEAM, Shade.LIGHT);
    canvas.path(
        List.of(Shapes.at(0, 0.14), Shapes.at(0.14, 0.14), Shapes.at(0.14, 0)),
        false,
        Ink.THIN,
        Shade.NONE);
    canvas.label(-0.42, height * 0.45, "H = " + t.text("H"));
    canvas.label(c[0] / 2, c[1] / 2 - 0.18, "R");
    canvas.label(c[0] / 2 + 0.28, (height + c[1]) / 2 + 0.1, "e");
    double[] a = corners.get(0);
    canvas.label(0, a[1] - 0.2, "a = " + t.text("a"));
    return canvas.drawing(
        "lesson-pyramid",
        "Shelter with its poles",
        "The shelter seen from the side and a little above. The shaded triangle stands upright in"
            + " it: height H = "
            + t.text("H")
            + ", R from the centre to a corner, and the pole e."
            + " Its right angle is at the centre of the floor.");
  }
}
