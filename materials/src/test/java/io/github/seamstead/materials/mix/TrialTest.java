package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.TrialOutcome.Dusting;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrialTest {

  private static final MixComponent SOIL =
      MixComponent.claySoil("pit soil", new Uncertain(0.60, 0.2 / Math.sqrt(12)));
  private static final MixComponent SAND = MixComponent.washedSand("washed sand");
  private static final double LIMIT = TrialReading.FLOOR_CRACK_LIMIT;

  @Test
  void fiftyToSeventyPerCentOfClayGivesTheCommonLadder() {
    TrialLadder ladder = TrialLadder.design(SOIL, SAND, ClayBand.FLOOR, Basis.DRY_MASS, 1, 5);
    double[] common = {1, 2, 3};
    assertThat(ladder.sandParts()).hasSize(3);
    for (int i = 0; i < common.length; i++) {
      OutsideCheck.of(
              "materials.mix", "parts of sand of trial sample " + (i + 1), TrialLadder.COMMON)
          .expect(common[i])
          .within(0)
          .got(ladder.sandParts().get(i));
    }
    assertThat(ladder.proportion(1).text())
        .isEqualTo("1 part pit soil to 2 parts washed sand, by dry mass");
    assertThat(TrialLadder.common("a", "b", Basis.DRY_MASS).sandParts())
        .isEqualTo(ladder.sandParts());
  }

  @Test
  void fewerSamplesSpreadTheRungs() {
    MixComponent vague = MixComponent.claySoil("unknown soil", new Uncertain(0.5, 0.2));
    TrialLadder ladder = TrialLadder.design(vague, SAND, ClayBand.FLOOR, Basis.DRY_MASS, 0.5, 4);
    assertThat(ladder.sandParts()).hasSizeLessThanOrEqualTo(4);
    assertThat(ladder.reasons()).hasSize(2);
  }

  @Test
  void aSoilThatNeedsLittleSandGetsFinerRungsFromTheSoilAlone() {
    MixComponent mild = MixComponent.claySoil("mild soil", new Uncertain(0.27, 0.05));
    TrialLadder ladder = TrialLadder.design(mild, SAND, ClayBand.FLOOR, Basis.DRY_MASS, 1, 5);
    assertThat(ladder.sandParts()).containsExactly(0.0, 0.5, 1.0);
    assertThat(ladder.proportion(1).text())
        .isEqualTo("1 part mild soil to ½ part washed sand, by dry mass");
  }

  @Test
  void everyLadderBracketsTheLikelyAnswer() {
    for (double clay = 0.18; clay < 0.9; clay += 0.06) {
      MixComponent soil = MixComponent.claySoil("soil", new Uncertain(clay, 0.03));
      TrialLadder ladder = TrialLadder.design(soil, SAND, ClayBand.FLOOR, Basis.DRY_MASS, 1, 6);
      double answer = clay / ClayBand.FLOOR.middle() - 1;
      assertThat(ladder.sandParts().get(0)).isLessThanOrEqualTo(answer);
      assertThat(ladder.sandParts().get(ladder.sandParts().size() - 1))
          .isGreaterThanOrEqualTo(answer);
      assertThat(ladder.sandParts()).hasSizeBetween(2, 6);
    }
  }

  @Test
  void aClearLadderIsDecided() {
    List<TrialOutcome> outcomes =
        List.of(
            TrialOutcome.of(1, 0.009, 0.6, Dusting.NONE),
            TrialOutcome.of(2, 0.004, 0.6, Dusting.NONE),
            TrialOutcome.of(3, 0.0005, 0.6, Dusting.NONE),
            TrialOutcome.of(4, 0, 0.6, Dusting.HEAVY));
    ClayBlend blend = ClayBlend.of(SOIL, SAND, ClayBand.FLOOR, BucketRounding.HALF);
    StepRecorder steps = new StepRecorder();
    TrialReading reading = TrialReading.of(outcomes, blend, Basis.DRY_MASS, LIMIT, 0.5, steps);
    assertThat(reading.sandParts()).isBetween(2.5, 3.5);
    assertThat(reading.probability()).isGreaterThan(0.7);
    assertThat(reading.decided()).isTrue();
    assertThat(reading.nextSandParts()).isEmpty();
    assertThat(reading.advice().get(0)).startsWith("Take 1 part of soil to");
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.mix.trials", "trial samples"), reading.probability());
  }

  @Test
  void publishedTestTilesChooseFourToOne() {
    // A diary: 3, 4 and 5 parts of sand per part of clay soil tried, 4 chosen; what each showed is
    // not printed, so the outcomes here are what that choice implies.
    Source diary = Source.found("", "Builder's diary, earthen floor test tiles", "2015", "4 : 1");
    TrialReading reading =
        TrialReading.of(
            List.of(
                TrialOutcome.of(3, 0.003, 0.3, Dusting.NONE),
                TrialOutcome.of(4, 0, 0.3, Dusting.NONE),
                TrialOutcome.of(5, 0, 0.3, Dusting.HEAVY)),
            LIMIT,
            0.5);
    OutsideCheck.of("materials.mix", "parts of sand chosen from 3, 4, 5", diary)
        .expect(4)
        .within(0.5)
        .got(reading.sandParts());
  }

  @Test
  void oneCrackedSampleAsksForMoreSand() {
    TrialReading reading =
        TrialReading.of(List.of(TrialOutcome.of(1, 0.01, 0.6, Dusting.NONE)), LIMIT, 0.5);
    assertThat(reading.decided()).isFalse();
    assertThat(reading.nextSandParts().orElseThrow()).isGreaterThan(1);
  }

  @Test
  void moreAgreeingSamplesRaiseTheProbability() {
    List<TrialOutcome> one =
        List.of(
            TrialOutcome.of(1, 0.01, 0.6, Dusting.NONE), TrialOutcome.of(3, 0, 0.6, Dusting.NONE));
    List<TrialOutcome> two =
        List.of(
            one.get(0),
            one.get(1),
            TrialOutcome.of(2.5, 0, 0.6, Dusting.NONE),
            TrialOutcome.of(3, 0, 0.6, Dusting.NONE));
    assertThat(TrialReading.of(two, LIMIT, 0.5).probability())
        .isGreaterThan(TrialReading.of(one, LIMIT, 0.5).probability());
  }

  @Test
  void contradictionsAreNamed() {
    TrialReading reading =
        TrialReading.of(
            List.of(
                TrialOutcome.of(1, 0, 0.6, Dusting.NONE),
                TrialOutcome.of(3, 0.01, 0.6, Dusting.HEAVY)),
            LIMIT,
            0.5);
    assertThat(reading.advice()).anyMatch(t -> t.contains("swapped"));
    assertThat(reading.advice()).anyMatch(t -> t.contains("both cracks and crumbles"));
  }

  @Test
  void probabilitiesAreProbabilities() {
    TrialReading reading =
        TrialReading.of(List.of(TrialOutcome.of(2, 0.001, 0.6, Dusting.SLIGHT)), LIMIT, 0.5);
    assertThat(reading.curve()).allSatisfy(c -> assertThat(c.probability()).isBetween(0.0, 1.0));
    assertThat(reading.cracksBelow().low()).isLessThan(reading.cracksBelow().high());
  }

  @Test
  void cracksInMillimetresAreNoticed() {
    assertThatThrownBy(() -> TrialOutcome.of(2, 12, 0.6, Dusting.NONE))
        .hasMessageContaining("is it in mm?");
    assertThatThrownBy(() -> TrialReading.of(List.of(), LIMIT, 0.5))
        .hasMessageContaining("trial samples");
  }

  @Test
  void derivationStepsCostNothingWithoutRecorder() {
    ClayBlend blend = ClayBlend.of(SOIL, SAND, ClayBand.FLOOR, BucketRounding.HALF);
    List<TrialOutcome> outcomes = List.of(TrialOutcome.of(2, 0.01, 0.6, Dusting.NONE));
    TrialReading plain =
        TrialReading.of(outcomes, blend, Basis.LOOSE_VOLUME, LIMIT, 0.5, Steps.none());
    TrialReading worked =
        TrialReading.of(outcomes, blend, Basis.LOOSE_VOLUME, LIMIT, 0.5, new StepRecorder());
    assertThat(plain.probability()).isCloseTo(worked.probability(), within(0.0));
  }
}
