package io.github.seamstead.assembly.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

/** Learning rules and adhesive portions. Their hours stand for seconds here. */
class TimeOutsideTest {

  private static final Source AVERAGE_TABLE =
      Source.found("", "Learning curve chapter, cumulative average table, 80 %", "", "n = 1 to 16");
  private static final Source WRIGHT =
      Source.found("Wideman", "On Wright's learning curve of 1936", "", "appendix 2");
  private static final Source KERZNER =
      Source.found("Kerzner", "Project Management", "", "table 18-1, 75 %, first unit 812 h");
  private static final Source DERIVED = Source.derived("unit rule, 80 %, recomputed");
  private static final Source TWO_MODELS =
      Source.derived("85 %, 250 h, 15 units by both rules, inputs from a cost-accounting exercise");

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("assembly.schedule", what, source).expect(expected).within(within).got(got);
  }

  @Test
  void cumulativeAverage() {
    LearningCurve curve = new LearningCurve(LearningCurve.Rule.CUMULATIVE_AVERAGE, 0.8);
    int[] n = {1, 2, 4, 8, 16};
    double[] average = {100, 80, 64, 51.2, 40.96};
    double[] total = {100, 160, 256, 409.6, 655.36};
    double[] last = {100, 60, 48, 38.4, 30.72};
    for (int i = 0; i < n.length; i++) {
      double got = curve.total(100, n[i]);
      check("average of " + n[i] + " at 80 %", AVERAGE_TABLE, average[i], 0.01, got / n[i]);
      check("total of " + n[i] + " at 80 %", AVERAGE_TABLE, total[i], 0.01, got);
      double before = i == 0 ? 0 : curve.total(100, n[i - 1]);
      int count = i == 0 ? 1 : n[i] - n[i - 1];
      check(
          "average of the last batch up to " + n[i],
          AVERAGE_TABLE,
          last[i],
          0.01,
          (got - before) / count);
    }
    // The table prints 254.76 for units 9 to 16, with two digits swapped: its average is right.
    assertThat(curve.total(100, 16) - curve.total(100, 8)).isBetween(245.755, 245.765);
    check("second unit at 80 %, of a first of 100", WRIGHT, 60, 1e-9, curve.piece(100, 2));
    check("average of four at 80 %", WRIGHT, 64, 1e-9, curve.total(100, 4) / 4);
  }

  @Test
  void unitRule() {
    LearningCurve kerzner = new LearningCurve(LearningCurve.Rule.UNIT, 0.75);
    // The table prints whole tens of hours here; the sum is 34 171.67.
    check("250 units at 75 %: total", KERZNER, 34170, 5, kerzner.total(812, 250));
    check("250 units at 75 %: average", KERZNER, 137, 1, kerzner.total(812, 250) / 250);
    check("unit 250 at 75 %", KERZNER, 82.1, 0.05, kerzner.piece(812, 250));
    check(
        "first unit from unit 100 of 120 h at 75 %", KERZNER, 811, 1, 120 / kerzner.piece(1, 100));
    LearningCurve curve = new LearningCurve(LearningCurve.Rule.UNIT, 0.8);
    int[] n = {2, 4, 8, 10};
    double[] unit = {80, 64, 51.2, 47.651};
    double[] total = {180, 314.21, 534.59, 631.54};
    for (int i = 0; i < n.length; i++) {
      check("unit " + n[i] + " at 80 %", DERIVED, unit[i], 0.01, curve.piece(100, n[i]));
      check("first " + n[i] + " at 80 %", DERIVED, total[i], 0.01, curve.total(100, n[i]));
    }
  }

  @Test
  void theTwoRulesDisagree() {
    LearningCurve unit = new LearningCurve(LearningCurve.Rule.UNIT, 0.85);
    check("15 units, unit rule", TWO_MODELS, 2465.3, 0.1, unit.total(250, 15));
    check("15 units, cumulative average", TWO_MODELS, 1987.4, 0.1, unit.rival().total(250, 15));
    assertThat(unit.rival().rival()).isEqualTo(unit);
    assertThat(unit.rival().rule().label()).isEqualTo("cumulative-average rule");
  }

  @Test
  void piecesAddUpToTheTotal() {
    for (LearningCurve.Rule rule : LearningCurve.Rule.values()) {
      LearningCurve curve = new LearningCurve(rule, 0.9);
      double sum = 0;
      for (int i = 1; i <= 30; i++) {
        sum += curve.piece(540, i);
        assertThat(curve.total(540, i)).isCloseTo(sum, org.assertj.core.data.Offset.offset(1e-6));
      }
      StepRecorder recorder = new StepRecorder();
      double total = curve.total(540, 8, recorder);
      DerivationChecks.assertFollowsTo(
          recorder.derivation("assembly.schedule.learning", "eight joints"), total);
      assertThat(total).isEqualTo(curve.total(540, 8));
    }
    assertThatThrownBy(() -> new LearningCurve(LearningCurve.Rule.UNIT, 1.2))
        .hasMessageStartingWith("learning ratio: given 1.2");
  }

  @Test
  void aLongJointIsGluedInPortions() {
    AdhesiveTimes glue = new AdhesiveTimes(300, 7200, 60, 90);
    assertThat(glue.longestPortion()).isEqualTo(300.0 / 90);
    assertThat(glue.portions(3.3)).isEqualTo(1);
    assertThat(glue.portions(10)).isEqualTo(3);
    assertThat(glue.portions(10.1)).isEqualTo(4);
    assertThat(glue.workTime(10)).isEqualTo(1500);
    StepRecorder recorder = new StepRecorder();
    glue.portions(10.1, recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("assembly.schedule.adhesive", "portions"), glue.portions(10.1));
    assertThatThrownBy(() -> new AdhesiveTimes(0, 1, 1, 1))
        .hasMessage("open time: given 0 s, must be greater than 0 s");
  }

  /** Walks along a portion: no place waits longer than the open time, and a longer one would. */
  @Test
  void noPlaceOfAPortionWaitsLongerThanTheOpenTime() {
    for (double press : new double[] {20, 60, 100}) {
      AdhesiveTimes glue = new AdhesiveTimes(300, 0, 60, press);
      double l = glue.longestPortion();
      double longest = 0;
      for (int i = 0; i <= 1000; i++) {
        double x = l * i / 1000;
        longest = Math.max(longest, (l - x) * 60 + x * press);
      }
      assertThat(longest).isCloseTo(300, org.assertj.core.data.Offset.offset(1e-9));
    }
  }
}
