package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

class MixDesignTest {

  private static final MixComponent SOIL =
      MixComponent.claySoil("pit soil", new Uncertain(0.45, 0.04))
          .withLinearShrinkage(0.09)
          .withPricePerTonne(5);
  private static final MixComponent SAND =
      MixComponent.washedSand("washed sand").withPricePerTonne(30);
  private static final MixComponent GRAVEL =
      MixComponent.gravel("pea gravel", 0.002, 0.010).withPricePerTonne(22);
  private static final List<MixComponent> ALL = List.of(SOIL, SAND, GRAVEL);

  @Test
  void middleOfTheBandIsMet() {
    MixSolution mix = MixDesign.solve(ALL, MixTarget.of(ClayBand.FLOOR), BucketRounding.HALF);
    assertThat(mix.clayRatio()).isCloseTo(0.17, within(1e-4));
    assertThat(mix.unmet()).isEmpty();
    assertThat(ClayBand.FLOOR.holds(mix.rounded().clayRatio().value())).isTrue();
    assertThat(mix.rounded().portions())
        .allSatisfy(p -> assertThat(p.looseVolume() * 2 % 1).isZero());
  }

  @Test
  void nearestGradingBeatsEveryMixOfAFineSearch() {
    MixTarget target = MixTarget.near(ClayBand.FLOOR, new GradingTarget(0.010, 0.5));
    MixSolution mix = MixDesign.solve(ALL, target, BucketRounding.NONE);
    double found = mix.gradingMisfit().orElseThrow();
    double searched = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 200; i++) {
      for (int j = 0; j <= 200 - i; j++) {
        Recipe recipe =
            Recipe.ofDryMasses(ALL, List.of(i / 200.0, j / 200.0, (200 - i - j) / 200.0));
        if (ClayBand.FLOOR.holds(recipe.clayRatio().value())) {
          searched = Math.min(searched, target.grading().orElseThrow().misfit(recipe::finer));
        }
      }
    }
    assertThat(found).isLessThanOrEqualTo(searched + 1e-6);
    assertThat(found).isCloseTo(searched, within(0.002));
  }

  @Test
  void leastCostIsAtACornerOfTheLimits() {
    MixSolution mix = MixDesign.solve(ALL, MixTarget.cheapest(ClayBand.FLOOR), BucketRounding.NONE);
    // Cheapest soil as far as the band allows, the rest the cheaper gravel.
    assertThat(mix.clayRatio()).isCloseTo(0.20, within(1e-6));
    assertThat(mix.exact().portions().get(1).looseVolume()).isCloseTo(0, within(1e-9));
    assertThat(mix.pricePerDryTonne().orElseThrow())
        .isCloseTo(5 * 0.2 / 0.45 + 22 * (1 - 0.2 / 0.45), within(1e-6));
  }

  /** A tonne as it is sold holds 1/(1 + w) of dry soil: 10 a tonne at 30 % is 13, more than 11. */
  @Test
  void waterIsNotPaidForAsSoil() {
    MixComponent wet =
        MixComponent.claySoil("wet soil", new Uncertain(0.45, 0.04))
            .damp(0.3, 0)
            .withPricePerTonne(10);
    MixComponent dry =
        MixComponent.claySoil("dry soil", new Uncertain(0.45, 0.04)).withPricePerTonne(11);
    MixSolution mix =
        MixDesign.solve(
            List.of(wet, dry, SAND), MixTarget.cheapest(ClayBand.FLOOR), BucketRounding.NONE);
    assertThat(mix.exact().dryMassRatios().get(0)).isCloseTo(0, within(1e-9));
    assertThat(mix.pricePerDryTonne().orElseThrow())
        .isCloseTo(11 * 0.2 / 0.45 + 30 * (1 - 0.2 / 0.45), within(1e-6));
  }

  /**
   * Of 12 half-filled buckets each is off by a quarter bucket at most, so no share need move by
   * more than about 0.03; fewer buckets may be worth another 0.024.
   */
  @Test
  void roundedBucketsKeepTheSharesOfTheMix() {
    for (double aim = 0.12; aim < 0.32; aim += 0.01) {
      ClayBand band =
          new ClayBand("trial", aim - 0.05, aim + 0.05, Source.derived("a band round the aim"));
      MixSolution mix = MixDesign.solve(ALL, MixTarget.of(band), BucketRounding.HALF);
      for (int i = 0; i < ALL.size(); i++) {
        assertThat(mix.rounded().dryMassRatios().get(i))
            .as("share of %s, aim %s", ALL.get(i).name(), aim)
            .isCloseTo(mix.exact().dryMassRatios().get(i), within(0.06));
      }
    }
  }

  @Test
  void shrinkageLimitHoldsOrIsNamed() {
    MixSolution within3 =
        MixDesign.solve(
            ALL, MixTarget.of(ClayBand.FLOOR).withShrinkageLimit(0.03), BucketRounding.NONE);
    assertThat(within3.shrinkage().orElseThrow().high()).isLessThanOrEqualTo(0.03 + 1e-6);
    assertThat(within3.unmet()).isEmpty();
    MixSolution tooStrict =
        MixDesign.solve(
            ALL, MixTarget.of(ClayBand.FLOOR).withShrinkageLimit(0.01), BucketRounding.NONE);
    assertThat(tooStrict.unmet())
        .singleElement()
        .asString()
        .contains("linear shrinkage of at most 1 % cannot be met", "the least is 2.8 %");
    assertThat(tooStrict.clayRatio()).isCloseTo(0.14, within(1e-4));
  }

  @Test
  void clayOutOfReachIsNamedWithTheNearest() {
    MixSolution mix =
        MixDesign.solve(
            List.of(MixComponent.claySoil("sandy soil", Uncertain.exact(0.08)), SAND),
            MixTarget.of(ClayBand.FLOOR),
            BucketRounding.WHOLE);
    assertThat(mix.unmet())
        .singleElement()
        .asString()
        .contains("richest component, sandy soil, has 8 %, which is the nearest");
    assertThat(mix.clayRatio()).isCloseTo(0.08, within(1e-9));
  }

  @Test
  void missingPriceIsNamed() {
    assertThatThrownBy(
            () ->
                MixDesign.solve(
                    List.of(SOIL, MixComponent.washedSand("beach sand")),
                    MixTarget.cheapest(ClayBand.COB),
                    BucketRounding.NONE))
        .hasMessageContaining("beach sand: price per tonne: given none");
  }

  @Test
  void derivationFollows() {
    for (MixTarget target :
        List.of(
            MixTarget.of(ClayBand.COB),
            MixTarget.near(ClayBand.COB, new GradingTarget(0.010, 0.45)),
            MixTarget.cheapest(ClayBand.COB))) {
      StepRecorder steps = new StepRecorder();
      MixSolution mix = MixDesign.solve(ALL, target, BucketRounding.HALF, steps);
      DerivationChecks.assertFollowsTo(
          steps.derivation("materials.mix.design", "mix"), mix.clayRatio());
    }
  }

  @Test
  void theChoiceOfADesignNamesItsAimAndWhatIsUnmet() {
    MixComponent soil =
        MixComponent.claySoil("soil", Uncertain.exact(0.4)).withLinearShrinkage(0.08);
    MixComponent sand = MixComponent.washedSand("sand");
    MixComponent grit = MixComponent.gravel("grit", 0.002, 0.008);
    MixTarget target = MixTarget.near(ClayBand.FLOOR, new GradingTarget(0.008, 0.5));
    MixSolution solution = MixDesign.solve(List.of(soil, sand, grit), target, BucketRounding.HALF);
    MixChoice choice = MixChoice.designed(solution);
    assertThat(choice.ground()).isEqualTo(MixChoice.Ground.DESIGNED);
    assertThat(choice.reason()).contains("nearest the grading");
    assertThat(choice.unmet()).isEmpty();
    assertThat(choice.recipe().portions()).hasSize(3);
    assertThat(choice.sandParts()).isPositive();
    assertThat(ClayBand.FLOOR.holds(choice.recipe().clayRatio().value())).isTrue();
    MixChoice strict =
        MixChoice.designed(
            MixDesign.solve(
                List.of(soil, sand, grit), target.withShrinkageLimit(0.01), BucketRounding.HALF));
    assertThat(strict.unmet().orElseThrow()).contains("linear shrinkage of at most 1 %");
  }
}
