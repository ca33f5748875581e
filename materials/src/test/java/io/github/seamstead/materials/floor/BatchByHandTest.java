package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Loads whose buckets, masses and clay can be counted on paper. */
class BatchByHandTest {

  private static final double LITRE = 0.001;

  /** Soil to sand by loose volume, both 1200 kg/m³ dry, so that shares of volume are of mass. */
  private static FloorMix mix(double sand, double moisture) {
    return new FloorMix(
        "mix",
        List.of(
            MixPart.of("soil", 1 / (1 + sand), 1200, moisture),
            MixPart.of("sand", sand / (1 + sand), 1200, moisture)),
        new Range(1700, 1800, 1900),
        0.09,
        0.004);
  }

  private static List<Double> buckets(Batch batch) {
    return batch.parts().stream().map(BatchPart::buckets).toList();
  }

  /**
   * Half buckets of 10 L hold 6 kg. Of 74.1 kg with 9 % of water 68 kg are dry: eight halves of
   * sand want 3.2 of soil and get 3, 4.5 % wrong. Five of sand with two of soil are exact and fill
   * five eighths, which is more than six tenths: they are taken, four would be exact no more.
   */
  @Test
  void anExactLoadIsPreferredToAFullerOneThatStrays() {
    Batch batch = Batch.of(mix(2.5, 0.05), new Mixer(0.5, 74.1, 10 * LITRE, 0.5));
    assertThat(buckets(batch)).containsExactly(1.0, 2.5);
    assertThat(batch.worstError()).isCloseTo(0, within(1e-12));
    assertThat(batch.dryMass()).isCloseTo(42, within(1e-9));
  }

  /** The same, but the exact load fills less than six tenths: the crew would mix half the day. */
  @Test
  void aLoadOfLessThanSixTenthsIsNotTakenForItsExactness() {
    // 82 kg dry: 9 of sand want 3.6 of soil and get 4; five would be exact but fill 5/9.
    Batch batch = Batch.of(mix(2.5, 0.05), new Mixer(0.5, 86, 10 * LITRE, 0.5));
    assertThat(buckets(batch).get(1)).isGreaterThan(2.5);
    assertThat(batch.mass()).isLessThanOrEqualTo(86);
  }

  /** Forty halves of sand and 13 of soil, 1.9 % wrong, fill the drum; 39 and 13 would be exact. */
  @Test
  void theLargestPartSetsTheSteps() {
    for (boolean soilFirst : new boolean[] {true, false}) {
      MixPart soil = MixPart.of("soil", 0.25, 1200, 0.05);
      MixPart sand = MixPart.of("sand", 0.75, 1200, 0.05);
      FloorMix mix =
          new FloorMix(
              "mix",
              soilFirst ? List.of(soil, sand) : List.of(sand, soil),
              Range.exactly(1800),
              0.09,
              0.004);
      Batch batch = Batch.of(mix, new Mixer(0.26675, 1000, 10 * LITRE, 0.5));
      assertThat(buckets(batch))
          .containsExactlyElementsOf(soilFirst ? List.of(6.5, 20.0) : List.of(20.0, 6.5));
      // 13 of 53 instead of a quarter: 1 - 52/53.
      assertThat(batch.worstError()).isCloseTo(1 - 52 / 53.0, within(1e-12));
    }
  }

  @Test
  void theErrorOfGivenBucketsIsThatOfTheWorstPart() {
    Mixer mixer = new Mixer(0.5, 1000, 10 * LITRE, 0.5);
    // Three to eight instead of two to seven.
    Batch batch = Batch.of(mix(2.5, 0.05), mixer, List.of(1.5, 4.0));
    assertThat(batch.worstError()).isCloseTo(1 - 3 / 11.0 * 3.5, within(1e-12));
    assertThat(Batch.of(mix(2.5, 0.05), mixer, List.of(1.0, 2.5)).worstError())
        .isCloseTo(0, within(1e-12));
  }

  /** Straw goes in last and takes no room, but its mass is its share of the whole, no less. */
  @Test
  void strawHasItsShareOfTheMassAndNoneOfTheDrum() {
    Mixer drum = new Mixer(35 * LITRE, 500, 10 * LITRE, 0.5);
    MixPart straw = MixPart.of("straw", 0.02, 50, 0.1);
    Batch plain = Batch.of(mix(2.5, 0.05), drum);
    Batch fibred = Batch.of(mix(2.5, 0.05).plus(straw), drum);
    assertThat(buckets(plain)).containsExactly(1.0, 2.5);
    assertThat(buckets(fibred).subList(0, 2)).containsExactly(1.0, 2.5);
    // 42 kg of grain are 98 % of 42.857 kg; 0.857 kg over 50 kg/m³ are 17.1 L.
    assertThat(fibred.dryMass()).isCloseTo(42 / 0.98, within(1e-9));
    assertThat(fibred.parts().get(2).dryMass()).isCloseTo(42 / 49.0, within(1e-9));
    assertThat(fibred.parts().get(2).buckets()).isCloseTo(120 / 70.0, within(1e-9));
    assertThat(fibred.looseVolume()).isCloseTo((35 + 1200 / 70.0) * LITRE, within(1e-12));
    assertThat(fibred.fits(drum)).as("35 L of soil and sand in 35 L").isTrue();
    assertThat(fibred.fits(new Mixer(34.9 * LITRE, 500, 10 * LITRE, 0.5))).isFalse();
    assertThat(fibred.mix().fibreShare()).isCloseTo(0.02, within(1e-12));
    assertThat(plain.mix().fibreShare()).isZero();
    assertThat(fibred.worstError()).as("handfuls are not rounded").isCloseTo(0, within(1e-12));
    // Its water: 9 % wanted of all that is dry.
    assertThat(fibred.mass()).isCloseTo(42 / 0.98 * 1.09, within(1e-9));
  }

  /** A recipe that names its straw first is measured in buckets of sand all the same. */
  @Test
  void fibreNamedFirstDoesNotSetTheSteps() {
    FloorMix mix =
        new FloorMix(
            "mix",
            List.of(
                MixPart.of("straw", 0.02, 50, 0.1),
                MixPart.of("soil", 0.28, 1200, 0.05),
                MixPart.of("sand", 0.70, 1200, 0.05)),
            Range.exactly(1800),
            0.09,
            0.004);
    Batch batch = Batch.of(mix, new Mixer(35 * LITRE, 500, 10 * LITRE, 0.5));
    assertThat(buckets(batch).subList(1, 3)).containsExactly(1.0, 2.5);
    BatchCard card =
        BatchCard.of(
            BatchPlan.of(
                EarthQuantity.of(EarthLayer.coat("coat", 0.02, mix), 10, 0),
                new Mixer(35 * LITRE, 500, 10 * LITRE, 0.5)));
    assertThat(card.lines()).extracting(BatchCard.Line::material).endsWith("straw");
    // 1.714 buckets are told as seven quarters, and five litres of water as such.
    assertThat(card.lines().get(2).buckets()).isEqualTo("1¾");
    assertThat(card.water())
        .isCloseTo((42 * 0.04 + 42 / 49.0 * (0.09 - 0.1)) / 1000, within(1e-12));
    // 42.857 kg at 1800 kg/m³.
    assertThat(card.compactedVolume()).isCloseTo(42 / 0.98 / 1800, within(1e-12));
  }

  @Test
  void aHandfulIsNeverNothing() {
    FloorMix mix = mix(2.5, 0.05).plus(MixPart.of("straw", 0.0001, 50, 0.1));
    BatchCard card =
        BatchCard.of(
            BatchPlan.of(
                EarthQuantity.of(EarthLayer.coat("coat", 0.02, mix), 10, 0),
                new Mixer(35 * LITRE, 500, 10 * LITRE, 0.5)));
    assertThat(card.lines().get(2).buckets()).isEqualTo("¼");
    assertThat(card.order()).anyMatch(line -> line.contains("fibre last"));
    BatchCard plain =
        BatchCard.of(
            BatchPlan.of(
                EarthQuantity.of(EarthLayer.coat("coat", 0.02, mix(2.5, 0.05)), 10, 0),
                new Mixer(35 * LITRE, 500, 10 * LITRE, 0.5)));
    assertThat(plain.order()).noneMatch(line -> line.contains("fibre"));
  }

  @Test
  void theCompactedVolumeHasTheRangeOfItsDensity() {
    Range volume = Batch.of(mix(2.5, 0.05), new Mixer(0.035, 500, 0.01, 0.5)).compactedVolume();
    assertThat(volume.low()).isCloseTo(42 / 1900.0, within(1e-12));
    assertThat(volume.likely()).isCloseTo(42 / 1800.0, within(1e-12));
    assertThat(volume.high()).isCloseTo(42 / 1700.0, within(1e-12));
  }

  private static final Map<String, Double> CLAY = Map.of("soil", 0.58, "sand", 0.0);
  private static final ClayBand BAND = ClayBand.of(0.155, 0.175);

  /** Every way out that is offered can be carried out, and nothing simpler was passed over. */
  @Test
  void everyRemedyCanBeCarriedOut() {
    int pairs = 0;
    int smaller = 0;
    for (int litres = 20; litres <= 90; litres += 5) {
      for (double bucket : new double[] {10, 12, 15, 17, 20}) {
        Mixer mixer = Mixer.of(litres * LITRE, litres * 2.0, bucket * LITRE);
        if (litres < 1.5 * bucket) {
          continue;
        }
        FloorMix mix = mix(2.5, 0.1);
        BatchClay clay = BatchClay.of(Batch.of(mix, mixer), mixer, CLAY, BAND);
        List<BatchClay.Way> ways = new ArrayList<>();
        for (BatchClay.Remedy remedy : clay.remedies()) {
          ways.add(remedy.way());
          assertThat(remedy.clay()).isCloseTo(clayOf(remedy.loads()), within(1e-12));
          assertThat(BAND.holds(remedy.clay())).isTrue();
          switch (remedy.way()) {
            case TWO_LOADS -> {
              pairs++;
              checkPair(remedy.loads(), mixer);
            }
            case SMALLER_BUCKET -> {
              smaller++;
              checkSmaller(remedy, mixer, mix);
            }
            case QUARTER_BUCKETS ->
                assertThat(remedy.loads().get(0).fits(mixer)).as("quarters fit").isTrue();
            case LARGER_MIXER -> assertThat(remedy.size()).isGreaterThan(litres * LITRE);
          }
        }
        assertThat(ways).doesNotHaveDuplicates();
      }
    }
    assertThat(pairs).as("two loads were offered").isPositive();
    assertThat(smaller).as("a smaller bucket was offered").isPositive();
  }

  /** Soil over all grain by count of buckets: both parts weigh the same. */
  private static double clayOf(List<Batch> loads) {
    double soil = loads.stream().mapToDouble(b -> b.parts().get(0).buckets()).sum();
    double sand = loads.stream().mapToDouble(b -> b.parts().get(1).buckets()).sum();
    return 0.58 * soil / (soil + sand);
  }

  private static void checkPair(List<Batch> loads, Mixer mixer) {
    assertThat(loads).hasSize(2);
    List<Double> first = buckets(loads.get(0));
    List<Double> second = buckets(loads.get(1));
    double more = 0;
    for (int i = 0; i < 2; i++) {
      assertThat(first.get(i)).isPositive();
      assertThat(second.get(i)).isPositive();
      assertThat(first.get(i) * 2 % 1).as("whole steps of half a bucket").isZero();
      assertThat(second.get(i) * 2 % 1).as("whole steps of half a bucket").isZero();
      assertThat(Math.abs(first.get(i) - second.get(i))).isLessThanOrEqualTo(0.5);
      more += first.get(i) - second.get(i);
    }
    assertThat(Math.abs(more)).as("odd steps are shared out").isLessThanOrEqualTo(0.5);
    for (Batch load : loads) {
      double volume = load.parts().stream().mapToDouble(BatchPart::looseVolume).sum();
      assertThat(volume).isLessThanOrEqualTo(mixer.workingVolume() * (1 + 1e-9));
      // Both parts hold 10 % of water, which is more than is wanted: none is added.
      assertThat(load.dryMass() * 1.1).isLessThanOrEqualTo(mixer.massLimit() * (1 + 1e-9));
    }
  }

  private static void checkSmaller(BatchClay.Remedy remedy, Mixer mixer, FloorMix mix) {
    long litres = Math.round(remedy.size() * 1000);
    assertThat(remedy.size() * 1000).isCloseTo(litres, within(1e-9));
    assertThat(remedy.size()).isLessThan(mixer.bucketVolume());
    for (long l = litres + 1; l < mixer.bucketVolume() * 1000 - 1e-9; l++) {
      Mixer between = mixer.fedWith(l / 1000.0);
      assertThat(BatchClay.of(Batch.of(mix, between), between, CLAY, BAND).strays())
          .as("a bucket of %s L instead of %s L", l, litres)
          .isTrue();
    }
  }

  @Test
  void whoMeasuresInQuartersIsNotToldToMeasureInQuarters() {
    Mixer quarters = Mixer.of(0.025, 1000, 0.020).measuredIn(0.25);
    BatchClay clay =
        BatchClay.of(Batch.of(mix(4.5, 0.1), quarters), quarters, CLAY, ClayBand.of(0.104, 0.107));
    assertThat(clay.strays()).isTrue();
    assertThat(clay.remedies()).noneMatch(r -> r.way() == BatchClay.Way.QUARTER_BUCKETS);
  }

  /** A recipe outside the band is not bettered by a load that is outside on the other side. */
  @Test
  void howFarOutsideIsCountedFromEitherEnd() {
    Mixer mixer = Mixer.of(0.035, 500, 0.010);
    Batch load = Batch.of(mix(2.5, 0.1), mixer);
    // 16.6 % in load and recipe alike: outside, but no worse than the recipe.
    assertThat(BatchClay.of(load, mixer, CLAY, ClayBand.of(0.10, 0.15)).strays()).isFalse();
    assertThat(BatchClay.of(load, mixer, CLAY, ClayBand.of(0.18, 0.25)).strays()).isFalse();
    Batch lean = Batch.of(mix(2.5, 0.1), mixer, List.of(0.5, 2.5));
    // One to five: 9.7 % of clay, where 16.6 % was wanted.
    BatchClay told = BatchClay.of(lean, mixer, CLAY, ClayBand.of(0.16, 0.25));
    assertThat(told.batched()).isCloseTo(0.58 / 6, within(1e-12));
    assertThat(told.error()).isCloseTo(0.58 / 6 - 0.58 / 3.5, within(1e-12));
    assertThat(told.strays()).isTrue();
    // The recipe is 1.4 points under the band and the load 3.6 over it, or the other way round.
    assertThat(BatchClay.of(lean, mixer, CLAY, ClayBand.of(0.11, 0.13)).strays()).isFalse();
    Batch rich = Batch.of(mix(2.5, 0.1), mixer, List.of(1.5, 2.5));
    assertThat(BatchClay.of(rich, mixer, CLAY, ClayBand.of(0.17, 0.18)).strays()).isTrue();
  }
}
