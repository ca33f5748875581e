package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

/** The revised lifting equation against its manual's tables and worked examples. */
class LiftOutsideTest {

  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final Source TUTORIAL =
      Source.found("", "Occupational ergonomics tutorial, revised lifting equation", "", "tables");
  private static final Source CODE =
      Source.found("", "Frequency table of the manual, two copies in public code", "", "table 5");
  private static final Source MANUAL =
      Source.fromMemory(
          "Waters, Putz-Anderson and Garg",
          "Applications Manual for the Revised NIOSH Lifting Equation, 94-110",
          "1994",
          "worked examples");
  private static final Source CCOHS =
      Source.found(
          "CCOHS", "Revised lifting equation, vertical lift", "", "15 kg, stepped factors");
  private static final Source INSPECTION =
      Source.found("", "Answer site: 12 kg loads inspected for damage", "", "");
  private static final Source BOXES =
      Source.found("", "Answer site: boxes, no frequency term", "", "");

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("assembly.handling", what, source).expect(expected).within(within).got(got);
  }

  private static Multipliers at(
      LiftForm form, double unit, double h, double v, double d, double a) {
    return LiftLimit.of(
            LiftTask.of(
                h * unit,
                v * unit,
                (v + d) * unit,
                Math.toRadians(a),
                0.2,
                LiftDuration.UP_TO_ONE_HOUR,
                Coupling.GOOD),
            form)
        .start();
  }

  private static Multipliers inches(double h, double v, double d, double a) {
    return at(LiftForm.US_CUSTOMARY, INCH, h, v, d, a);
  }

  private static Multipliers metric(double h, double v, double d, double a) {
    return at(LiftForm.METRIC, 0.01, h, v, d, a);
  }

  @Test
  void horizontalMultiplier() {
    double[] printed = {
      1.00, .91, .83, .77, .71, .67, .63, .59, .56, .53, .50, .48, .46, .44, .42, .40
    };
    for (int i = 0; i < printed.length; i++) {
      check(
          "HM at " + (10 + i) + " in",
          TUTORIAL,
          printed[i],
          0.006,
          inches(10 + i, 30, 10, 0).reach());
    }
    int[] cm = {25, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 63};
    double[] metric = {
      1.00, .89, .83, .78, .74, .69, .66, .63, .60, .57, .54, .52, .50, .48, .46, .45, .43, .42, .40
    };
    for (int i = 0; i < cm.length; i++) {
      check("HM at " + cm[i] + " cm", TUTORIAL, metric[i], 0.006, metric(cm[i], 75, 25, 0).reach());
    }
    // The table prints .46 and .44 at 22 and 23 in; true values round to .45 and .43.
    assertThat(inches(22, 30, 10, 0).reach()).isCloseTo(.4545, within(5e-5));
    assertThat(inches(23, 30, 10, 0).reach()).isCloseTo(.4348, within(5e-5));
    check("HM beyond 25 in", TUTORIAL, 0, 0, inches(25.1, 30, 10, 0).reach());
    check("HM beyond 63 cm", TUTORIAL, 0, 0, metric(63.1, 75, 25, 0).reach());
    check("HM nearer than 25 cm", TUTORIAL, 1, 0, metric(10, 75, 25, 0).reach());
  }

  @Test
  void otherMultipliers() {
    check("VM at the floor", TUTORIAL, 0.78, 0.005, metric(25, 0, 25, 0).height());
    check("VM at 75 cm", TUTORIAL, 1, 0, metric(25, 75, 25, 0).height());
    check("VM at 175 cm", TUTORIAL, 0.70, 0.005, metric(25, 175, 0, 0).height());
    check("VM above 175 cm", TUTORIAL, 0, 0, metric(25, 175.1, 0, 0).height());
    check("VM at the floor, in", TUTORIAL, 0.78, 0.006, inches(10, 0, 10, 0).height());
    check("VM at 30 in", TUTORIAL, 1, 0, inches(10, 30, 10, 0).height());
    check("VM at 70 in", TUTORIAL, 0.70, 0.005, inches(10, 70, 0, 0).height());
    double[] twist = {1.00, .95, .90, .86, .81, .76, .71, .66, .62, .57};
    for (int i = 0; i < twist.length; i++) {
      check(
          "AM at " + 15 * i + " degrees",
          TUTORIAL,
          twist[i],
          0.005,
          metric(25, 75, 25, 15.0 * i).twist());
    }
    check("AM beyond 135 degrees", TUTORIAL, 0, 0, metric(25, 75, 25, 136).twist());
    check("DM up to 25 cm", TUTORIAL, 1, 1e-12, metric(25, 75, 10, 0).travel());
    check("ideal lift, kg", TUTORIAL, 23, 1e-9, metric(25, 75, 25, 0).mass());
    check("ideal lift, lb", TUTORIAL, 51, 1e-9, inches(10, 30, 10, 0).mass() / POUND);
    double[][] coupling = {{1, 1}, {.95, 1}, {.90, .90}};
    for (Coupling c : Coupling.values()) {
      check(
          "CM " + c.label() + " below 75 cm",
          MANUAL.at("table 7"),
          coupling[c.ordinal()][0],
          0,
          c.multiplier(false));
      check(
          "CM " + c.label() + " from 75 cm",
          MANUAL.at("table 7"),
          coupling[c.ordinal()][1],
          0,
          c.multiplier(true));
    }
  }

  @Test
  void frequencyMultiplier() {
    double[] f = {.2, .5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16};
    double[][] high = {
      {1, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, .34, .31, .28, 0},
      {.95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, .23, .21, 0, 0, 0, 0},
      {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0, 0}
    };
    double[][] low = {
      {1, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, 0, 0, 0, 0},
      {.95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, 0, 0, 0, 0, 0, 0},
      {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, 0, 0, 0, 0, 0, 0, 0, 0}
    };
    for (LiftDuration duration : LiftDuration.values()) {
      for (int i = 0; i < f.length; i++) {
        String what = "FM at " + f[i] + " a minute " + duration.label();
        check(
            what + ", from 75 cm",
            CODE,
            high[duration.ordinal()][i],
            0,
            duration.multiplier(f[i], true));
        check(
            what + ", below 75 cm",
            CODE,
            low[duration.ordinal()][i],
            0,
            duration.multiplier(f[i], false));
      }
      // Copies in code treat a frequency between two rows as 0.
      assertThat(duration.multiplier(2.5, true))
          .isCloseTo(
              (duration.multiplier(2, true) + duration.multiplier(3, true)) / 2, within(1e-12));
      assertThat(duration.multiplier(0, true)).isEqualTo(duration.multiplier(0.2, true));
    }
  }

  private static LiftLimit example(double h, double from, double to, double a, Coupling coupling) {
    return LiftLimit.of(
        LiftTask.of(
            h * INCH,
            from * INCH,
            to * INCH,
            Math.toRadians(a),
            0.2,
            LiftDuration.UP_TO_ONE_HOUR,
            coupling),
        LiftForm.US_CUSTOMARY);
  }

  private static void multipliers(
      String example, Multipliers m, double hm, double vm, double dm, double am, double cm) {
    check(example + ": HM", MANUAL, hm, 0.006, m.reach());
    check(example + ": VM", MANUAL, vm, 0.006, m.height());
    check(example + ": DM", MANUAL, dm, 0.006, m.travel());
    check(example + ": AM", MANUAL, am, 0.006, m.twist());
    check(example + ": FM", MANUAL, 1, 0, m.frequency());
    check(example + ": CM", MANUAL, cm, 0, m.coupling());
  }

  /** The manual multiplies two-figure multipliers; the unrounded limit is up to 3 % from it. */
  private static void limit(
      String example, double lb, double ratio, double li, double load, Multipliers m) {
    double got = m.mass() / POUND;
    check(example + ": limit, unrounded multipliers, lb", MANUAL, lb, ratio * lb, got);
    check(example + ": lifting index", MANUAL, li, 0.05 + ratio * li, load / got);
  }

  /** Rounds each multiplier as the manual's work sheets do. */
  private static double asOnTheSheet(Multipliers m) {
    return 51
        * twoFigures(m.reach())
        * twoFigures(m.height())
        * twoFigures(m.travel())
        * twoFigures(m.twist())
        * twoFigures(m.frequency())
        * twoFigures(m.coupling());
  }

  private static double twoFigures(double multiplier) {
    return Math.round(multiplier * 100) / 100.0;
  }

  @Test
  void manualExampleOnePunchPress() {
    LiftLimit press = example(23, 15, 64, 0, Coupling.FAIR);
    multipliers("punch press, origin", press.start(), .44, .89, .86, 1, .95);
    multipliers("punch press, destination", press.end().orElseThrow(), .44, .75, .86, 1, 1);
    limit("punch press, origin", 16.3, 0.03, 2.7, 44, press.start());
    limit("punch press, destination", 14.5, 0.03, 3.0, 44, press.end().orElseThrow());
    // At 23 in the sheet has .44 from the table, where the formula rounds to .43.
    check(
        "punch press, multipliers of the sheet, lb",
        MANUAL,
        16.3,
        0.05,
        asOnTheSheet(press.start()) / .43 * .44);
    check(
        "punch press, destination, multipliers of the sheet, lb",
        MANUAL,
        14.5,
        0.05,
        asOnTheSheet(press.end().orElseThrow()) / .43 * .44);
    check(
        "punch press, unrounded, lb",
        Source.derived("unrounded multipliers"),
        16.02,
        0.005,
        press.start().mass() / POUND);
    check(
        "punch press, destination, unrounded, lb",
        Source.derived("unrounded multipliers"),
        14.15,
        0.005,
        press.mass() / POUND);
  }

  @Test
  void manualExampleTwoSupplyRolls() {
    LiftLimit rolls = example(20, 27, 10, 0, Coupling.POOR);
    multipliers("supply rolls, origin", rolls.start(), .50, .98, .93, 1, .90);
    multipliers("supply rolls, destination", rolls.end().orElseThrow(), .50, .85, .93, 1, .90);
    limit("supply rolls, origin", 20.9, 0.01, 1.7, 35, rolls.start());
    limit("supply rolls, destination", 18.1, 0.01, 1.9, 35, rolls.end().orElseThrow());
    check(
        "supply rolls, multipliers of the sheet, lb",
        MANUAL,
        20.9,
        0.05,
        asOnTheSheet(rolls.start()));
    check(
        "supply rolls, destination, multipliers of the sheet, lb",
        MANUAL,
        18.1,
        0.05,
        asOnTheSheet(rolls.end().orElseThrow()));
  }

  @Test
  void manualExampleThreeBags() {
    LiftLimit bags = example(18, 15, 36, 45, Coupling.FAIR);
    multipliers("bags into a hopper", bags.start(), .56, .89, .91, .86, .95);
    limit("bags into a hopper", 18.9, 0.03, 2.1, 40, bags.start());
    check(
        "bags into a hopper, multipliers of the sheet, lb",
        MANUAL,
        18.9,
        0.05,
        asOnTheSheet(bags.start()));
  }

  private static LiftLimit centimetres(
      double h, double from, double to, double perMinute, Coupling coupling) {
    return LiftLimit.of(
        LiftTask.of(
            h / 100, from / 100, to / 100, 0, perMinute, LiftDuration.UP_TO_ONE_HOUR, coupling));
  }

  @Test
  void otherWorkedExamples() {
    // The body that prints these uses stepped factors, .80 for .775 and .95 for .9325.
    double floor = centimetres(30, 0, 115, 1 / 12.0, Coupling.POOR).start().mass();
    check("loose metal from the floor, kg", CCOHS, 11.4, 0.02 * 11.4, floor);
    check(
        "loose metal, unrounded, kg", Source.derived("unrounded multipliers"), 11.49, 0.005, floor);
    check(
        "loose metal from 75 cm, kg",
        CCOHS,
        15.7,
        0.03 * 15.7,
        centimetres(30, 75, 115, 1 / 12.0, Coupling.POOR).start().mass());
    check(
        "the same with handles, kg",
        CCOHS,
        17.5,
        0.03 * 17.5,
        centimetres(30, 75, 115, 1 / 12.0, Coupling.GOOD).start().mass());
    LiftLimit inspection = centimetres(25, 55, 150, 3, Coupling.FAIR);
    check("inspection, kg", INSPECTION, 15.7, 0.157, inspection.start().mass());
    check("inspection, lifting index", INSPECTION, 0.76, 0.01, 12 / inspection.start().mass());
    check(
        "boxes, lb",
        BOXES,
        18.4,
        0.184,
        example(20, 6, 22, 0, Coupling.FAIR).start().mass() / POUND);
  }

  @Test
  void aTaskOutsideTheMethodHasNoLimit() {
    LiftTask overhead =
        LiftTask.of(0.635, 0, 1.88, Math.PI / 2, 1, LiftDuration.UP_TO_EIGHT_HOURS, Coupling.FAIR);
    LiftLimit limit = LiftLimit.of(overhead);
    check(
        "10 kg from the floor to 188 cm, kg",
        Source.derived("outside the method"),
        0,
        0,
        limit.mass());
    assertThat(limit.outside())
        .containsExactly(
            "reach over 63 cm", "travel over 175 cm", "height of the hands over 175 cm");
    assertThat(LiftTeam.of(10, limit).text()).contains("outside the method");
    assertThat(LiftTeam.of(10, limit).team()).isEmpty();
    assertThat(LiftTeam.of(10, limit).liftingIndex()).isEmpty();
  }

  private static final Source TEAM =
      Source.found("Network Rail", "Lifting and handling in teams", "", "20 kg each");

  @Test
  void teamsTakeTheLowerRule() {
    LiftLimit ideal = centimetres(25, 75, 75, 0.2, Coupling.GOOD);
    LiftTeam two = LiftTeam.of(30, ideal);
    assertThat(two.team().orElseThrow().people()).isEqualTo(2);
    check("two of 23 kg by two thirds, kg", TEAM, 30.7, 0.05, two.team().orElseThrow().capacity());
    check(
        "two of 23 kg by 0.85, kg",
        TEAM.at("EN 1005-2"),
        39.1,
        0.05,
        two.team().orElseThrow().rivalCapacity());
    // 35 kg would be two people by the rival rule.
    assertThat(LiftTeam.of(34.4, ideal).team().orElseThrow().people()).isEqualTo(3);
    assertThat(LiftTeam.of(35, ideal).team().orElseThrow().people()).isEqualTo(4);
    assertThat(LiftTeam.of(47, ideal).team()).isEmpty();
    assertThat(LiftTeam.of(47, ideal).text()).contains("too much for four people");
    assertThat(LiftTeam.of(30, ideal).text()).contains("2 people").contains("EN 1005-2");
    assertThat(LiftTeam.of(10, ideal).text()).contains("1 person (");
    assertThat(LiftTeam.of(30, ideal).cautions()).hasSize(2);
  }
}
