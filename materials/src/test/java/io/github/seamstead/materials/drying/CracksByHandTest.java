package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.materials.mix.Shrinkage;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Widths of cracks, what changes them, and slip, with numbers that a pencil gives. */
class CracksByHandTest {

  /**
   * Soil is a fifth of the dry mass of a mix with three buckets of sand: four thirds of the soil's
   * mass a bucket, so that three and a half leave 3/17 of soil.
   */
  @Test
  void aHalfBucketMoreLeavesThatMuchSoil() {
    Range shrunk = Shrinkage.ofMix(0.08, 0.2);
    Cracking now = Cracking.of(shrunk, Cracking.ROUGH_BASE, Cracking.WITHOUT_FIBRE);
    CrackChange sand = CrackChange.of(now, 0.2, 3, false, 0.02).get(0);
    double share = 3.0 / 17;
    // Squared, to the 1.5th and in proportion; held by 60, 80 and 100 %; 0.8, 0.3 and no stretch.
    double low = Math.max(0, 0.6 * 0.08 * 0.2 * 0.2 * Math.pow(share / 0.2, 2) - 0.0008);
    double likely = 0.8 * 0.08 * Math.pow(share, 1.5) - 0.0003;
    double high = 0.08 * share;
    assertThat(sand.widthPerMetre().low()).isCloseTo(low, within(1e-12));
    assertThat(sand.widthPerMetre().likely()).isCloseTo(likely, within(1e-12));
    assertThat(sand.widthPerMetre().high()).isCloseTo(high, within(1e-12));
    double before = 0.8 * 0.08 * Math.pow(0.2, 1.5) - 0.0003;
    assertThat(sand.slipFactor())
        .isCloseTo(
            (1 - (1 - likely) * (1 - likely)) / (1 - (1 - before) * (1 - before)), within(1e-9));
    assertThat(now.forecast().likely()).isCloseTo(before, within(1e-12));
  }

  @Test
  void onlyWhatCanChangeIsOffered() {
    Cracking now =
        Cracking.of(
            Shrinkage.ofMix(0.08, 0.2), Cracking.ROUGH_BASE, new Range(0.0001, 0.0002, 0.0004));
    assertThat(CrackChange.of(now, 1, 0, false, 0.02))
        .extracting(CrackChange::what)
        .containsExactly("chopped straw", "drying slowly, in shade and without draught");
    CrackChange slow = CrackChange.of(now, 0.2, 0, true, 0.02).get(0);
    // The stretch becomes the likely, the high and the high one.
    double free = 0.08 * Math.pow(0.2, 1.5);
    assertThat(slow.widthPerMetre().low()).isCloseTo(0.6 * 0.08 * 0.04 - 0.0004, within(1e-12));
    assertThat(slow.widthPerMetre().likely()).isCloseTo(0.8 * free - 0.0004, within(1e-12));
    assertThat(slow.widthPerMetre().high()).isCloseTo(0.08 * 0.2 - 0.0002, within(1e-12));
    Cracking stiff = Cracking.of(Shrinkage.ofMix(0.08, 0.2), Cracking.ROUGH_BASE, Range.exactly(0));
    assertThat(CrackChange.of(stiff, 0.2, 0, true, 0.02)).isEmpty();
    // A sample that did not crack leaves nothing to narrow.
    CrackChange none = CrackChange.of(now.measuredBy(0, 0.5), 0.2, 3, true, 0.02).get(0);
    assertThat(none.slipFactor()).isEqualTo(1);
    assertThatThrownBy(() -> CrackChange.of(now, 0, 3, false, 0.02))
        .hasMessageContaining("share of the soil");
    assertThatThrownBy(() -> CrackChange.of(now, 1.1, 3, false, 0.02))
        .hasMessageContaining("share of the soil");
    assertThatThrownBy(() -> CrackChange.of(now, 0.2, 21, false, 0.02))
        .hasMessageContaining("parts of sand");
    assertThatThrownBy(() -> CrackChange.of(now, 0.2, 3, false, 0))
        .hasMessageContaining("coat thickness");
  }

  /** A sample of 2.8 mm/m that stretched 0.3 mm/m shrank by 3.1; the floor may crack 0.7 to 2. */
  @Test
  void aSampleIsCarriedToTheFloor() {
    Cracking now =
        Cracking.of(Shrinkage.ofMix(0.08, 0.25), Cracking.ROUGH_BASE, Cracking.WITHOUT_FIBRE)
            .measuredBy(0.0014, 0.5);
    CrackChange straw = CrackChange.of(now, 0.25, 3, false, 0.02).get(1);
    assertThat(straw.widthPerMetre().low()).isCloseTo(0.7 * 0.0021, within(1e-12));
    assertThat(straw.widthPerMetre().likely()).isCloseTo(0.0021, within(1e-12));
    assertThat(straw.widthPerMetre().high()).isCloseTo(2 * 0.0028, within(1e-12));
    assertThat(now.over(5).low()).isCloseTo(5 * 0.00196, within(1e-12));
    // Cracks of both directions: 1 - (1 - w)^2.
    assertThat(now.crackShare().low()).isCloseTo(0.0039161584, within(1e-12));
    assertThat(now.crackShare().likely()).isCloseTo(0.00559216, within(1e-12));
    assertThat(now.crackShare().high()).isCloseTo(0.01116864, within(1e-12));
    assertThatThrownBy(() -> now.over(-1)).hasMessageContaining("length");
    assertThatThrownBy(() -> now.measuredBy(0.001, 0)).hasMessageContaining("length of the sample");
    assertThatThrownBy(() -> Cracking.ofSample(0.001, 0))
        .hasMessageContaining("length of the sample");
    assertThatThrownBy(() -> Cracking.ofSample(0.2, 0.5))
        .hasMessageContaining("cracks of the sample");
    Cracking sample = Cracking.ofSample(0.002, 0.5);
    assertThat(sample.measured()).contains(0.004);
    assertThat(sample.freeShrinkage()).isEqualTo(Range.exactly(0.004));
    assertThat(sample.sampleContradictsForecast()).isFalse();
    // Outside of either end of the forecast.
    Cracking forecast = Cracking.of(Range.exactly(0.01), Range.exactly(1), Range.exactly(0.004));
    assertThat(forecast.sampleContradictsForecast()).isFalse();
    assertThat(forecast.measuredBy(0.0029, 0.5).sampleContradictsForecast()).isTrue();
    assertThat(forecast.measuredBy(0.0031, 0.5).sampleContradictsForecast()).isTrue();
  }

  @Test
  void cracksOutOfRangeAreNamed() {
    Range some = Range.exactly(0.01);
    Range part = Range.exactly(0.5);
    assertThatThrownBy(() -> Cracking.of(new Range(-0.01, 0, 0.1), part, some))
        .hasMessageContaining("free shrinkage (low)");
    assertThatThrownBy(() -> Cracking.of(new Range(0, 0.1, 0.31), part, some))
        .hasMessageContaining("free shrinkage (high)");
    assertThatThrownBy(() -> Cracking.of(some, new Range(-0.1, 0, 0.5), some))
        .hasMessageContaining("restraint (low)");
    assertThatThrownBy(() -> Cracking.of(some, new Range(0, 0.5, 1.1), some))
        .hasMessageContaining("restraint (high)");
    assertThatThrownBy(() -> Cracking.of(some, part, new Range(-0.1, 0, 0.01)))
        .hasMessageContaining("stretch (low)");
    assertThatThrownBy(() -> Cracking.of(some, part, new Range(0, 0.01, 0.06)))
        .hasMessageContaining("stretch (high)");
  }

  /** Which advice is given for cracks of so many mm in a metre. */
  @Test
  void adviceFollowsTheWidth() {
    assertThat(wide(0.0001, 0.0004, 0.0005).advice(false, 0.03))
        .singleElement()
        .asString()
        .contains("hairlines");
    assertThat(wide(0.0001, 0.0004, 0.0006).advice(false, 0.03))
        .singleElement()
        .asString()
        .contains("can be mended");
    List<String> mend = wide(0.001, 0.003, 0.006).advice(false, 0.03);
    assertThat(mend).hasSize(4);
    assertThat(mend.get(0)).contains("can be mended");
    assertThat(mend.get(1)).contains("straw");
    assertThat(mend.get(2)).contains("two coats");
    assertThat(mend.get(3)).contains("slowly");
    List<String> change = wide(0.001, 0.005, 0.006).advice(true, 0.02);
    assertThat(change).hasSize(2);
    assertThat(change.get(0)).contains("add sand");
    assertThat(change.get(1)).contains("slowly");
  }

  private static Cracking wide(double low, double likely, double high) {
    return Cracking.of(new Range(low, likely, high), Range.exactly(1), Range.exactly(0));
  }

  /**
   * Half a per cent of cracks in 20 m2 of 30 mm and a skim of 2 mm: 3 + 40 L and 15 % of waste. A
   * litre of slip holds 1 / (1 / 2.65 + 0.4) kg of dry earth.
   */
  @Test
  void slipOfSoilAndSandWithoutStraw() {
    FloorMix coat =
        new FloorMix(
            "coat",
            List.of(
                MixPart.of("clay soil", 0.3, 1100, 0.1),
                MixPart.of("sand", 0.69, 1350, 0.04),
                MixPart.of("chopped straw", 0.01, 60, 0.1)),
            new Range(1700, 1750, 1800),
            0.18,
            0.0008);
    SlipRepair slip = SlipRepair.of(Range.exactly(0.005), 20, 0.03, 0.002, coat);
    assertThat(slip.cracks().likely()).isCloseTo(0.00345, within(1e-12));
    assertThat(slip.skim()).isCloseTo(0.046, within(1e-12));
    assertThat(slip.volume().high()).isCloseTo(0.04945, within(1e-12));
    double dry = 49.45 / (1 / 2.65 + 0.4);
    assertThat(slip.parts().get(0).dryMass()).isCloseTo(dry * 0.3 / 0.99, within(1e-9));
    assertThat(slip.parts().get(1).dryMass()).isCloseTo(dry * 0.69 / 0.99, within(1e-9));
    assertThat(slip.water()).isCloseTo(0.4 * dry, within(1e-9));
    // No wider than the coat's own grain.
    assertThat(slip.sieve()).isEqualTo(0.0008);
    assertThatThrownBy(() -> SlipRepair.of(Range.exactly(0.005), 0, 0.03, 0, coat))
        .hasMessageContaining("floor area");
    assertThatThrownBy(() -> SlipRepair.of(Range.exactly(0.005), 20, 0, 0, coat))
        .hasMessageContaining("coat thickness");
    assertThatThrownBy(() -> SlipRepair.of(Range.exactly(0.005), 20, 0.03, 0.02, coat))
        .hasMessageContaining("skim thickness");
    Steps none = Steps.none();
    assertThatThrownBy(() -> SlipRepair.volume(1.1, 20, 0.03, 0, none))
        .hasMessageContaining("share of cracks");
    assertThatThrownBy(() -> SlipRepair.volume(0.1, 0, 0.03, 0, none))
        .hasMessageContaining("floor area");
    assertThatThrownBy(() -> SlipRepair.volume(0.1, 20, 0, 0, none))
        .hasMessageContaining("coat thickness");
    assertThatThrownBy(() -> SlipRepair.volume(0.1, 20, 0.03, 0.02, none))
        .hasMessageContaining("skim thickness");
  }

  /** With half a bucket more sand the sample's own strain falls as that of the mix. */
  @Test
  void aSampleShrinksWithItsSand() {
    Cracking now =
        Cracking.of(Shrinkage.ofMix(0.08, 0.25), Cracking.ROUGH_BASE, Cracking.WITHOUT_FIBRE)
            .measuredBy(0.0014, 0.5);
    CrackChange sand = CrackChange.of(now, 0.25, 3, false, 0.02).get(0);
    // A quarter of soil becomes 1 / 4.5: eight ninths; 2.8 mm/m and 0.3 mm/m of stretch.
    double part = 8.0 / 9;
    assertThat(sand.widthPerMetre().low())
        .isCloseTo(0.7 * (0.0031 * part * part - 0.0003), within(1e-12));
    assertThat(sand.widthPerMetre().likely())
        .isCloseTo(0.0031 * Math.pow(part, 1.5) - 0.0003, within(1e-12));
    assertThat(sand.widthPerMetre().high()).isCloseTo(2 * 0.0031 * part, within(1e-12));
  }

  /** The doubt of the width lies about the likely one. */
  @Test
  void theDoubtOfAForecastHoldsIt() {
    Cracking now =
        Cracking.of(Shrinkage.ofMix(0.08, 0.25), Cracking.ROUGH_BASE, Cracking.WITHOUT_FIBRE);
    Range doubt = now.forecastDoubt(Steps.none()).sampled();
    assertThat(doubt.low()).isLessThan(now.forecast().likely());
    assertThat(doubt.high()).isGreaterThan(now.forecast().likely());
    assertThat(doubt.high()).isLessThanOrEqualTo(now.forecast().high());
  }
}
