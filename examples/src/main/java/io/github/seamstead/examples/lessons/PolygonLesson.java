package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPolygon;
import java.util.List;

/** The area of a regular polygon from its side. */
final class PolygonLesson {

  private PolygonLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.FLOOR_AREA)
        .aim("Find the area of a regular polygon from its side, and see why the formula holds.", 45)
        .needs("area of a triangle", "tangent in a right-angled triangle")
        .materials("string", "five sticks or pegs", "ruler", "protractor", "calculator in degrees")
        .scene(
            "The shelter of these lessons stands on five equal sides. Every order for gravel, sand"
                + " and earth starts from the size of its floor.")
        .figure(PolygonLesson::draw)
        .because("", "Lines from the centre cut the floor into n equal triangles.")
        .because("w = 180 / n", "w is half the angle of one triangle, 360° / n / 2, in degrees.")
        .because("tan(w) = (a / 2) / r", "r meets the side at a right angle and halves it.")
        .because("r = a / (2 * tan(w))", "solved for r")
        .because("A = n * (a * r / 2) = p * r / 2", "n triangles of base a and height r; p = n a")
        .problem(PolygonLesson::area)
        .problem(PolygonLesson::side)
        .problem(PolygonLesson::corner)
        .why(
            "Why does r meet the side in its middle?",
            "The triangle has two equal sides R, so its height halves the base.",
            "The height of every triangle halves its base.")
        .why(
            "Why may one triangle be worked and multiplied by n?",
            "All sides are equal and all corners lie equally far from the centre.",
            "All triangles have the same base, so they have the same area.")
        .build(
            "Lay out the base of the model with string: five sides of {a:model}. Find the centre by"
                + " folding, then measure from it to the middle of a side.")
        .check(
            "In the model r must measure {r:model}, within 2 mm, at all five sides. If one side is"
                + " out, the polygon has equal sides but unequal corners: push a corner and measure"
                + " again.")
        .onSite("Round the area up, not down, before ordering: {A} becomes a heap of earth.");
  }

  private static Task area(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 5, 12);
    double a = s.given("a", "side", "m", 2, Shelter.SIDE, 1.2, 3);
    s.ask("A shelter stands on {n} equal sides of {a}. How large is its floor?");
    RegularPolygon base = new RegularPolygon(n, a);
    s.step("w", "half the angle of one triangle", "pi / n", "rad");
    s.step(
        "r", "from the centre to the middle of a side", "a / (2 * tan(w))", base.inradius(), "m");
    double p = s.step("p", "all sides together", "n * a", base.perimeter(), "m");
    s.step("A", "area of the floor", "p * r / 2", base.area(), "m2");
    s.estimate(
        "A square and a circle with the same girth: the floor lies between them.",
        p * p / 16,
        p * p / (4 * Math.PI));
    s.slip("R, the distance to a corner, was taken for r.", "p * a / (4 * sin(w))");
    s.slip("The whole angle of a triangle was taken for its half.", "p * a / (4 * tan(2 * w))");
    return s.task(4);
  }

  private static Task side(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 5, 12);
    double f = s.given("r", "centre to the middle of a side", "m", 2, 1.65, 1.5, 3);
    s.ask(
        "From the centre of a {n}-sided frame to the middle of a side are {r}. How long is a"
            + " side?");
    s.step("w", "half the angle of one triangle", "pi / n", "rad");
    double a = s.step("a", "side", "2 * r * tan(w)", RegularPolygon.ofInradius(n, f).side(), "m");
    s.estimate(
        "All sides together are a little longer than the circle of radius r.",
        2 * Math.PI * f / n,
        Math.max(a, 8 * f / n));
    s.slip("Sine was taken for tangent.", "2 * r * sin(w)");
    s.slip("The half was not doubled.", "r * tan(w)");
    return s.task(4);
  }

  private static Task corner(Sheet s) {
    int n = s.count("n", "number of sides", Shelter.SIDES, 5, 12);
    double a = s.given("a", "side", "m", 2, Shelter.SIDE, 1.2, 3);
    s.ask("How far is it from the centre of a floor with {n} sides of {a} to a corner?");
    s.step("w", "half the angle of one triangle", "pi / n", "rad");
    s.step(
        "R",
        "from the centre to a corner",
        "a / (2 * sin(w))",
        new RegularPolygon(n, a).circumradius(),
        "m");
    s.estimate(
        "The circle through the corners is a little longer than all sides together.",
        n * a / (2 * Math.PI),
        n * a / 5);
    s.slip("Tangent was taken for sine: that is r.", "a / (2 * tan(w))");
    s.slip("The side was not halved.", "a / sin(w)");
    return s.task(4);
  }

  private static Drawing draw(Task t) {
    int n = (int) t.value("n");
    RegularPolygon base = new RegularPolygon(n, t.value("a"));
    double reach = base.circumradius();
    Canvas canvas = Canvas.fit(-reach, -base.inradius(), reach, reach, 26, 300);
    List<double[]> corners = Shapes.polygon(n, reach);
    canvas.path(corners, true, Ink.CUT, Shade.NONE);
    double[] left = corners.get(n - 1);
    double[] right = corners.get(0);
    canvas.path(List.of(Shapes.at(0, 0), left, right), true, Ink.SEAM, Shade.LIGHT);
    canvas.line(0, 0, 0, -base.inradius(), Ink.FOLD);
    double down = -Math.PI / 2;
    canvas.path(
        Shapes.arc(0, 0, reach * 0.3, down, down + Math.PI / n), false, Ink.THIN, Shade.NONE);
    canvas.label(reach * 0.17, -reach * 0.42, "w = " + t.text("w"));
    canvas.label(-reach * 0.16, -base.inradius() * 0.72, "r");
    canvas.label(0, -base.inradius() - reach * 0.1, "a = " + t.text("a"));
    canvas.label(right[0] * 0.62 + reach * 0.12, right[1] * 0.5, "R");
    return canvas.drawing(
        "lesson-polygon",
        "Floor with " + n + " sides",
        "The floor cut into equal triangles from its centre. One is shaded: its base is the side a"
            + " = "
            + t.text("a")
            + ", r reaches to the middle of the side, R to a corner, and w = "
            + t.text("w")
            + " is half its angle at the centre.");
  }
}
