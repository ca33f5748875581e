package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecipeTest {

  private static final Source BATCHING =
      Source.found("", "Proportioning of concrete mixes", "", "bulking of sand by volume");
  private static final Source BLENDING =
      Source.found("", "Two-material gradation, homework answers", "", "");
  private static final Source ACI =
      Source.found("ACI", "211.1 mix design example, 7000 psi", "", "");
  private static final double POUND = 0.45359237;
  private static final double CUBIC_FOOT = 0.028316846592;

  private static final MixComponent SAND = MixComponent.washedSand("washed sand");

  @ParameterizedTest
  @CsvSource({"2,0.20,2.4", "2,0.10,2.2", "3,0.15,3.45"})
  void bulkedSandTakesMoreParts(double dryParts, double bulking, double dampParts) {
    MixComponent sand = SAND.damp(0.03, bulking);
    double mass = dryParts * SAND.looseDryDensity().value();
    OutsideCheck.of("materials.mix", dryParts + " parts of dry sand bulked by " + bulking, BATCHING)
        .expect(dampParts)
        .within(1e-9)
        .got(Recipe.ofDryMasses(List.of(sand), List.of(mass)).looseVolume());
  }

  @ParameterizedTest
  @CsvSource({"0.02,2.3", "0.03,2.4", "0.04,2.5", "0.05,2.6"})
  void orderOfTwoCubicMetresOfDrySand(double moisture, double order) {
    MixComponent sand = SAND.damp(moisture, SandBulking.published().at(moisture).likely());
    double mass = 2 * SAND.looseDryDensity().value();
    OutsideCheck.of(
            "materials.mix",
            "2 m3 of dry sand at moisture " + moisture + ", m3 damp",
            SandBulking.SOURCE)
        .expect(order)
        .within(1e-9)
        .got(Recipe.ofDryMasses(List.of(sand), List.of(mass)).looseVolume());
  }

  @Test
  void dampSandWeighsLessThanDry() {
    MixComponent sand = SAND.withDensities(2650, Uncertain.exact(1450), 1700).damp(0.04, 0.25);
    OutsideCheck.of(
            "materials.mix",
            "damp loose density of 1450 kg/m3 at 4 %, bulked 25 %",
            Source.derived("bulking table"))
        .expect(1206)
        .within(0.5)
        .got(sand.dampLooseDensity().value());
  }

  @ParameterizedTest
  @CsvSource({"15,12,25", "200,160,25", "320,280,14.29", "540,430,25.58", "440,330,33.3"})
  void bulkingOnTheFloodedHeight(double damp, double flooded, double percent) {
    OutsideCheck.of(
            "materials.mix",
            "bulking %, damp " + damp + ", flooded " + flooded,
            Source.found("", "Bulking of sand, cylinder readings", "", ""))
        .expect(percent)
        .within(0.05)
        .got(SandBulking.tin(damp, flooded, Steps.none()) * 100);
  }

  @Test
  void aWeighedBucketTellsWhatItHolds() {
    // 10 L of damp sand weigh 12.6 kg at 5 %: 12 kg of dry sand, whatever the bulking is taken as.
    MixComponent sand = SAND.damp(0.05, 0.30).weighed(0.010, 12.6);
    assertThat(sand.dryMassPerLooseVolume().value()).isCloseTo(1200, within(1e-9));
    assertThat(sand.dampLooseDensity().value()).isCloseTo(1260, within(1e-9));
    assertThat(sand.compactedDryDensity()).isGreaterThan(sand.looseDryDensity().value());
    assertThatThrownBy(() -> SAND.weighed(0.010, 40)).hasMessageContaining("loose dry density");
  }

  @Test
  void pitSandBringsClay() {
    MixComponent sand = MixComponent.pitSand("pit sand", new Uncertain(0.08, 0.02));
    assertThat(sand.clayRatio().value()).isCloseTo(0.08, within(1e-12));
    Recipe recipe =
        Recipe.ofDryMasses(
            List.of(MixComponent.claySoil("soil", Uncertain.exact(0.5)), sand), List.of(1.0, 3.0));
    assertThat(recipe.clayRatio().value()).isCloseTo((0.5 + 3 * 0.08) / 4, within(1e-12));
    assertThatThrownBy(() -> MixComponent.pitSand("pit sand", Uncertain.exact(0.4)))
        .hasMessageContaining("clay ratio");
  }

  @Test
  void absoluteVolumesAndStockMasses() {
    MixComponent fine = SAND.withDensities(2600, Uncertain.exact(1500), 1700).damp(0.041, 0);
    MixComponent coarse = MixComponent.gravel("coarse", 0.005, 0.02).damp(0.015, 0);
    Recipe sand = Recipe.ofDryMasses(List.of(fine), List.of(889 * POUND));
    OutsideCheck.of("materials.mix", "889 lb of fine aggregate, SG 2.60: ft3", ACI)
        .expect(5.48)
        .within(0.005)
        .got(sand.solidVolume() / CUBIC_FOOT);
    OutsideCheck.of("materials.mix", "stock mass of 889 lb at 3 % free + 1.1 % absorbed: lb", ACI)
        .expect(925)
        .within(1)
        .got(sand.dampMass() / POUND);
    OutsideCheck.of("materials.mix", "stock mass of 1701 lb at 1 % free + 0.5 % absorbed: lb", ACI)
        .expect(1727)
        .within(1)
        .got(Recipe.ofDryMasses(List.of(coarse), List.of(1701 * POUND)).dampMass() / POUND);
  }

  @Test
  void particleDensityOfABlendIsTheHarmonicMean() {
    MixComponent light = SAND.withDensities(2000, Uncertain.exact(1200), 1500);
    MixComponent heavy =
        MixComponent.gravel("heavy", 0.005, 0.02).withDensities(3000, Uncertain.exact(1600), 2000);
    Recipe recipe = Recipe.ofDryMasses(List.of(light, heavy), List.of(1.0, 1.0));
    // The plain mean, 2500, is the usual error.
    assertThat(recipe.dryMass() / recipe.solidVolume()).isCloseTo(2400, within(1e-9));
  }

  @Test
  void twoMaterialsBlendedAtEverySieve() {
    MixComponent a = graded("A", 100, 100, 100, 100, 12);
    MixComponent b = graded("B", 100, 98, 77, 9, 0);
    double[] sizes = {0.025, 0.0125, 0.005, 0.0004, 0.000075};
    double[][] rows = {{0.5, 100, 99, 88.5, 54.5, 6}, {0.45, 100, 98.9, 87.35, 49.95, 5.4}};
    for (double[] row : rows) {
      Recipe mix = Recipe.ofDryMasses(List.of(a, b), List.of(row[0], 1 - row[0]));
      for (int i = 0; i < sizes.length; i++) {
        OutsideCheck.of(
                "materials.mix", "blend " + row[0] + ", per cent passing sieve " + i, BLENDING)
            .expect(row[i + 1])
            .within(1e-6)
            .got(mix.finer(sizes[i]) * 100);
      }
    }
  }

  @Test
  void badComponentsAreNamed() {
    assertThatThrownBy(() -> SAND.withDensities(2650, Uncertain.exact(200), 1700))
        .hasMessageContaining("loose dry density: given 200 kg/m3")
        .hasMessageContaining("10 L bucket");
    assertThatThrownBy(() -> SAND.damp(3, 0)).hasMessageContaining("moisture: given 3");
    // A table in print has loose 2490 over bank 1660: pounds and kilograms mixed.
    assertThatThrownBy(() -> SAND.withDensities(2650, Uncertain.exact(1800), 1660))
        .hasMessageContaining("must be above the loose");
  }

  @Test
  void defaultLooseDensitiesAreThePublishedOnes() {
    Source source = MixComponent.LOOSE_DENSITIES;
    OutsideCheck.of("materials.mix", "loose dry density of earth, kg/m3", source)
        .expect(1220)
        .within(0)
        .got(MixComponent.claySoil("s", Uncertain.exact(0.3)).looseDryDensity().value());
    OutsideCheck.of("materials.mix", "loose dry density of sand, kg/m3", source)
        .expect(1555)
        .within(0)
        .got(SAND.looseDryDensity().value());
    OutsideCheck.of("materials.mix", "loose dry density of gravel, kg/m3", source)
        .expect(1680)
        .within(0)
        .got(MixComponent.gravel("g", 0.002, 0.02).looseDryDensity().value());
  }

  @Test
  void plasterMixByVolumeAndByMass() {
    // 1 : 1.5 by volume is 1 : 2.4 by mass, which the bulk densities of the page imply.
    Source page = Source.found("", "Earth plaster, experimental materials", "", "Canada");
    MixComponent soil =
        MixComponent.claySoil("soil", Uncertain.exact(0.3))
            .withDensities(2700, Uncertain.exact(1000), 1700);
    MixComponent sand = SAND.withDensities(2650, Uncertain.exact(1600), 1800);
    Recipe recipe = new Recipe(List.of(new Recipe.Portion(soil, 1), new Recipe.Portion(sand, 1.5)));
    OutsideCheck.of("materials.mix", "sand per soil by mass of 1 : 1.5 by volume", page)
        .expect(2.4)
        .within(1e-9)
        .got(recipe.proportion(Basis.DRY_MASS).perFirst().parts().get(1).amount());
  }

  @Test
  void ratiosNameBothSides() {
    Recipe recipe =
        Recipe.ofDryMasses(
            List.of(MixComponent.claySoil("pit soil", Uncertain.exact(0.5)), SAND),
            List.of(1.0, 3.0));
    assertThat(recipe.proportion(Basis.DRY_MASS).perFirst().text())
        .isEqualTo("1 part pit soil to 3 parts washed sand, by dry mass");
  }

  @Test
  void strawByMassVolumeAndBales() {
    StepRecorder steps = new StepRecorder();
    Fibre straw = Fibre.straw(4000, 0.01, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.mix.straw", "s"), straw.mass());
    assertThat(straw.mass()).isCloseTo(40, within(1e-9));
    assertThat(straw.bales().likely()).isCloseTo(2, within(1e-9));
    assertThat(straw.looseVolume().likely()).isCloseTo(40.0 / 55, within(1e-12));
    assertThat(MixCautions.of(true)).hasSize(2);
  }

  @Test
  void powerCurve() {
    Source das = GradingTarget.SOURCE;
    GradingTarget half = new GradingTarget(0.019, 0.5);
    double[][] rows = {
      {12.5, 81.11},
      {9.5, 70.71},
      {4.75, 50},
      {2, 32.44},
      {0.6, 17.77},
      {0.075, 6.28},
      {0.002, 1.03}
    };
    for (double[] row : rows) {
      OutsideCheck.of("materials.mix", "power curve D 19 mm, n 0.5, d " + row[0] + " mm, %", das)
          .expect(row[1])
          .within(0.01)
          .got(half.finer(row[0] / 1000) * 100);
    }
    OutsideCheck.of("materials.mix", "power curve D 19 mm, n 0.45, d 4.75 mm, %", das)
        .expect(53.59)
        .within(0.01)
        .got(new GradingTarget(0.019, 0.45).finer(0.00475) * 100);
    // Closed forms for n = 0.5 whatever D: Cu = 36, Cc = 2.25.
    double d10 = 0.019 * 0.1 * 0.1;
    assertThat(half.finer(d10)).isCloseTo(0.1, within(1e-12));
    assertThat(half.finer(36 * d10)).isCloseTo(0.6, within(1e-12));
    StepRecorder steps = new StepRecorder();
    double p = half.finer(0.002, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.mix.power_curve", "p"), p);
  }

  @Test
  void gradingOfTheMixHoldsItsShares() {
    MixComponent soil = MixComponent.claySoil("soil", Uncertain.exact(0.5));
    MixComponent gravel = MixComponent.gravel("gravel", 0.004, 0.016);
    Recipe mix = Recipe.ofDryMasses(List.of(soil, SAND, gravel), List.of(1.0, 1.7, 0.9));
    GradingCurve curve = mix.grading();
    assertThat(curve.finer(0.002 / 1000)).isCloseTo(mix.clayRatio().value(), within(1e-12));
    assertThat(curve.gravelRatio()).isCloseTo(0.9 / 3.6, within(1e-12));
    for (double d : new double[] {1e-5, 2e-4, 1e-3, 0.008}) {
      assertThat(curve.finer(d)).isCloseTo(mix.finer(d), within(1e-9));
    }
  }

  @Test
  void envelopes() {
    GradingCurve adobe =
        GradingCurve.ofTexture(
            io.github.seamstead.materials.soil.Texture.ofClayAndSand(0.14 / 0.98, 0.62 / 0.98),
            0.02,
            0.005);
    Source minke = Source.found("Minke", "Building with Earth", "", "p. 63, crack-free adobe");
    OutsideCheck.of("materials.mix", "crack-free adobe fits the adobe envelope", minke)
        .expect(0)
        .within(0)
        .got(CompositionRange.ADOBE.outside(adobe).size());
    GradingCurve brickLoam =
        GradingCurve.ofTexture(
            io.github.seamstead.materials.soil.Texture.ofClayAndSand(0.24 / 0.97, 0.23 / 0.97),
            0.03,
            0.005);
    assertThat(CompositionRange.ADOBE.outside(brickLoam)).hasSize(3);
    // "30 + 33 + 33" in print adds to 96 and can hold no composition.
    assertThatThrownBy(
            () ->
                new CompositionRange(
                    "ideal block",
                    new CompositionRange.Limits(0.30, 0.30),
                    new CompositionRange.Limits(0.33, 0.33),
                    new CompositionRange.Limits(0.33, 0.33),
                    new CompositionRange.Limits(0, 0),
                    minke))
        .hasMessageContaining("0.96");
  }

  private static MixComponent graded(String name, double... percent) {
    double[] sizes = {0.025, 0.0125, 0.005, 0.0004, 0.000075};
    List<GradingCurve.Point> points = new ArrayList<>();
    for (int i = sizes.length - 1; i >= 0; i--) {
      points.add(new GradingCurve.Point(sizes[i], percent[i] / 100));
    }
    return MixComponent.claySoil(name, new GradingCurve(points), 0);
  }
}
