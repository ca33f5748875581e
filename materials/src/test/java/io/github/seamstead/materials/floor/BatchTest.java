package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import org.junit.jupiter.api.Test;

class BatchTest {

  private static final Source NAVY =
      Source.found(
          "US Navy", "Engineering Aid, materials estimation", "", "moisture of aggregates");
  private static final double POUND = 0.45359237;

  private static FloorMix mix(double soilMoisture) {
    return new FloorMix(
        "1 soil : 2 sand by volume",
        List.of(
            MixPart.of("clay soil", 1.0 / 3, 1200, soilMoisture),
            MixPart.of("washed sand", 2.0 / 3, 1200, 0.05)),
        Range.exactly(1850),
        0.10,
        0.005);
  }

  @Test
  void wholeBucketsKeepTheRecipe() {
    Batch batch = Batch.of(mix(0.1), new Mixer(0.065, 200, 0.010, 0.5));
    assertThat(batch.parts()).extracting(BatchPart::buckets).containsExactly(2.0, 4.0);
    assertThat(batch.worstError()).isLessThan(1e-9);
    assertThat(batch.dryMass()).isCloseTo(72, within(1e-9));
    // 24 kg of soil is right, 48 kg of sand lacks 5 %.
    assertThat(batch.water()).isCloseTo(2.4, within(1e-9));
    StepRecorder steps = new StepRecorder();
    double water = batch.waterBalance(steps);
    assertThat(water).isEqualTo(batch.water());
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.batch-water", "W"), water);
  }

  @Test
  void waterInDampAggregatesIsCounted() {
    // The manual's coarse and fine aggregate with design water, taken as a mix of its own.
    double coarse = 1735 * POUND;
    double fine = 1153 * POUND;
    double dry = coarse + fine;
    double design = 36.6 * 8.33 * POUND;
    FloorMix concrete =
        new FloorMix(
            "aggregates",
            List.of(
                MixPart.of("coarse", coarse / dry, coarse, 0.02),
                MixPart.of("fine", fine / dry, fine, 0.06)),
            Range.exactly(2000),
            design / dry,
            0.02);
    BatchPart whole = BatchPart.of(concrete.parts().get(0), 1, 1);
    BatchPart part = BatchPart.of(concrete.parts().get(1), 1, 1);
    Batch batch = new Batch(concrete, List.of(whole, part), 0, 0, 0);
    double gallons =
        batch.waterBalance(io.github.seamstead.shared.derivation.Steps.none()) / (8.33 * POUND);
    OutsideCheck.of(
            "materials.floor", "mixing water less the moisture of the aggregates, gal", NAVY)
        .expect(24.13)
        .within(0.05)
        .got(gallons);
    OutsideCheck.of("materials.floor", "stock mass of coarse aggregate, lb", NAVY)
        .expect(1770)
        .within(1)
        .got(whole.moistMass() / POUND);
    OutsideCheck.of("materials.floor", "stock mass of fine aggregate, lb", NAVY)
        .expect(1222)
        .within(1)
        .got(part.moistMass() / POUND);
  }

  @Test
  void partsTooWetAreToldApart() {
    Batch batch = Batch.of(mix(0.4), new Mixer(0.065, 200, 0.010, 0.5));
    assertThat(batch.water()).isZero();
    assertThat(batch.excessWater()).isPositive();
    BatchCard card = BatchCard.of(plan(mix(0.4)));
    assertThat(card.partsTooWet()).isTrue();
    assertThat(card.order().get(0)).contains("too wet: add no water");
    assertThat(card.excessWater() * 1000).isCloseTo(batch.excessWater(), within(1e-9));
    // Sand is tipped in before soil.
    assertThat(card.lines()).extracting(BatchCard.Line::buckets).containsExactly("4", "2");
  }

  private static BatchPlan plan(FloorMix mix) {
    EarthQuantity quantity = EarthQuantity.of(EarthLayer.coat("coat", 0.02, mix), 10, 0);
    return BatchPlan.of(quantity, new Mixer(0.065, 200, 0.010, 0.5));
  }

  @Test
  void loadsRoundUp() {
    BatchPlan plan = plan(mix(0.1));
    StepRecorder steps = new StepRecorder();
    int loads = plan.likelyCount(steps);
    // 10 m² × 20 mm × 1850 kg/m³ = 370 kg over 72 kg = 5.14.
    assertThat(loads).isEqualTo(6).isEqualTo(plan.likelyCount());
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.batches", "loads"), loads);
    assertThat(plan.barrowTrips(0.08, 150)).isEqualTo(6);
    assertThat(plan.barrowTrips(0.08, 60)).isEqualTo(12);
  }

  @Test
  void theMassLimitBinds() {
    Batch batch = Batch.of(mix(0.1), new Mixer(0.5, 80, 0.010, 0.5));
    assertThat(batch.mass()).isLessThanOrEqualTo(80);
    assertThat(batch.dryMass()).isEqualTo(72);
  }

  @Test
  void aMixerTooSmallIsNamed() {
    assertThatThrownBy(() -> Mixer.of(0.008, 100, 0.010))
        .hasMessageContaining("must take at least one bucket");
    assertThatThrownBy(() -> Batch.of(mix(0.1), new Mixer(0.010, 100, 0.010, 1)))
        .hasMessageContaining("less than one measure of 10 L of each part");
    assertThatThrownBy(() -> BatchPlan.of(Demo.FLOOR.earth().get(0), Demo.MIXER))
        .hasMessageContaining("must be a mixed layer");
  }

  @Test
  void bucketsAreWrittenAsPeopleDo() {
    assertThat(BatchCard.buckets(3.5)).isEqualTo("3½");
    assertThat(BatchCard.buckets(0.25)).isEqualTo("¼");
    assertThat(BatchCard.buckets(2.75)).isEqualTo("2¾");
    assertThat(BatchCard.buckets(4)).isEqualTo("4");
    assertThat(BatchCard.buckets(1.2)).isEqualTo("1.2");
  }

  @Test
  void heavyBucketsBringACaution() {
    assertThat(FloorCautions.lifting(9)).isEmpty();
    OutsideCheck.of(
            "materials.floor",
            "mass of 10 L of wet sand at 1905 kg/m3, kg",
            Source.derived("bucket × density table"))
        .expect(19)
        .within(0.06)
        .got(BatchPart.of(MixPart.of("sand", 1, 1905, 0), 1, 0.010).bucketMass());
    assertThat(FloorCautions.lifting(19).orElseThrow().text()).contains("25 kg");
    assertThat(FloorCautions.lifting(28.6).orElseThrow().risk()).contains("above the guide weight");
    assertThat(FloorCautions.forJob(20, true, true)).hasSize(4);
    assertThat(FloorCautions.silica().limit())
        .contains("0.05 mg of respirable crystalline silica per m3");
    assertThat(FloorCautions.SILICA_LIMIT).isEqualTo(50e-9);
    assertThat(new Trailer(1, 600).caution().text()).contains("750 kg").contains("Local codes");
    assertThat(FloorCautions.oilyRags().text()).contains("water");
  }
}
