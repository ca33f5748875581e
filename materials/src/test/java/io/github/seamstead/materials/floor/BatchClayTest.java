package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchClayTest {

  private static final Map<String, Double> CLAY = Map.of("soil", 0.58, "sand", 0.0);
  private static final ClayBand BAND = ClayBand.of(0.13, 0.20);

  /** One part to two and a half by loose volume, both 1200 kg/m³: 58 % / 3.5 = 16.6 % of clay. */
  private static FloorMix mix(double soilMoisture) {
    return new FloorMix(
        "mix",
        List.of(
            MixPart.of("soil", 1 / 3.5, 1200, soilMoisture),
            MixPart.of("sand", 2.5 / 3.5, 1200, 0.05)),
        Range.exactly(1800),
        0.09,
        0.004);
  }

  private static BatchClay clay(double drumLitres, double bucketLitres) {
    Mixer mixer = Mixer.of(drumLitres / 1000, 1000, bucketLitres / 1000);
    return BatchClay.of(Batch.of(mix(0.1), mixer), mixer, CLAY, BAND);
  }

  @Test
  void aBucketTooLargeForTheDrumIsRefusedWithTheLoadThatIsRight() {
    BatchClay clay = clay(25, 20);
    // Half a bucket of each is all that the drum takes: 29 %, not 16.6 %.
    assertThat(clay.batched()).isCloseTo(0.29, within(1e-9));
    assertThat(clay.wanted()).isCloseTo(0.58 / 3.5, within(1e-9));
    assertThat(clay.strays()).isTrue();
    String text = clay.refusal(v -> Math.round(v * 1000) + " l").orElseThrow();
    assertThat(text).contains("29.0 % clay instead of 16.6 %").contains("in quarter buckets: ¼");
    assertThat(text).contains("with a bucket of ").contains("in a mixer that takes ");
    assertThat(clay.remedies()).isNotEmpty();
    for (BatchClay.Remedy remedy : clay.remedies()) {
      assertThat(BAND.holds(remedy.clay())).as(remedy.text(v -> "x")).isTrue();
      assertThat(BatchClay.clay(remedy.loads(), CLAY, Steps.none()))
          .isCloseTo(remedy.clay(), within(1e-12));
    }
  }

  @ParameterizedTest
  @CsvSource({"60, 10", "90, 12", "120, 10", "65, 10"})
  void usualPairsKeepTheBandAndStateTheirError(double drum, double bucket) {
    BatchClay clay = clay(drum, bucket);
    assertThat(clay.strays()).isFalse();
    assertThat(clay.refusal(v -> "x")).isEmpty();
    assertThat(clay.remedies()).isEmpty();
    assertThat(clay.error()).isCloseTo(clay.batched() - clay.wanted(), within(1e-15));
  }

  @Test
  void noLoadThatIsGivenOutLeavesTheBand() {
    for (double drum = 20; drum <= 140; drum += 5) {
      for (double bucket = 5; bucket <= 20; bucket += 2.5) {
        if (bucket > drum) {
          continue;
        }
        BatchClay clay = clay(drum, bucket);
        assertThat(clay.strays() || BAND.holds(clay.batched()))
            .as(drum + " L drum, " + bucket + " L bucket")
            .isTrue();
      }
    }
  }

  @Test
  void theClayOfALoadCanBeFollowed() {
    StepRecorder steps = new StepRecorder();
    double share =
        BatchClay.clay(List.of(Batch.of(mix(0.1), Mixer.of(0.09, 500, 0.01))), CLAY, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.batch-clay", "c"), share);
    assertThatThrownBy(
            () ->
                BatchClay.of(Batch.of(mix(0.1), Demo.MIXER), Demo.MIXER, Map.of("soil", 0.5), BAND))
        .hasMessageContaining("clay of sand");
  }

  @Test
  void theMassOfALoadCountsAllItsWater() {
    // By hand: 1 + 2½ buckets of 10 L at 1200 kg/m³ dry are 42 kg; 9 % of water on it 45.78 kg.
    Batch batch = Batch.of(mix(0.05), Mixer.of(0.035, 500, 0.010));
    assertThat(batch.dryMass()).isCloseTo(42, within(1e-9));
    assertThat(batch.mass()).isCloseTo(45.78, within(1e-9));
    assertThat(batch.looseVolume()).isCloseTo(0.035, within(1e-12));
    assertThat(batch.moisture()).isCloseTo(0.09, within(1e-12));
    // A barrow of 20 L takes such a load in two goes, one of 40 kg too.
    BatchPlan plan =
        BatchPlan.of(
            EarthQuantity.of(EarthLayer.coat("coat", 0.02, mix(0.05)), 10, 0),
            Mixer.of(0.035, 500, 0.010));
    assertThat(plan.barrowTrips(0.020, 500)).isEqualTo(2 * plan.likelyCount());
    assertThat(plan.barrowTrips(0.200, 45)).isEqualTo(2 * plan.likelyCount());
    assertThat(plan.barrowTrips(0.200, 46)).isEqualTo(plan.likelyCount());
  }

  @Test
  void waterInTheHeapCountsBeforeTheMixerIsFilled() {
    // 0.22 and 0.05 by the shares: 0.22/3.5 + 0.05 * 2.5/3.5 = 9.857 %.
    assertThat(mix(0.22).moistureOfParts()).isCloseTo(0.345 / 3.5, within(1e-12));
    assertThat(mix(0.22).moistureAsMixed()).isCloseTo(0.345 / 3.5, within(1e-12));
    assertThat(mix(0.05).moistureAsMixed()).isCloseTo(0.09, within(1e-12));
    Batch wet = Batch.of(mix(0.22), Mixer.of(0.035, 500, 0.010));
    assertThat(wet.moisture()).isCloseTo(0.345 / 3.5, within(1e-12));
    assertThat(wet.mass()).isCloseTo(42 * (1 + 0.345 / 3.5), within(1e-9));
    FloorMix.DryFirst dry = mix(0.22).dryFirst().orElseThrow();
    assertThat(dry.part().name()).isEqualTo("soil");
    // 0.19/3.5 + 0.05 * 2.5/3.5 = 9 %.
    assertThat(dry.moisture()).isCloseTo(0.19, within(1e-12));
    assertThat(mix(0.05).dryFirst()).isEmpty();
  }

  @Test
  void theCardGoesInTheOrderOfLoadingAndEndsWithTheFibre() {
    FloorMix straw = mix(0.05).plus(MixPart.choppedStraw(0.01));
    BatchPlan plan =
        BatchPlan.of(EarthQuantity.of(EarthLayer.coat("coat", 0.02, straw), 10, 0), Demo.MIXER);
    BatchCard card = BatchCard.of(plan, Optional.empty());
    assertThat(card.lines())
        .extracting(BatchCard.Line::material)
        .containsExactly("sand", "soil", "chopped straw");
    assertThat(card.lines().get(2).fibre()).isTrue();
    assertThat(card.order().get(0)).contains("fibre last");
    assertThat(card.feel()).contains("slides off the shovel");
    BatchCard pack =
        BatchCard.of(
            BatchPlan.of(EarthQuantity.of(EarthLayer.dryPack(mix(0.05)), 10, 0), Demo.MIXER));
    assertThat(pack.feel()).contains("squeezed ball");
    assertThat(pack.partsTooWet()).isFalse();
  }
}
