package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class MixProperties {

  private static final MixComponent SAND = MixComponent.washedSand("sand");

  @Property(tries = 150, seed = "7403")
  void moreSandNeverRaisesClay(
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double clay,
      @ForAll @DoubleRange(min = 0, max = 10) double sand,
      @ForAll @DoubleRange(min = 0, max = 5) double more) {
    MixComponent soil = soil(clay);
    assertThat(clay(soil, sand + more)).isLessThanOrEqualTo(clay(soil, sand) + 1e-12);
  }

  @Property(tries = 150, seed = "7420")
  void massIsKeptThroughEveryConversion(
      @ForAll @DoubleRange(min = 0.1, max = 500) double mass,
      @ForAll @DoubleRange(min = 0, max = 0.3) double moisture,
      @ForAll @DoubleRange(min = 0, max = 0.4) double bulking) {
    MixComponent sand = SAND.damp(moisture, bulking);
    Recipe recipe = Recipe.ofDryMasses(List.of(sand, soil(0.4)), List.of(mass, mass / 3));
    assertThat(recipe.portions().get(0).dryMass()).isCloseTo(mass, within(1e-9 * mass));
    assertThat(recipe.dryMass() + recipe.waterBrought())
        .isCloseTo(recipe.dampMass(), within(1e-9 * mass));
    assertThat(recipe.dryMassRatios().stream().mapToDouble(r -> r).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(recipe.looseVolume() * 1)
        .isCloseTo(
            recipe.portions().get(0).looseVolume() + recipe.portions().get(1).looseVolume(),
            within(1e-12));
  }

  @Property(tries = 150, seed = "7437")
  void proportionsScale(
      @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
      @ForAll @DoubleRange(min = 0.1, max = 5) double sand) {
    Recipe one = recipe(soil(0.5), sand);
    Recipe many = one.times(factor);
    assertThat(many.dryMass()).isCloseTo(factor * one.dryMass(), within(1e-9 * many.dryMass()));
    assertThat(many.clayRatio().value()).isCloseTo(one.clayRatio().value(), within(1e-12));
    assertThat(many.yieldRatio().likely()).isCloseTo(one.yieldRatio().likely(), within(1e-12));
  }

  @Property(tries = 150, seed = "7454")
  void yieldLiesBetweenSolidsAndParts(@ForAll @DoubleRange(min = 0, max = 8) double sand) {
    Recipe recipe = recipe(soil(0.5).damp(0.1, 0.1), sand);
    assertThat(recipe.compactedVolume().low()).isGreaterThan(recipe.solidVolume());
    assertThat(recipe.compactedVolume().high()).isLessThan(recipe.looseVolume());
  }

  @Property(tries = 100, seed = "7471")
  void blendHitsTheMiddleOrNamesWhatItCannot(
      @ForAll @DoubleRange(min = 0.02, max = 0.9) double clay,
      @ForAll @DoubleRange(min = 0, max = 0.3) double bulking) {
    ClayBlend blend =
        ClayBlend.of(soil(clay), SAND.damp(0.03, bulking), ClayBand.FLOOR, BucketRounding.HALF);
    double found = blend.exact().clayRatio().value();
    if (clay < ClayBand.FLOOR.least()) {
      assertThat(blend.unmet()).isPresent();
      assertThat(found).isCloseTo(clay, within(1e-9));
    } else {
      assertThat(blend.unmet()).isEmpty();
      assertThat(found).isCloseTo(Math.min(clay, 0.17), within(1e-9));
    }
  }

  @Property(tries = 60, seed = "7488")
  void designAgreesWithTheExactBlend(@ForAll @DoubleRange(min = 0.2, max = 0.9) double clay) {
    MixComponent soil = soil(clay);
    MixSolution mix =
        MixDesign.solve(List.of(soil, SAND), MixTarget.of(ClayBand.FLOOR), BucketRounding.NONE);
    ClayBlend blend = ClayBlend.of(soil, SAND, ClayBand.FLOOR, BucketRounding.NONE);
    assertThat(mix.exact().dryMassRatios().get(0))
        .isCloseTo(blend.exact().dryMassRatios().get(0), within(1e-4));
  }

  private static MixComponent soil(double clay) {
    return MixComponent.claySoil("soil", Uncertain.exact(clay));
  }

  private static Recipe recipe(MixComponent soil, double sand) {
    return new Recipe(List.of(new Recipe.Portion(soil, 1), new Recipe.Portion(SAND, sand)));
  }

  private static double clay(MixComponent soil, double sand) {
    return recipe(soil, sand).clayRatio().value();
  }
}
