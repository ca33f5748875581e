package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.survey.AdjustmentSummary;
import io.github.seamstead.geometry.survey.Blunder;
import io.github.seamstead.geometry.survey.BlunderReport;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.Reading;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.geometry.survey.Tape;
import io.github.seamstead.geometry.survey.TapeCorrections;
import io.github.seamstead.geometry.survey.TapeUse;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lesson 6: one wrong measurement found by least squares. */
public final class SurveyLesson implements Lesson {

  private static final int SIDES = 6;
  private static final double RADIUS = 2;
  private static final double HEIGHT = 1.8;
  private static final double DOUBT = 0.003;
  private static final int WRONG = 14;

  /** What the tape strayed by, in millimetres, reading by reading. */
  private static final int[] STRAY = {
    2, -1, 0, 3, -2, 1, -3, 2, 1, -1, 0, 2, -2, 1, 3, -1, 0, 2, -2, 1, -1
  };

  private static final double SLIP = 0.1;

  /** Creates the lesson. */
  public SurveyLesson() {}

  /**
   * Prints the lesson.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(new SurveyLesson().text());
  }

  @Override
  public String title() {
    return "One wrong measurement among many";
  }

  @Override
  public String question() {
    return "A frame meant to have six sides of 2.00 m is taped as it stands: six sides, six poles,"
        + " nine diagonals, each good to 3 mm. One reading was written 10 cm too long. Can"
        + " the others tell which?";
  }

  @Override
  public Drawing picture() {
    Canvas canvas = Canvas.fit(-RADIUS, -RADIUS, RADIUS, RADIUS, 24, 300);
    List<int[]> pairs = basePairs();
    for (int i = 0; i < pairs.size(); i++) {
      double[] a = corner(pairs.get(i)[0]);
      double[] b = corner(pairs.get(i)[1]);
      boolean wrong = i == WRONG - 1 - SIDES;
      canvas.line(a[0], a[1], b[0], b[1], wrong ? Ink.HEAVY : i < SIDES ? Ink.CUT : Ink.THIN);
    }
    for (int i = 1; i <= SIDES; i++) {
      double[] c = corner(i);
      canvas.dot(c[0], c[1], 2.5, Ink.CUT, Shade.PAPER);
      canvas.label(1.14 * c[0], 1.14 * c[1], "B" + i);
    }
    return canvas.drawing(
        "lesson-survey",
        "Taped distances in plan",
        "The base in plan with its sides and diagonals. The heavy line is the reading that the"
            + " others contradict.");
  }

  @Override
  public Derivation worked() {
    BlunderReport report = survey().findBlunders();
    return Worked.of(
        "geometry.survey.standardised-residual",
        "Standardised residual of the worst reading",
        steps ->
            AdjustmentSummary.standardisedResidual(
                report.first(), report.blunders().get(0).number(), steps));
  }

  @Override
  public String answer() {
    Blunder blunder = survey().findBlunders().blunders().get(0);
    return "Yes: "
        + blunder.reading().name()
        + ". Its standardised residual is far beyond the limit of "
        + new Exercise("", blunder.critical(), "", 3).shownAnswer()
        + ". Without it the others say "
        + new Exercise("", blunder.predicted().value(), "m", 4).shownAnswer()
        + ": the tape was read "
        + new Exercise("", blunder.error(), "m", 2).shownAnswer()
        + " too long. Measure it again before you cut.";
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise(
            "A steel tape (11.6 millionths per degree, right at 20 °C) shows 30 m at 35 °C. How"
                + " long is the distance?",
            TapeCorrections.correct(
                30, Tape.asMarked().expanding(Tape.STEEL_EXPANSION, 20), TapeUse.flat(35, 50)),
            "m",
            7),
        new Exercise(
            "A tape of 0.2 N/m hangs free over 10 m at a pull of 50 N and shows 10 m. How long is"
                + " the distance?",
            TapeCorrections.correct(
                10, Tape.asMarked().weighing(0.2), TapeUse.hung(20, 50, List.of(10.0))),
            "m",
            7),
        new Exercise(
            "A tape marked 30 m is 30.012 m long. It shows 12 m. How long is the distance?",
            TapeCorrections.correct(
                12, Tape.asMarked().standardised(30, 30.012), TapeUse.flat(20, 50)),
            "m",
            6));
  }

  private static Survey survey() {
    double hip = Math.hypot(RADIUS, HEIGHT);
    List<Reading> readings = new ArrayList<>();
    for (int i = 1; i <= SIDES; i++) {
      readings.add(reading(readings.size() + 1, "B" + i, "A", hip));
    }
    for (int[] pair : basePairs()) {
      double[] a = corner(pair[0]);
      double[] b = corner(pair[1]);
      double length = Math.hypot(a[0] - b[0], a[1] - b[1]);
      readings.add(reading(readings.size() + 1, "B" + pair[0], "B" + pair[1], length));
    }
    return Survey.of(
        SurveyShape.whole(SIDES).meant(new SurveyShape.Ideal(RADIUS, HEIGHT, 0)), readings);
  }

  private static Reading reading(int number, String from, String to, double length) {
    double shown = length + STRAY[number - 1] / 1000.0 + (number == WRONG ? SLIP : 0);
    double read = Math.round(shown * 1000) / 1000.0;
    String written = String.format(Locale.ROOT, "%.3f m", read);
    return new Reading.Distance(Node.parse(from), Node.parse(to), read, DOUBT, written);
  }

  private static List<int[]> basePairs() {
    List<int[]> pairs = new ArrayList<>();
    for (int apart = 1; apart <= SIDES / 2; apart++) {
      for (int i = 1; i <= (apart == SIDES / 2 ? SIDES / 2 : SIDES); i++) {
        pairs.add(new int[] {i, (i + apart - 1) % SIDES + 1});
      }
    }
    return pairs;
  }

  private static double[] corner(int number) {
    double angle = 2 * Math.PI * number / SIDES;
    return new double[] {RADIUS * Math.cos(angle), RADIUS * Math.sin(angle)};
  }
}
