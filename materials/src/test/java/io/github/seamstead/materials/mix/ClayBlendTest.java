package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;

class ClayBlendTest {

  private static final Source PRACTICE =
      Source.commonPractice("1 part soil of 50 to 70 % clay to 2½ parts clay-free sand");
  private static final Source COBBERS =
      Source.found("", "Cob mailing list, clay soil of 35 % clay", "2003", "");
  private static final MixComponent SAND = MixComponent.washedSand("washed sand");

  @Test
  void commonPracticeFloorMix() {
    for (double[] row : new double[][] {{0.5, 0.14}, {0.7, 0.20}}) {
      MixComponent soil = MixComponent.claySoil("pit soil", Uncertain.exact(row[0]));
      Recipe recipe =
          Recipe.ofDryMasses(java.util.List.of(soil, SAND), java.util.List.of(1.0, 2.5));
      OutsideCheck.of("materials.mix", "clay of 1 soil to 2½ sand by dry mass", PRACTICE)
          .expect(row[1])
          .within(0.005)
          .got(recipe.clayRatio().value());
    }
  }

  @Test
  void floorBandGivesOneToTwoAndAHalfForTheMiddleSoil() {
    MixComponent soil = equalDensity(MixComponent.claySoil("pit soil", new Uncertain(0.6, 0.05)));
    ClayBlend blend = ClayBlend.of(soil, equalDensity(SAND), ClayBand.FLOOR, BucketRounding.HALF);
    assertThat(blend.rounded().proportion(Basis.LOOSE_VOLUME).text())
        .isEqualTo(
            "1 part pit soil to 2½ parts washed sand, by bucket, loose and as damp as it lies");
    assertThat(blend.unmet()).isEmpty();
    assertThat(blend.leastSandPerSoilDryMass()).isCloseTo(2, within(1e-12));
  }

  @Test
  void sandToBringThirtyFiveToTwentyPerCent() {
    MixComponent soil = MixComponent.claySoil("pit soil", Uncertain.exact(0.35));
    soil = soil.withDensities(2700, Uncertain.exact(1200), 1700);
    MixComponent sand = SAND.withDensities(2650, Uncertain.exact(1500), 1700);
    ClayBlend blend = ClayBlend.of(soil, sand, ClayBand.of(0.19, 0.21), BucketRounding.NONE);
    OutsideCheck.of("materials.mix", "sand per soil by dry mass, 35 to 20 % clay", COBBERS)
        .expect(0.75)
        .within(1e-9)
        .got(blend.sandPerSoilDryMass());
    OutsideCheck.of("materials.mix", "the same by loose volume, 1200 and 1500 kg/m3", COBBERS)
        .expect(0.60)
        .within(1e-9)
        .got(blend.exact().portions().get(1).looseVolume());
  }

  @Test
  void bandsOutOfReachAreNamedWithTheNearest() {
    MixComponent lean = MixComponent.claySoil("sandy subsoil", Uncertain.exact(0.10));
    ClayBlend blend = ClayBlend.of(lean, SAND, ClayBand.FLOOR, BucketRounding.HALF);
    assertThat(blend.unmet())
        .hasValueSatisfying(
            text ->
                assertThat(text)
                    .contains("14 % to 20 % cannot be met", "sandy subsoil alone has 10 %"));
    assertThat(blend.exact().clayRatio().value()).isCloseTo(0.10, within(1e-12));
  }

  @Test
  void derivationFollows() {
    MixComponent soil = MixComponent.claySoil("pit soil", new Uncertain(0.55, 0.04));
    StepRecorder steps = new StepRecorder();
    ClayBlend blend =
        ClayBlend.of(
            soil,
            SAND.damp(0.04, SandBulking.published().at(0.04).likely()),
            ClayBand.COB,
            BucketRounding.HALF,
            steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.mix.clay_blend", "sand for a clay band"),
        blend.rounded().clayRatio().value());
  }

  @Test
  void yieldIsLessThanTheParts() {
    MixComponent soil = MixComponent.claySoil("pit soil", Uncertain.exact(0.6));
    Recipe recipe = ClayBlend.of(soil, SAND, ClayBand.FLOOR, BucketRounding.HALF).rounded();
    assertThat(recipe.yieldRatio().high()).isLessThan(1);
    assertThat(recipe.compactedVolume().low()).isGreaterThan(recipe.solidVolume());
  }

  private static MixComponent equalDensity(MixComponent component) {
    return component.withDensities(2650, Uncertain.exact(1400), 1700);
  }
}
