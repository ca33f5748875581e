package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The doubt of a mix's clay, and ratios with nothing on one side. */
class MixDoubtTest {

  private static final MixComponent SOIL =
      MixComponent.claySoil("pit soil", new Uncertain(0.4, 0.02));
  private static final MixComponent SAND = MixComponent.washedSand("washed sand");

  private static Recipe recipe(double soil, double sand) {
    return new Recipe(List.of(new Recipe.Portion(SOIL, soil), new Recipe.Portion(SAND, sand)));
  }

  /** The recipe's own first-order formula is written apart from the law of propagation. */
  @Test
  void theLawAgreesWithTheRecipesOwnFormula() {
    Recipe recipe = recipe(1, 2.5);
    Propagation.Doubt doubt = recipe.clayDoubt(Map.of(), Steps.none());
    assertThat(doubt.value()).isCloseTo(recipe.clayRatio().value(), within(1e-12));
    double own = recipe.clayRatio().standardUncertainty();
    assertThat(doubt.standardUncertainty()).isCloseTo(own, within(0.02 * own));
    assertThat(doubt.shares().values().stream().mapToDouble(s -> s).sum())
        .isCloseTo(1, within(1e-12));
  }

  /** A soil of which one test was made leaves the mix as open as itself. */
  @Test
  void aSoilHardlyKnownLeavesTheMixOpen() {
    double whole = SOIL.clayRatio().value();
    Map<String, Range> wide = Map.of("pit soil", new Range(0.2 * whole, whole, 2 * whole));
    Propagation.Doubt doubt = recipe(1, 2.5).clayDoubt(wide, Steps.none());
    assertThat(doubt.sampled().low()).isLessThan(0.3 * doubt.value());
    assertThat(doubt.sampled().high()).isGreaterThan(1.8 * doubt.value());
  }

  @Test
  void aRatioNamesOnlyWhatItHas() {
    assertThat(recipe(1, 0).proportion(Basis.LOOSE_VOLUME).text()).isEqualTo("pit soil alone");
    assertThat(recipe(1, 2).proportion(Basis.LOOSE_VOLUME).text())
        .startsWith("1 part pit soil to 2 parts washed sand, by ");
  }

  @Test
  void aRatioThatWasTriedIsAskedForASecondTime() {
    List<TrialOutcome> outcomes =
        List.of(TrialOutcome.of(2, 0.001, 0.5, TrialOutcome.Dusting.NONE));
    assertThat(further(outcomes, 2)).contains("2 parts of sand a second time");
    assertThat(further(outcomes, 3)).contains("Try 1 part of soil to 3 parts of sand next");
  }

  private static String further(List<TrialOutcome> outcomes, double next) {
    TrialReading.Candidate best = new TrialReading.Candidate(2, 0.7);
    return TrialAdvice.of(outcomes, best, 0.7, Optional.of(next), TrialReading.FLOOR_CRACK_LIMIT)
        .get(0);
  }
}
