package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.frame.RegularPolygon;
import io.github.seamstead.geometry.tape.Tape;
import io.github.seamstead.geometry.tape.TapeCorrections;
import io.github.seamstead.geometry.tape.TapeUse;
import java.util.List;

/** Four pegs and six tapes: one reading too many tells that something is wrong. */
final class SurveyLesson {

  private SurveyLesson() {}

  static Lesson lesson() {
    return Lesson.named(LessonTitle.SURVEY)
        .aim("Find from five distances what the sixth must be, and judge the difference.", 90)
        .needs("Pythagoras", "coordinates of a point", "solving for an unknown")
        .materials("four pegs or a pinboard", "tape", "paper for a table")
        .scene(
            "Four corners A, B, C, D of the shelter's base are pegged and all six distances taped,"
                + " each good to 3 mm. Five of them fix the four points. The sixth is one more than"
                + " needed: it can contradict the others.")
        .figure(SurveyLesson::draw)
        .because("", "Put A in the origin and B on the x axis, AB = f away.")
        .because("x^2 + y^2 = p^2", "C lies p from A")
        .because("(f - x)^2 + y^2 = q^2", "and q from B")
        .because("x = (f^2 + p^2 - q^2) / (2 * f)", "the difference of the two lines, solved for x")
        .because("y = sqrt(p^2 - x^2)", "C is above AB; D in the same way")
        .problem(SurveyLesson::closure)
        .problem(SurveyLesson::spare)
        .problem(SurveyLesson::warmTape)
        .why(
            "Can the six readings tell which of them is wrong?",
            "No: with one reading to spare, a change of any one of the six makes the figure close.",
            "Yes: it is always the one that was predicted, CD.")
        .why(
            "Why does a fifth peg, with ten tapes, help?",
            "Then three readings are to spare, and only one culprit makes all three agree.",
            "More readings have a smaller error each.")
        .build(
            "Pin four corners of the model's base on a board, tape all six distances to the"
                + " millimetre and let one pupil falsify one of them in secret by 10 mm.")
        .check(
            "Without a falsified reading the sixth must agree with its forecast within 3 mm on the"
                + " model. If it does not, read all six again before you accuse anybody.")
        .onSite(
            "A difference of {m} is far beyond the few millimetres of a tape: something is wrong."
                + " Which one, only another reading tells. The program does this for a whole frame"
                + " by least squares.");
  }

  private static Task closure(Sheet s) {
    double a = s.hidden(Shelter.SIDE, 1.8, 3, 0.1);
    double diagonal = new RegularPolygon(Shelter.SIDES, a).chord(2);
    double slip = s.hidden(0.1, 0.03, 0.15, 0.01);
    double[] stray = new double[6];
    int[] ofShelter = {1, -2, 2, 0, -1, 1};
    for (int i = 0; i < stray.length; i++) {
      stray[i] = s.hidden(ofShelter[i], -2, 2, 1) / 1000;
    }
    s.printed("f", "AB", "m", 3, diagonal + stray[0]);
    s.printed("p", "AC", "m", 3, a + stray[1]);
    s.printed("q", "BC", "m", 3, diagonal + stray[2]);
    s.printed("u", "AD", "m", 3, diagonal + stray[3]);
    s.printed("v", "BD", "m", 3, a + stray[4]);
    s.printed("d", "CD as taped", "m", 3, a + stray[5] + slip);
    s.ask(
        "Taped: AB {f}, AC {p}, BC {q}, AD {u}, BD {v}, CD {d}. Compute CD from the other five. By"
            + " how many millimetres is the taped CD longer?");
    s.step("x_C", "C along AB", "(f^2 + p^2 - q^2) / (2 * f)", "m");
    s.step("y_C", "C off AB", "sqrt(p^2 - x_C^2)", "m");
    s.step("x_D", "D along AB", "(f^2 + u^2 - v^2) / (2 * f)", "m");
    s.step("y_D", "D off AB", "sqrt(u^2 - x_D^2)", "m");
    s.step("c", "CD as it must be", "sqrt((x_D - x_C)^2 + (y_D - y_C)^2)", "m");
    double m = s.step("m", "taped less computed", "1000 * (d - c)", "mm");
    s.estimate(
        "AC, BD and CD were meant equal: compare CD with the mean of the other two.",
        m - 25,
        m + 25);
    s.slip("CD was only compared with AC, as if the base were perfect.", "1000 * (d - p)");
    s.slip(
        "The heights of C and D were added.", "1000 * (d - sqrt((x_D - x_C)^2 + (y_D + y_C)^2))");
    return s.task(2);
  }

  private static Task spare(Sheet s) {
    int points = s.count("N", "pegs", Shelter.SIDES, 4, 9);
    s.ask(
        "All distances between {N} pegs on level ground are taped. Two coordinates of each peg are"
            + " sought, but three of them may be chosen: the origin and the direction of the x"
            + " axis. How many readings are to spare?");
    s.step("a", "distances", "N * (N - 1) / 2", "");
    s.step("b", "coordinates sought", "2 * N - 3", "");
    double spare = s.step("r", "to spare", "a - b", "");
    s.estimate("Fewer than all distances.", 0, points * (points - 1) / 2.0);
    s.slip("Each distance was counted twice.", "N * (N - 1) - b");
    s.slip("The three free coordinates were forgotten.", "a - 2 * N");
    if (spare < 1) {
      throw new IllegalStateException("nothing to spare");
    }
    return s.task(2);
  }

  private static Task warmTape(Sheet s) {
    double l = s.given("l", "reading", "m", 3, 24, 18, 30);
    double t = s.given("T", "temperature of the tape", "°C", 0, 35, 28, 42);
    s.printed("T0", "temperature at which it is right", "°C", 0, 20);
    s.printed(
        "alpha", "growth of steel per metre and degree", "mm", 4, Tape.STEEL_EXPANSION * 1000);
    s.ask(
        "A steel tape is right at {T0} and grows by {alpha} per metre and degree. At {T} it shows"
            + " {l}. How long is the distance?");
    s.step("c", "growth of the tape over the reading", "alpha * l * (T - T0)", "mm");
    s.step(
        "d",
        "distance",
        "l + c / 1000",
        TapeCorrections.correct(
            l, Tape.asMarked().expanding(Tape.STEEL_EXPANSION, 20), TapeUse.flat(t, 50)),
        "m");
    s.estimate(
        "A warm tape is too long, so it shows too little: a few millimetres more.", l, l + 0.02);
    return s.task(7);
  }

  private static Drawing draw(Task t) {
    double[][] at = {
      {0, 0}, {t.value("f"), 0}, {t.value("x_C"), t.value("y_C")}, {t.value("x_D"), t.value("y_D")}
    };
    String[] letters = {"A", "B", "C", "D"};
    int[][] pairs = {{0, 1}, {0, 2}, {1, 2}, {0, 3}, {1, 3}, {2, 3}};
    String[] symbols = {"f", "p", "q", "u", "v", "d"};
    Canvas canvas = Canvas.fit(at[2][0], 0, at[3][0], at[2][1], 30, 260);
    for (int i = 0; i < pairs.length; i++) {
      double[] a = at[pairs[i][0]];
      double[] b = at[pairs[i][1]];
      canvas.line(a[0], a[1], b[0], b[1], i == 5 ? Ink.HEAVY : Ink.CUT);
      double part = i == 2 || i == 3 ? 0.3 : 0.5;
      canvas.label(
          a[0] + part * (b[0] - a[0]),
          a[1] + part * (b[1] - a[1]) + (a[1] == b[1] || i == 5 ? 0.12 : 0),
          symbols[i] + " = " + t.text(symbols[i]));
    }
    for (int i = 0; i < at.length; i++) {
      canvas.dot(at[i][0], at[i][1], 8, Ink.CUT, Shade.PAPER);
      canvas.label(at[i][0], at[i][1], letters[i]);
    }
    return canvas.drawing(
        "lesson-survey",
        "Four pegs with all six distances",
        "Pegs A and B below, C above A to the left, D above B to the right. All six distances are"
            + " drawn with their readings: "
            + readings(t, symbols)
            + ". CD, heavy, is one more than"
            + " needed.");
  }

  private static String readings(Task t, String[] symbols) {
    return String.join(
        ", ", List.of(symbols).stream().map(symbol -> symbol + " " + t.text(symbol)).toList());
  }
}
