package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.materials.mix.Shrinkage;
import io.github.seamstead.materials.soil.LinearShrinkage;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import org.junit.jupiter.api.Test;

class CrackingTest {

  private static final Source SAUSAGE =
      Source.found("", "Timberless house manual, shrinkage sausage", "", "100 mm to 93 mm");
  private static final Source VOLUME = Source.derived("linear from volumetric shrinkage, by hand");
  private static final Source FLOOR = Source.derived("0.4 % over 5 m of a held layer");

  @Test
  void barAndSausage() {
    StepRecorder steps = new StepRecorder();
    double shrinkage = new LinearShrinkage(0.100, 0.093).ratio(steps);
    OutsideCheck.of(
            "materials.drying", "linear shrinkage of a 100 mm sausage dried to 93 mm, %", SAUSAGE)
        .expect(7)
        .within(1e-9)
        .got(shrinkage * 100);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.soil.linear_shrinkage", "LS"), shrinkage);
  }

  @Test
  void aHeldLayerCracksByItsShrinkage() {
    Cracking cracking = Cracking.of(Range.exactly(0.004), Range.exactly(1), Range.exactly(0));
    OutsideCheck.of("materials.drying", "total crack width, LS 0.4 % over 5 m, mm", FLOOR)
        .expect(20)
        .within(1e-9)
        .got(cracking.over(5).likely() * 1000);
    StepRecorder steps = new StepRecorder();
    double width = Cracking.widthPerMetre(0.01, 0.8, 0.001, steps);
    assertThat(width).isCloseTo(0.007, within(1e-15));
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.crack-width", "w"), width);
    assertThat(Cracking.widthPerMetre(0.001, 0.5, 0.001, Steps.none())).isZero();
  }

  @Test
  void sandAndFibreNarrowTheCracks() {
    Cracking rich = crack(0.6, Cracking.WITHOUT_FIBRE);
    Cracking lean = crack(0.25, Cracking.WITHOUT_FIBRE);
    Cracking fibred = crack(0.25, Cracking.WITH_FIBRE);
    assertThat(lean.widthPerMetre().likely()).isLessThan(rich.widthPerMetre().likely());
    assertThat(fibred.widthPerMetre().likely()).isLessThan(lean.widthPerMetre().likely());
    assertThat(rich.advice(false, 0.03)).anyMatch(a -> a.contains("add sand"));
    assertThat(rich.advice(false, 0.03)).anyMatch(a -> a.contains("straw"));
    assertThat(rich.advice(true, 0.03)).noneMatch(a -> a.contains("straw"));
    Cracking none = Cracking.of(Range.exactly(0.0003), Cracking.ROUGH_BASE, Range.exactly(0));
    assertThat(none.advice(false, 0.02)).hasSize(1);
  }

  private static Cracking crack(double soilShare, Range stretch) {
    return Cracking.of(Shrinkage.ofMix(0.08, soilShare), Cracking.ROUGH_BASE, stretch);
  }

  @Test
  void slipFillsTheCracksOfAllSectors() {
    Footprint footprint = Footprint.regular(6, 3);
    FloorMix coat =
        new FloorMix(
            "coat",
            List.of(
                MixPart.of("clay soil", 0.25, 1100, 0.1),
                MixPart.of("sand", 0.74, 1350, 0.04),
                MixPart.of("chopped straw", 0.01, 60, 0.1)),
            new Range(1700, 1750, 1800),
            0.18,
            0.004);
    Cracking cracking = crack(0.25, Cracking.WITHOUT_FIBRE);
    double cracks = footprint.area() * cracking.crackShare().likely();
    StepRecorder steps = new StepRecorder();
    double worked = SlipRepair.volume(0.01, 20, 0.025, 0.001, steps);
    assertThat(worked).isCloseTo(1.15 * (0.005 + 0.02), within(1e-12));
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.slip", "V"), worked);
    SlipRepair skimmed = cracking.slip(footprint.area(), 0.025, 0.001, coat);
    assertThat(skimmed.skim()).isCloseTo(1.15 * 0.001 * footprint.area(), within(1e-12));
    assertThat(skimmed.volume().likely())
        .isCloseTo(skimmed.cracks().likely() + skimmed.skim(), within(1e-12));
    SlipRepair slip = cracking.slip(footprint.area(), 0.025, 0, coat);
    assertThat(slip.volume().likely()).isCloseTo(cracks * 0.025 * 1.15, within(1e-9));
    assertThat(slip.parts()).extracting(SlipRepair.Part::name).containsExactly("clay soil", "sand");
    double dry = slip.parts().stream().mapToDouble(SlipRepair.Part::dryMass).sum();
    assertThat(slip.water() / dry).isCloseTo(SlipRepair.SLIP_MOISTURE, within(1e-9));
    assertThat(dry / 2650 + slip.water() / 1000).isCloseTo(slip.volume().likely(), within(1e-12));
  }

  @Test
  void aSampleOfTheMixOverrulesTheForecast() {
    Cracking forecast = crack(0.25, Cracking.WITHOUT_FIBRE);
    Cracking measured = forecast.measuredBy(0.0014, 0.5);
    assertThat(measured.measured().orElseThrow()).isCloseTo(0.0028, within(1e-12));
    assertThat(measured.widthPerMetre()).isEqualTo(new Range(0.00196, 0.0028, 0.0056));
    assertThat(measured.forecast()).isEqualTo(forecast.widthPerMetre());
    assertThat(measured.sampleContradictsForecast()).isFalse();
    assertThat(forecast.measuredBy(0.05, 0.5).sampleContradictsForecast()).isTrue();
    assertThat(Cracking.ofSample(0, 0.5).widthPerMetre()).isEqualTo(Range.exactly(0));
    assertThatThrownBy(() -> forecast.measuredBy(0.2, 0.5))
        .hasMessageContaining("cracks of the sample");
  }

  @Test
  void eachChangeIsReckonedAnew() {
    Cracking forecast = crack(0.25, Cracking.WITHOUT_FIBRE);
    List<CrackChange> changes = CrackChange.of(forecast, 0.25, 3, false, 0.025);
    assertThat(changes)
        .extracting(CrackChange::what)
        .containsExactly(
            "half a bucket more of sand",
            "chopped straw",
            "drying slowly, in shade and without draught",
            "two coats of half the thickness");
    // 3 parts of equal dry mass to one: 3½ leave 1 / 4.5 of soil.
    Cracking leaner = crack(1 / 4.5, Cracking.WITHOUT_FIBRE);
    assertThat(changes.get(0).widthPerMetre().likely())
        .isCloseTo(leaner.forecast().likely(), within(1e-12));
    assertThat(changes.get(1).widthPerMetre())
        .isEqualTo(crack(0.25, Cracking.WITH_FIBRE).forecast());
    for (CrackChange change : changes) {
      assertThat(change.widthPerMetre().likely())
          .isLessThanOrEqualTo(forecast.widthPerMetre().likely());
      assertThat(change.slipFactor()).isLessThan(1);
    }
    assertThat(changes.get(3).slipFactor()).isEqualTo(0.5);
    // Fibred and thin: only sand and time are left.
    assertThat(CrackChange.of(crack(0.25, Cracking.WITH_FIBRE), 0.25, 3, true, 0.02)).hasSize(2);
  }

  @Test
  void aMeasuredSampleIsWhatChangesStartFrom() {
    Cracking measured = crack(0.25, Cracking.WITHOUT_FIBRE).measuredBy(0.0014, 0.5);
    CrackChange straw = CrackChange.of(measured, 0.25, 3, false, 0.02).get(1);
    // 2.8 mm/m cracked and 0.3 mm/m stretched; straw stretches 1 mm/m.
    assertThat(straw.widthPerMetre().likely()).isCloseTo(0.0021, within(1e-12));
    assertThat(straw.widthPerMetre().high()).isGreaterThan(straw.widthPerMetre().likely());
  }

  @Test
  void badNumbersAreNamed() {
    assertThatThrownBy(
            () -> Cracking.of(Range.exactly(0.5), Cracking.ROUGH_BASE, Cracking.WITH_FIBRE))
        .hasMessageContaining("free shrinkage");
    assertThatThrownBy(() -> Shrinkage.ofMix(0.08, 1.2)).hasMessageContaining("share of the soil");
  }
}
