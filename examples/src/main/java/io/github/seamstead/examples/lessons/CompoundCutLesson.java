package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.members.CompoundCut;
import java.util.List;

/** The saw setting for a ring of leaning boards. */
final class CompoundCutLesson {

  private CompoundCutLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.SAW_ANGLES)
        .aim("Find mitre and tilt of a cut between leaning boards, and test them with card.", 90)
        .needs("lesson 1: the half angle w", "sine, cosine, tangent", "slope as an angle")
        .materials("strips of thick card", "protractor", "mitre box or scissors", "tape")
        .scene(
            "A ring of flat boards lies against the sloping faces, wide side to the cloth. Where"
                + " two boards meet, the saw must be turned (mitre) and its blade leant (tilt).")
        .figure(CompoundCutLesson::draw)
        .because("", "Two equal boards meet in the upright plane that halves their corner.")
        .because("", "On the level that plane runs tan w along the board for each 1 inwards.")
        .because("tan(M) = tan(w) * cos(theta)", "1 up the wide face is only cos θ inwards")
        .because(
            "sin(T) = sin(w) * sin(theta)",
            "the plane's normal, seen along the normal of the wide face")
        .because(
            "", "Flat boards, θ = 0°: M = w and T = 0°. Upright boards, θ = 90°: M = 0° and T = w.")
        .problem(CompoundCutLesson::mitre)
        .problem(CompoundCutLesson::tilt)
        .problem(CompoundCutLesson::slope)
        .why(
            "Why is the mitre of a leaning ring smaller than that of a flat ring?",
            "cos θ is less than 1, so tan M is less than tan w.",
            "The leaning boards are shorter.")
        .why(
            "Which cut does an upright box of four boards need?",
            "No mitre and a tilt of 45°: that is the limit θ = 90° with w = 45°.",
            "A mitre of 45° and no tilt, as for a picture frame.")
        .build(
            "Cut two strips of card 30 mm wide with the mitre {M}, one at its right end, one at its"
                + " left end. Tape these ends together and lean both strips at {theta}.")
        .check(
            "Seen from above, the two strips must meet at 360°/{n} less than a straight line,"
                + " within 3°. If they were cut at the same end, they meet in a step and the test"
                + " fails at once.")
        .onSite(
            "Cut two offcuts first and hold them together: a wrong tilt shows as a wedge of"
                + " light.");
  }

  private static double[] ring(Sheet s, String question) {
    int n = s.count("n", "number of boards", Shelter.SIDES, 4, 10);
    double slope =
        s.given(
            "theta",
            "slope of the wide face",
            "°",
            0,
            Math.toDegrees(Shelter.measures().faceSlope()),
            30,
            75);
    s.ask(question);
    s.step("w", "half the outer angle of the ring", "pi / n", "rad");
    return new double[] {n, slope};
  }

  private static Task mitre(Sheet s) {
    double[] ring =
        ring(s, "A ring of {n} boards lies against faces that rise at {theta}. What is the mitre?");
    double m = CompoundCut.ringCorner((int) ring[0], ring[1]).mitre();
    s.step("M", "mitre across the wide face", "atan(tan(w) * cos(theta))", m, "rad");
    s.estimate("Less than w, the mitre of a flat ring.", 0, Math.PI / ring[0]);
    s.slip("Sine was taken for cosine.", "atan(tan(w) * sin(theta))");
    s.slip("The ring was taken as flat.", "w");
    return s.task(3);
  }

  private static Task tilt(Sheet s) {
    double[] ring =
        ring(s, "A ring of {n} boards lies against faces that rise at {theta}. What is the tilt?");
    double tilt = CompoundCut.ringCorner((int) ring[0], ring[1]).tilt();
    s.step("T", "tilt of the blade", "asin(sin(w) * sin(theta))", tilt, "rad");
    s.estimate("Less than w, the tilt of an upright ring.", 0, Math.PI / ring[0]);
    s.slip("Cosine was taken for sine.", "asin(sin(w) * cos(theta))");
    s.slip("The boards were taken as upright.", "w");
    return s.task(3);
  }

  private static Task slope(Sheet s) {
    int n = s.count("n", "number of boards", Shelter.SIDES, 4, 10);
    double flat = Math.PI / n;
    int most = (int) Math.toDegrees(flat) - 2;
    double m = s.given("M", "mitre", "°", 0, 20, Math.min(8, most - 1), most);
    s.ask("The mitre of a ring of {n} boards is {M}. At which slope do the boards lie?");
    s.step("w", "half the outer angle of the ring", "pi / n", "rad");
    s.step("theta", "slope", "acos(tan(M) / tan(w))", "rad");
    s.estimate("The nearer the mitre is to w, the flatter the ring.", 0, Math.PI / 2);
    s.slip("Sine was taken for cosine.", "asin(tan(M) / tan(w))");
    s.slip("Angles were divided instead of tangents.", "acos(M / w)");
    if (m >= flat) {
      throw new IllegalStateException("mitre beyond that of a flat ring");
    }
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    int n = (int) t.value("n");
    Canvas canvas = Canvas.fit(-1.2, -1.1, 4, 1.2, 12, 230);
    List<double[]> outer = Shapes.polygon(n, 1);
    List<double[]> inner = Shapes.polygon(n, 0.66);
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      canvas.path(
          List.of(outer.get(i), outer.get(next), inner.get(next), inner.get(i)),
          true,
          Ink.CUT,
          i == 0 ? Shade.LIGHT : Shade.NONE);
    }
    double[] corner = inner.get(0);
    canvas.line(0, 0, corner[0], corner[1], Ink.FOLD);
    canvas.line(0, 0, 0, -0.5, Ink.FOLD);
    double down = -Math.PI / 2;
    canvas.path(Shapes.arc(0, 0, 0.3, down, down + Math.PI / n), false, Ink.THIN, Shade.NONE);
    canvas.label(0.13, -0.4, "w");
    double slope = t.value("theta");
    canvas.line(1.7, -0.7, 3.8, -0.7, Ink.THIN);
    double dx = StrictMath.cos(slope);
    double dy = StrictMath.sin(slope);
    canvas.path(
        List.of(
            Shapes.at(2, -0.7),
            Shapes.at(2 + 1.5 * dx, -0.7 + 1.5 * dy),
            Shapes.at(2 + 1.5 * dx - 0.2 * dy, -0.7 + 1.5 * dy + 0.2 * dx),
            Shapes.at(2 - 0.2 * dy, -0.7 + 0.2 * dx)),
        true,
        Ink.CUT,
        Shade.LIGHT);
    canvas.path(Shapes.arc(2, -0.7, 0.6, 0, slope), false, Ink.THIN, Shade.NONE);
    canvas.label(3.1, -0.45, "θ = " + t.text("theta"));
    canvas.label(-0.1, -1.02, "from above");
    canvas.label(2.8, -0.95, "from the side");
    return canvas.drawing(
        "lesson-compound-cut",
        "Ring of boards from above and one board from the side",
        "Left, a ring of "
            + n
            + " boards from above; w is half the angle that a board takes at the"
            + " centre. Right, one board from the side: its wide face rises at θ = "
            + t.text("theta")
            + ".");
  }
}
