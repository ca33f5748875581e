package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mixes of parts that weigh alike, so that shares can be read off the buckets. */
class MixByHandTest {

  private static MixComponent soil(double clay) {
    return alike(MixComponent.claySoil("soil", Uncertain.exact(clay)));
  }

  private static MixComponent alike(MixComponent component) {
    return component.withDensities(2650, Uncertain.exact(1400), 1700);
  }

  private static final MixComponent SAND = alike(MixComponent.washedSand("sand"));

  private static List<Double> buckets(Recipe recipe) {
    return recipe.portions().stream().map(Recipe.Portion::looseVolume).toList();
  }

  /**
   * 60 % of clay down to 19 % wants 2.158 parts. In half buckets: 1 : 2 is 20 %, 2 : 4½ 18.46 %, 3
   * : 6½ 18.95 %, 4 : 8½ 19.2 %, 5 : 11 18.75 %. None is within 0.01 of a point, the third nearest.
   */
  @Test
  void theNearestPairIsTakenWhereNoneKeepsTheBand() {
    ClayBlend blend =
        ClayBlend.of(soil(0.6), SAND, ClayBand.of(0.1899, 0.1901), BucketRounding.HALF);
    assertThat(buckets(blend.rounded())).containsExactly(3.0, 6.5);
    assertThat(blend.clayShift()).isCloseTo(0.6 * 6 / 19 - 0.19, within(1e-12));
    MixChoice choice = MixChoice.of(blend, java.util.Optional.empty(), java.util.Optional.empty());
    assertThat(choice.sandParts()).isCloseTo(13 / 6.0, within(1e-12));
  }

  @Test
  void theFewestBucketsOfSoilThatKeepTheBandAreTaken() {
    // 18.46 % misses 18.5 % by a hair, 18.95 % keeps it.
    ClayBlend blend = ClayBlend.of(soil(0.6), SAND, ClayBand.of(0.185, 0.195), BucketRounding.HALF);
    assertThat(buckets(blend.rounded())).containsExactly(3.0, 6.5);
    ClayBlend wide = ClayBlend.of(soil(0.6), SAND, ClayBand.of(0.18, 0.20), BucketRounding.HALF);
    assertThat(buckets(wide.rounded())).containsExactly(1.0, 2.0);
  }

  /** 5 for a tonne of soil and 30 for sand: 1 : 2.158 costs 22.083 a tonne, 1 : 2 21.667. */
  @Test
  void roundingMovesThePriceToo() {
    ClayBlend blend =
        ClayBlend.of(
            soil(0.6).withPricePerTonne(5),
            SAND.withPricePerTonne(30),
            ClayBand.of(0.18, 0.20),
            BucketRounding.HALF);
    double exact = (5 + 30 * 41 / 19.0) / (1 + 41 / 19.0);
    assertThat(blend.priceShiftPerTonne().orElseThrow())
        .isCloseTo((5 + 60) / 3.0 - exact, within(1e-9));
    assertThat(ClayBlend.of(soil(0.6), SAND, ClayBand.FLOOR, BucketRounding.HALF))
        .satisfies(b -> assertThat(b.priceShiftPerTonne()).isEmpty());
  }

  /**
   * Sand of 30 % clay can never bring a soil of 60 % under a fifth: 50 parts of it reach 30.59 %.
   */
  @Test
  void dirtySandHasANearestShare() {
    MixComponent dirty = alike(MixComponent.pitSand("pit sand", Uncertain.exact(0.3)));
    ClayBlend blend = ClayBlend.of(soil(0.6), dirty, ClayBand.FLOOR, BucketRounding.NONE);
    double nearest = (0.6 + 50 * 0.3) / 51;
    assertThat(blend.exact().clayRatio().value()).isCloseTo(nearest, within(1e-9));
    assertThat(blend.sandPerSoilDryMass()).isCloseTo(50, within(1e-6));
    assertThat(blend.leastSandPerSoilDryMass()).isCloseTo(50, within(1e-6));
    assertThat(blend.greatestSandPerSoilDryMass()).isCloseTo(50, within(1e-6));
    assertThat(blend.unmet().orElseThrow()).contains("pit sand itself has 30 %", "30.6 %");
    assertThatThrownBy(() -> ClayBlend.of(soil(0.3), dirty, ClayBand.FLOOR, BucketRounding.NONE))
        .hasMessageContaining("must be more than that of pit sand");
  }

  /** 1 : 2 : 3 by volume is exact in ½, 1 and 1½ buckets, and fewer are not to be had. */
  @Test
  void anExactMixNeedsNoMoreBucketsThanItsParts() {
    MixComponent grit = alike(MixComponent.gravel("grit", 0.002, 0.008));
    Recipe exact = Recipe.ofDryMasses(List.of(soil(0.9), SAND, grit), List.of(1.0, 2.0, 3.0));
    Recipe rounded = BucketSearch.round(exact, ClayBand.of(0.14, 0.16), BucketRounding.HALF);
    assertThat(buckets(rounded)).containsExactly(0.5, 1.0, 1.5);
    assertThat(buckets(BucketSearch.round(exact, ClayBand.of(0.14, 0.16), BucketRounding.WHOLE)))
        .containsExactly(1.0, 2.0, 3.0);
    assertThat(BucketSearch.round(exact, ClayBand.of(0.14, 0.16), BucketRounding.NONE))
        .isEqualTo(exact);
  }

  @Test
  void aMixMeasuresATonneAndTellsItsShifts() {
    MixComponent rich = soil(0.6).withPricePerTonne(5);
    MixComponent sand = SAND.withPricePerTonne(30);
    MixSolution mix =
        MixDesign.solve(
            List.of(rich, sand), MixTarget.of(ClayBand.of(0.18, 0.20)), BucketRounding.HALF);
    assertThat(mix.exact().dryMass()).isCloseTo(1000, within(1e-6));
    double rounded = mix.rounded().dryMassRatios().get(0);
    double exact = mix.exact().dryMassRatios().get(0);
    assertThat(exact).isCloseTo(0.19 / 0.6, within(1e-4));
    assertThat(mix.clayShift()).isCloseTo(0.6 * (rounded - exact), within(1e-9));
    assertThat(mix.priceShiftPerDryTonne().orElseThrow())
        .isCloseTo(25 * (exact - rounded), within(1e-6));
    MixSolution free =
        MixDesign.solve(
            List.of(soil(0.6), SAND), MixTarget.of(ClayBand.FLOOR), BucketRounding.HALF);
    assertThat(free.priceShiftPerDryTonne()).isEmpty();
    assertThatThrownBy(
            () ->
                MixDesign.solve(
                    List.of(SAND, SAND), MixTarget.of(ClayBand.FLOOR), BucketRounding.HALF))
        .hasMessageContaining("two of the same name");
  }

  /** Sands that are alike in all but their name have no reason to be taken unalike. */
  @Test
  void whatIsAlikeIsSharedAlike() {
    MixComponent other = alike(MixComponent.washedSand("other sand"));
    MixComponent third = alike(MixComponent.washedSand("third sand"));
    MixSolution mix =
        MixDesign.solve(
            List.of(soil(0.51), SAND, other, third),
            MixTarget.of(ClayBand.FLOOR),
            BucketRounding.NONE);
    List<Double> shares = mix.exact().dryMassRatios();
    assertThat(shares.get(0)).isCloseTo(1 / 3.0, within(1e-4));
    for (int i = 1; i < 4; i++) {
      assertThat(shares.get(i)).isCloseTo(2 / 9.0, within(1e-4));
    }
  }

  /**
   * Nine per cent of shrinkage held to three lets a third be soil: the cheapest is at that edge.
   */
  @Test
  void theCheapestMixKeepsTheLimitOfShrinkage() {
    MixComponent cheap = soil(0.45).withLinearShrinkage(0.09).withPricePerTonne(5);
    MixComponent grit = alike(MixComponent.gravel("grit", 0.002, 0.008)).withPricePerTonne(22);
    MixTarget target = MixTarget.cheapest(ClayBand.FLOOR).withShrinkageLimit(0.03);
    MixSolution mix =
        MixDesign.solve(
            List.of(cheap, SAND.withPricePerTonne(30), grit), target, BucketRounding.NONE);
    assertThat(mix.exact().dryMassRatios().get(0)).isCloseTo(1 / 3.0, within(1e-4));
    assertThat(mix.pricePerDryTonne().orElseThrow())
        .isCloseTo(5 / 3.0 + 22 * 2 / 3.0, within(2e-3));
    // The middle of the band, 17 %, is out of reach by the same edge: 15 % is nearest.
    MixSolution middle =
        MixDesign.solve(
            List.of(cheap, SAND, grit),
            MixTarget.of(ClayBand.FLOOR).withShrinkageLimit(0.03),
            BucketRounding.NONE);
    assertThat(middle.clayRatio()).isCloseTo(0.15, within(1e-4));
    assertThatThrownBy(
            () ->
                MixDesign.solve(
                    List.of(soil(0.45), SAND),
                    MixTarget.of(ClayBand.FLOOR).withShrinkageLimit(0.03),
                    BucketRounding.NONE))
        .hasMessageContaining("needed for the shrinkage limit because it has clay");
  }

  @Test
  void shrinkageIsThatOfTheSoilsByTheirShares() {
    MixComponent fat = soil(0.5).withLinearShrinkage(0.12);
    MixComponent lean =
        alike(MixComponent.claySoil("lean", Uncertain.exact(0.2))).withLinearShrinkage(0.04);
    Range alone = MixProblem.shrinkageOf(List.of(fat, SAND), new double[] {1, 0}).orElseThrow();
    assertThat(alone.likely()).isCloseTo(0.12, within(1e-12));
    // Half and half of both shrinks like one soil of 8 %.
    Range both = MixProblem.shrinkageOf(List.of(fat, lean), new double[] {0.5, 0.5}).orElseThrow();
    assertThat(both).isEqualTo(Shrinkage.ofMix(0.08, 1));
    Range sandy =
        MixProblem.shrinkageOf(List.of(fat, lean, SAND), new double[] {0.2, 0.2, 0.6})
            .orElseThrow();
    assertThat(sandy).isEqualTo(Shrinkage.ofMix(0.08, 0.4));
    assertThat(MixProblem.shrinkageOf(List.of(SAND), new double[] {1})).contains(Range.exactly(0));
    assertThat(MixProblem.shrinkageOf(List.of(fat, soil(0.3)), new double[] {0.5, 0.5})).isEmpty();
  }

  /** Which part is named first has nothing to do with the room that they take. */
  @Test
  void partsFillEachOtherInAnyOrder() {
    MixComponent soil = MixComponent.claySoil("soil", Uncertain.exact(0.6));
    MixComponent sand = MixComponent.washedSand("sand");
    MixComponent grit = MixComponent.gravel("grit", 0.004, 0.016);
    List<Double> masses = List.of(1.0, 2.0, 3.0);
    Range first = Recipe.ofDryMasses(List.of(soil, sand, grit), masses).compactedVolume();
    Range last =
        Recipe.ofDryMasses(List.of(grit, sand, soil), List.of(3.0, 2.0, 1.0)).compactedVolume();
    assertThat(last.low()).isCloseTo(first.low(), within(1e-15));
    assertThat(last.likely()).isCloseTo(first.likely(), within(1e-15));
    // Soil 1/1750 lies in the sand, both in the grit: the grit alone fills 3/1900, or its solids
    // 3/2650 and what the finer ones fill, which is the sand's own 2/1750 or 2/2650 + 1/1750.
    double fine = Math.max(2 / 1750.0, 2 / 2650.0 + 1 / 1750.0);
    assertThat(first.low()).isCloseTo(Math.max(3 / 1900.0, 3 / 2650.0 + fine), within(1e-15));
    assertThat(first.high()).isCloseTo(3 / 1750.0 + 3 / 1900.0, within(1e-15));
  }

  @Test
  void aWeighedBucketGivesItsDryDensity() {
    // 14 kg in 10 L with 5 % of water, swollen by a fifth: 1600 kg/m³ if it lay dry.
    MixComponent weighed = MixComponent.washedSand("sand").damp(0.05, 0.2).weighed(0.010, 14);
    assertThat(weighed.looseDryDensity().value()).isCloseTo(1600, within(1e-9));
    assertThat(weighed.looseDryDensity().standardUncertainty()).isCloseTo(48, within(1e-9));
    assertThat(weighed.compactedDryDensity()).isCloseTo(1760, within(1e-9));
    assertThat(weighed.dampLooseDensity().value()).isCloseTo(1400, within(1e-9));
    // Published densities scatter by 15 %, two standard deviations.
    MixComponent sand = MixComponent.washedSand("sand");
    assertThat(sand.looseDryDensity().standardUncertainty()).isCloseTo(1555 * 0.075, within(1e-9));
    assertThat(sand.withLooseDensityMoved(0)).isEqualTo(sand);
    assertThat(sand.withLooseDensityMoved(1).looseDryDensity().value())
        .isCloseTo(1555 * 1.075, within(1e-9));
    // However far it is moved, it stays looser than packed.
    assertThat(sand.withLooseDensityMoved(9).looseDryDensity().value())
        .isCloseTo(1750 * 0.99, within(1e-9));
  }

  @Test
  void gravelHasItsLimitsToo() {
    GradingCurve stony =
        new GradingCurve(
            List.of(
                new GradingCurve.Point(0.001e-3, 0),
                new GradingCurve.Point(0.002e-3, 0.06),
                new GradingCurve.Point(0.05e-3, 0.12),
                new GradingCurve.Point(2e-3, 0.15),
                new GradingCurve.Point(20e-3, 1)));
    assertThat(CompositionRange.RAMMED_EARTH.outside(stony))
        .anyMatch(text -> text.startsWith("gravel 85 %") && text.contains("0 to 80 %"));
    assertThat(CompositionRange.of(SoilUse.FLOOR)).isEmpty();
    for (SoilUse use : SoilUse.values()) {
      assertThat(ClayBand.of(use).least()).isEqualTo(use.leastClay());
      assertThat(ClayBand.of(use).greatest()).isEqualTo(use.greatestClay());
    }
  }

  @Test
  void strawByHand() {
    // A hundredth of 100 kg: one kilogram at 40 to 70 kg/m³, or of bales of 16 to 25 kg.
    Fibre straw = Fibre.straw(100, 0.01, Steps.none());
    assertThat(straw.looseVolume()).isEqualTo(new Range(1 / 70.0, 1 / 55.0, 1 / 40.0));
    assertThat(straw.bales()).isEqualTo(new Range(1 / 25.0, 1 / 20.0, 1 / 16.0));
  }

  @Test
  void aCurveThatIsOffByATenthIsOffByATenth() {
    GradingTarget target = new GradingTarget(0.008, 0.5);
    assertThat(target.sizes()).hasSize(7).allMatch(size -> size < 0.008);
    assertThat(target.misfit(target::finer)).isZero();
    assertThat(target.misfit(size -> target.finer(size) + 0.1)).isCloseTo(0.1, within(1e-12));
    // Off on one of seven sieves only: a tenth over the root of seven.
    assertThat(target.misfit(size -> target.finer(size) + (size == 0.001 ? 0.1 : 0)))
        .isCloseTo(0.1 / Math.sqrt(7), within(1e-12));
    GradingCurve curve = target.curve();
    for (double d = 0.002e-3; d < 0.0079; d *= 2) {
      assertThat(curve.finer(d)).isCloseTo(target.finer(d), within(1e-9));
    }
    assertThat(curve.finer(0.008)).isEqualTo(1);
    assertThat(curve.points()).hasSize(13);
  }

  @Test
  void nothingIsNoMix() {
    assertThatThrownBy(() -> new Recipe(List.of(new Recipe.Portion(SAND, 0))))
        .hasMessageContaining("no volume above 0");
    assertThatThrownBy(() -> Recipe.ofDryMasses(List.of(SAND), List.of(1.0, 2.0)))
        .hasMessageContaining("must be as many");
    List<Proportion.Part> none = List.of(new Proportion.Part("soil", 0));
    assertThatThrownBy(() -> new Proportion(none, Basis.DRY_MASS))
        .hasMessageContaining("no amount above 0");
    Proportion second =
        new Proportion(
            List.of(
                new Proportion.Part("soil", 0),
                new Proportion.Part("sand", 2),
                new Proportion.Part("grit", 3)),
            Basis.DRY_MASS);
    assertThat(second.perFirst().parts())
        .extracting(Proportion.Part::amount)
        .containsExactly(0.0, 1.0, 1.5);
  }
}
