package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.pattern.Mitre;
import java.util.List;

/** Seam allowances and the sharp corner at the tip. */
final class AllowanceLesson {

  /** No limit to the mitre. */
  private static final double WHOLE = 100;

  private AllowanceLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.ALLOWANCE)
        .aim("Find how far a parallel strip reaches beyond a sharp corner.", 45)
        .needs("lesson 3: the angle at the tip", "sine in a right-angled triangle")
        .materials("paper", "ruler with parallel edges", "scissors", "protractor")
        .scene(
            "A panel of the shelter ends in a tip of {phi}. Along both edges it gets a seam"
                + " allowance of {c}. The two strips run on beyond the tip into a long spike.")
        .figure(AllowanceLesson::draw)
        .because(
            "", "The cut line keeps c from both stitch lines, so its tip lies on the middle line.")
        .because(
            "", "From the tip of the stitch line drop c onto the cut line: a right angle there.")
        .because("sin(phi / 2) = c / l", "half the angle lies between the middle line and the edge")
        .because("l = c / sin(phi / 2)", "solved for the reach")
        .problem(AllowanceLesson::reach)
        .problem(AllowanceLesson::angle)
        .why(
            "Why does the half angle stand in the sum?",
            "The middle line halves the tip, and the right angle lies in one half.",
            "There are two allowances, so everything is halved.")
        .why(
            "What happens to the reach as the tip gets sharper?",
            "It grows without end: the sine of a small angle is small.",
            "It nears the allowance c.")
        .build(
            "Draw a tip of {phi}, add a strip of one ruler width on both sides, and cut out. Fold"
                + " five such tips over one another.")
        .check(
            "Measure the spike on paper with a ruler w wide: it must be w · {l} / {c}, within a"
                + " millimetre or two. If it is about w long, the strips were ended square.")
        .onSite(
            "The whole spike would be {l}; five of them under one cap do not lie flat. It is cut"
                + " off at twice the allowance, which takes nothing from the seam.");
  }

  private static Task reach(Sheet s) {
    double phi =
        s.given(
            "phi",
            "angle of the tip",
            "°",
            0,
            Math.toDegrees(Shelter.measures().apexAngle()),
            25,
            80);
    double c = s.given("c", "allowance", "mm", 0, 40, 15, 60);
    s.ask(
        "A tip of {phi} has an allowance of {c} along both edges. How far does the cloth reach"
            + " beyond the tip of the stitch line?");
    s.step(
        "l", "reach", "c / sin(phi / 2)", 1000 * Mitre.reach(phi, c / 1000, c / 1000, WHOLE), "mm");
    s.estimate(
        "More than the allowance; at 60° twice as much, at half of that nearly four times.",
        c,
        5 * c);
    s.slip("The angle was not halved.", "c / sin(phi)");
    s.slip("Cosine was taken for sine.", "c / cos(phi / 2)");
    return s.task(3);
  }

  private static Task angle(Sheet s) {
    s.given("k", "reach over allowance", "", 1, 2, 1.2, 4);
    s.ask("At which angle of the tip does the cloth reach {k} times the allowance?");
    s.step("phi", "angle of the tip", "2 * asin(1 / k)", "rad");
    s.estimate("Twice the allowance belongs to 60°; less reach to a blunter tip.", 0.4, Math.PI);
    s.slip("Only half the angle was given.", "asin(1 / k)");
    s.slip("Cosine was taken for sine.", "2 * acos(1 / k)");
    return s.task(3);
  }

  private static Drawing draw(Task t) {
    double half = t.value("phi") / 2;
    double c = t.value("c");
    double reach = t.value("l");
    double low = -6.5 * c;
    double foot = -low * StrictMath.tan(half);
    double wide = (reach - low) * StrictMath.tan(half);
    Canvas canvas = Canvas.fit(-wide, low, wide, reach, 18, 300);
    canvas.path(
        List.of(Shapes.at(-wide, low), Shapes.at(0, reach), Shapes.at(wide, low)),
        false,
        Ink.CUT,
        Shade.PALE);
    canvas.path(
        List.of(Shapes.at(-foot, low), Shapes.at(0, 0), Shapes.at(foot, low)),
        false,
        Ink.SEAM,
        Shade.NONE);
    canvas.line(0, reach, 0, low, Ink.FOLD);
    canvas.line(0, 0, c * StrictMath.cos(half), c * StrictMath.sin(half), Ink.CUT);
    double down = -Math.PI / 2;
    canvas.path(Shapes.arc(0, 0, 2.2 * c, down - half, down + half), false, Ink.THIN, Shade.NONE);
    canvas.text(1.2 * c, 0.5 * c, "c = " + t.text("c"), Canvas.TEXT, "start", 0);
    canvas.text(-0.4 * c, reach * 0.55, "l", Canvas.TEXT, "end", 0);
    canvas.label(0, -2.8 * c, "φ = " + t.text("phi"));
    return canvas.drawing(
        "lesson-allowance",
        "Tip of a panel with its allowance",
        "The dashed stitch line ends in a tip of φ = "
            + t.text("phi")
            + ". The cut line keeps c = "
            + t.text("c")
            + " from it on both sides and runs out into a spike that reaches l beyond"
            + " the tip.");
  }
}
