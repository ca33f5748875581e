package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SoilProperties {

  /**
   * In standard deviations, how far the mean may lie beyond the 5 % or 95 % quantile: Cantelli's
   * inequality P(m - X ≥ k s) ≤ 1 / (1 + k²) = 0.95, from memory. Where tests contradict each other
   * the probability has two heaps, and the mean need not lie between the quantiles. A quantile is
   * moreover placed within one step of the grid.
   */
  private static final double MEAN_BEYOND = Math.sqrt(0.05 / 0.95);

  @Property(tries = 60, seed = "7318")
  void sharesAddToOneAndProbabilitiesToo(@ForAll("evidence") List<SoilEvidence> tests) {
    TexturePosterior p = SoilAssessment.assess(tests).texture();
    assertThat(p.clay().value() + p.silt().value() + p.sand().value()).isCloseTo(1, within(1e-9));
    assertThat(p.classProbabilities().values().stream().mapToDouble(v -> v).sum())
        .isBetween(0.98, 1.0 + 1e-9);
    assertThat(p.clayRange().low()).isLessThanOrEqualTo(p.clayRange().likely());
    assertThat(p.clayRange().high()).isGreaterThanOrEqualTo(p.clayRange().likely());
    double beyond = MEAN_BEYOND * p.clay().standardUncertainty() + 1.0 / TextureGrid.STEPS;
    assertThat(p.clayRange().low() - p.clay().value()).isLessThanOrEqualTo(beyond);
    assertThat(p.clay().value() - p.clayRange().high()).isLessThanOrEqualTo(beyond);
  }

  /** Two sheets of pure sand and one of clay: hardly any probability, but far off. */
  @Example
  void oneTestAgainstTwoMayDrawTheMeanBeyondTheRange() {
    LaboratoryTexture sand = LaboratoryTexture.of(Texture.ofClayAndSand(0, 0.99), SizeLimits.USDA);
    LaboratoryTexture clay =
        LaboratoryTexture.of(Texture.ofClayAndSand(0.54, 0.39), SizeLimits.USDA);
    TexturePosterior p =
        SoilAssessment.assess(List.of(new BendTest(BendTest.Outcome.SMOOTH_RING), sand, sand, clay))
            .texture();
    // Where the mean lies beyond a quantile the range reaches to it.
    assertThat(p.clayRange().high()).isGreaterThanOrEqualTo(p.clay().value() - 1e-12);
    assertThat(p.clayRange().likely()).isCloseTo(p.clay().value(), within(1e-12));
  }

  @Property(tries = 60, seed = "7335")
  void regionsAreNestedAndHoldWhatTheyClaim(@ForAll("evidence") List<SoilEvidence> tests) {
    TexturePosterior p = SoilAssessment.assess(tests).texture();
    CredibleRegion inner = p.region(0.8);
    CredibleRegion outer = p.region(0.95);
    assertThat(inner.probability()).isGreaterThanOrEqualTo(0.8 - 1e-9);
    assertThat(outer.probability()).isGreaterThanOrEqualTo(0.95 - 1e-9);
    assertThat(inner.areaRatio()).isLessThanOrEqualTo(outer.areaRatio());
  }

  @Property(tries = 60, seed = "7352")
  void orderOfTestsDoesNotMatter(@ForAll("evidence") List<SoilEvidence> tests) {
    List<SoilEvidence> turned = new ArrayList<>(tests);
    java.util.Collections.reverse(turned);
    assertThat(SoilAssessment.assess(turned).texture().clay().value())
        .isCloseTo(SoilAssessment.assess(tests).texture().clay().value(), within(1e-9));
  }

  @Property(tries = 12, seed = "7369")
  void refinementConverges(@ForAll("evidence") List<SoilEvidence> tests) {
    double coarse = clay(tests, 50);
    double usual = clay(tests, 100);
    double fine = clay(tests, 400);
    assertThat(Math.abs(usual - fine)).isLessThan(Math.max(5e-4, Math.abs(coarse - fine) + 1e-6));
  }

  @Property(tries = 40, seed = "7386")
  void theSameTestAgainNarrows(@ForAll("sheets") LaboratoryTexture sheet) {
    double once = spread(List.of(sheet));
    double twice = spread(List.of(sheet, sheet));
    assertThat(twice).isLessThan(once);
  }

  @Provide
  Arbitrary<List<SoilEvidence>> evidence() {
    Arbitrary<SoilEvidence> ribbons =
        Arbitraries.doubles().between(0, 0.1).map(RibbonTest::ofLength);
    Arbitrary<SoilEvidence> bends = Arbitraries.of(BendTest.Outcome.values()).map(BendTest::new);
    Arbitrary<SoilEvidence> washes = Arbitraries.of(WashTest.Outcome.values()).map(WashTest::new);
    return Arbitraries.oneOf(ribbons, bends, washes, sheets().map(s -> s))
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  @Provide
  Arbitrary<LaboratoryTexture> sheets() {
    return Combinators.combine(
            Arbitraries.doubles().between(0, 1), Arbitraries.doubles().between(0, 1))
        .as(
            (a, b) -> {
              double clay = Math.min(a, b);
              double sand = 1 - Math.max(a, b);
              return LaboratoryTexture.of(Texture.ofClayAndSand(clay, sand), SizeLimits.USDA);
            });
  }

  private static double clay(List<SoilEvidence> tests, int steps) {
    return SoilAssessment.assess(tests, new TextureGrid(steps), Steps.none())
        .texture()
        .clay()
        .value();
  }

  private static double spread(List<SoilEvidence> tests) {
    return SoilAssessment.assess(tests).texture().clay().standardUncertainty();
  }
}
