package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.TrialOutcome.Dusting;
import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MixChoiceTest {

  private static final MixComponent SOIL =
      MixComponent.claySoil("pit soil", new Uncertain(0.58, 0.1));
  private static final ClayBlend BLEND =
      ClayBlend.of(
          SOIL, MixComponent.washedSand("sand"), ClayBand.FLOOR, BucketRounding.HALF, Steps.none());

  @Test
  void withoutSamplesTheClayDecides() {
    MixChoice choice = MixChoice.of(BLEND, Optional.empty(), Optional.empty());
    assertThat(choice.ground()).isEqualTo(MixChoice.Ground.CALCULATED);
    assertThat(choice.recipe()).isEqualTo(BLEND.rounded());
  }

  @Test
  void decidedSamplesOutrankTheClayAndTellTheShrinkage() {
    TrialReading reading =
        read(
            TrialOutcome.of(2.5, 0.009, 0.5, Dusting.NONE),
            TrialOutcome.of(3, 0.004, 0.5, Dusting.NONE),
            TrialOutcome.of(3.5, 0.001, 0.5, Dusting.NONE),
            TrialOutcome.of(3.5, 0.001, 0.5, Dusting.NONE));
    assertThat(reading.decided()).isTrue();
    assertThat(reading.soundSamples()).hasSize(2);
    MixChoice choice = MixChoice.of(BLEND, Optional.of(reading), Optional.empty());
    assertThat(choice.ground()).isEqualTo(MixChoice.Ground.TRIALS);
    assertThat(choice.sandParts()).isCloseTo(reading.sandParts(), within(1e-12));
    assertThat(choice.sandParts()).isNotEqualTo(sandParts(BLEND.rounded()));
    assertThat(choice.unmet()).isEmpty();
    // 1 mm in 500 mm.
    assertThat(reading.measuredShrinkage().orElseThrow().value()).isCloseTo(0.002, within(1e-12));
  }

  @Test
  void onlyCrackedSamplesDecideNothing() {
    TrialReading reading = read(TrialOutcome.of(2.5, 0.02, 0.5, Dusting.NONE));
    assertThat(reading.decided()).isFalse();
    assertThat(reading.measuredShrinkage()).isEmpty();
    MixChoice choice = MixChoice.of(BLEND, Optional.of(reading), Optional.empty());
    assertThat(choice.ground()).isEqualTo(MixChoice.Ground.BEST_SO_FAR);
    assertThat(choice.reason()).contains("do not decide yet");
  }

  @Test
  void aRatioByHandIsTakenAndJudged() {
    MixChoice rich = MixChoice.of(BLEND, Optional.empty(), Optional.of(1.0));
    assertThat(rich.ground()).isEqualTo(MixChoice.Ground.BY_HAND);
    assertThat(rich.sandParts()).isCloseTo(1, within(1e-12));
    assertThat(rich.unmet().orElseThrow()).contains("of clay", "14 % to 20 %");
    MixChoice sound = MixChoice.of(BLEND, Optional.empty(), Optional.of(2.0));
    assertThat(sound.unmet()).isEmpty();
  }

  /** 1 part of 30 % clay and a sand of 10 %: (30 - 17) / (17 - 10) = 1.857 by dry mass. */
  @Test
  void claySandNeedsMoreOfIt() {
    MixComponent dirty =
        MixComponent.claySoil(
            "pit sand",
            new GradingCurve(
                List.of(
                    new GradingCurve.Point(0.0002e-3, 0),
                    new GradingCurve.Point(0.002e-3, 0.10),
                    new GradingCurve.Point(2e-3, 1))),
            0);
    ClayBlend blend =
        ClayBlend.of(
            MixComponent.claySoil("soil", Uncertain.exact(0.30)),
            dirty,
            ClayBand.FLOOR,
            BucketRounding.HALF);
    assertThat(blend.sandPerSoilDryMass()).isCloseTo(13 / 7.0, within(1e-9));
  }

  /** Parts by damp mass: 10 % water in the soil, 5 % in the sand make 2 dry parts 1.909. */
  @Test
  void partsByDampMass() {
    MixComponent wetSoil = MixComponent.claySoil("soil", Uncertain.exact(0.6)).damp(0.10, 0);
    MixComponent wetSand = MixComponent.washedSand("sand").damp(0.05, 0);
    double parts = 2 * 1.05 / 1.10;
    assertThat(TrialLadder.clay(wetSoil, wetSand, parts, Basis.DAMP_MASS).value())
        .isCloseTo(0.2, within(1e-12));
    ClayBlend blend = ClayBlend.of(wetSoil, wetSand, ClayBand.FLOOR, BucketRounding.HALF);
    List<TrialOutcome> dry = List.of(TrialOutcome.of(2, 0, 0.5, Dusting.NONE));
    List<TrialOutcome> damp = List.of(TrialOutcome.of(parts, 0, 0.5, Dusting.NONE));
    double byDry =
        TrialReading.of(dry, blend, Basis.DRY_MASS, 0.004, 0.5, Steps.none())
            .cracksBelow()
            .likely();
    double byDamp =
        TrialReading.of(damp, blend, Basis.DAMP_MASS, 0.004, 0.5, Steps.none())
            .cracksBelow()
            .likely();
    assertThat(byDamp / byDry).isCloseTo(1.05 / 1.10, within(0.01));
  }

  @Test
  void siltLimitsAreThoseOfThePublishedRanges() {
    assertThat(SoilUse.COB.greatestSilt()).isEqualTo(CompositionRange.COB.silt().greatest());
    assertThat(SoilUse.PRESSED_BLOCK.greatestSilt())
        .isEqualTo(CompositionRange.PRESSED_BLOCK.silt().greatest());
    assertThat(SoilUse.RAMMED_EARTH.greatestSilt())
        .isEqualTo(CompositionRange.RAMMED_EARTH.silt().greatest());
  }

  private static TrialReading read(TrialOutcome... outcomes) {
    return TrialReading.of(List.of(outcomes), BLEND, Basis.LOOSE_VOLUME, 0.004, 0.5, Steps.none());
  }

  private static double sandParts(Recipe recipe) {
    return recipe.portions().get(1).looseVolume() / recipe.portions().get(0).looseVolume();
  }
}
