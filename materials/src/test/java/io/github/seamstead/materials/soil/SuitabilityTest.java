package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.soil.Suitability.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuitabilityTest {

  private static Suitability judge(SoilUse use, SoilEvidence... evidence) {
    return Suitability.of(SoilAssessment.assess(List.of(evidence)), use);
  }

  private static LaboratoryTexture sheet(double clay, double silt, double sand) {
    return LaboratoryTexture.of(Texture.ofPercent(clay, silt, sand), SizeLimits.USDA);
  }

  @Test
  void withoutATestThereIsNoVerdict() {
    for (SoilUse use : SoilUse.values()) {
      Suitability judged = judge(use);
      assertThat(judged.verdict()).isEqualTo(Verdict.NO_MIX_YET);
      assertThat(judged.next()).isPresent();
    }
    assertThat(judge(SoilUse.FLOOR, new WarningSign(WarningSign.Kind.SWELLING)).verdict())
        .isEqualTo(Verdict.NO_MIX_YET);
  }

  @Test
  void whatALaboratoryFoundOfHumusAndSaltsForbidsTheSoilBeyondItsLimitAlone() {
    for (HarmfulContent.Kind kind : HarmfulContent.Kind.values()) {
      // Two per cent is the limit that reviews of earth building collect for both.
      HarmfulContent much = new HarmfulContent(kind, 0.021);
      HarmfulContent little = new HarmfulContent(kind, 0.02);
      for (SoilUse use : SoilUse.values()) {
        Suitability judged = judge(use, sheet(17, 20, 63), much);
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_ADVISED);
        assertThat(judged.reasons().get(0)).contains("2.1 % of " + kind.label());
        assertThat(judge(use, sheet(17, 20, 63), little).verdict())
            .isEqualTo(judge(use, sheet(17, 20, 63)).verdict());
      }
      // It is no test of the texture.
      assertThat(judge(SoilUse.FLOOR, little).verdict()).isEqualTo(Verdict.NO_MIX_YET);
      assertThat(SoilAssessment.texture(List.of(much)).clay().value())
          .isCloseTo(1 / 3.0, within(1e-9));
    }
    assertThatThrownBy(() -> new HarmfulContent(HarmfulContent.Kind.ORGANIC_MATTER, 1.2))
        .hasMessageContaining("organic matter")
        .hasMessageContaining("from 0 to 1");
  }

  @Test
  void siltAloneCanSpeakAgainstASoil() {
    for (SoilUse use : List.of(SoilUse.FLOOR, SoilUse.COB, SoilUse.PRESSED_BLOCK)) {
      assertThat(judge(use, sheet(17, 80, 3)).verdict()).isEqualTo(Verdict.OTHER_SOIL);
    }
    // Sand thins a rich silty clay far enough.
    assertThat(judge(SoilUse.FLOOR, sheet(55, 40, 5)).verdict()).isEqualTo(Verdict.WITH_SAND);
  }

  @Test
  void shrinkageIsMeasuredAgainstTheLeanestMix() {
    LinearShrinkage much = LinearShrinkage.ofGap(0.14, 0.14 * 0.14);
    Suitability judged = judge(SoilUse.FLOOR, sheet(17, 20, 63), much);
    assertThat(judged.verdict()).isNotIn(Verdict.AS_IT_IS, Verdict.WITH_SAND);
    // 14 % at 60 % clay: at the leanest, 14 % clay, the mix shrinks by 14 x 14/60 = 3.3 %.
    assertThat(judge(SoilUse.FLOOR, sheet(60, 20, 20), much).verdict())
        .isEqualTo(Verdict.WITH_SAND);
  }

  @Test
  void swellingClayWaitsForItsShrinkage() {
    WarningSign swelling = new WarningSign(WarningSign.Kind.SWELLING);
    Suitability judged = judge(SoilUse.FLOOR, sheet(60, 20, 20), swelling);
    assertThat(judged.verdict()).isEqualTo(Verdict.NO_MIX_YET);
    assertThat(judged.next().orElseThrow()).contains("shrinkage bar");
  }

  @Test
  void contradictionsNameTheTestToRepeat() {
    Suitability judged = judge(SoilUse.FLOOR, sheet(60, 20, 20), sheet(5, 20, 75));
    assertThat(judged.verdict()).isEqualTo(Verdict.NO_MIX_YET);
    assertThat(judged.next().orElseThrow()).contains("repeat", "laboratory sheet");
  }

  @Test
  void organicSoilIsNotAdvisedWhateverItsGrains() {
    assertThat(
            judge(SoilUse.FLOOR, sheet(60, 20, 20), new WarningSign(WarningSign.Kind.ORGANIC))
                .verdict())
        .isEqualTo(Verdict.NOT_ADVISED);
  }

  @ParameterizedTest
  @CsvSource({
    "87.8, 6.6, 5.6",
    "88.3, 5.1, 6.6",
    "88.8, 3.6, 7.6",
    "89.3, 2.1, 8.6",
    "89.6, 1.2, 9.2",
    "89.8, 0.6, 9.6"
  })
  void theSandLineItselfIsLoamySand(double sand, double silt, double clay) {
    assertThat(new Texture(clay / 100, silt / 100, sand / 100).usdaClass())
        .isEqualTo(TextureClass.LOAMY_SAND);
  }

  @Test
  void jarsOfOneLayerAreRead() {
    TexturePosterior clay = jar(0, 0, true);
    assertThat(clay.clay().value()).isGreaterThan(0.7);
    TexturePosterior sand = jar(0.1, 0.1, true);
    assertThat(sand.sand().value()).isGreaterThan(0.8);
  }

  @Test
  void clayThatSankInFlocsIsNotRuledOut() {
    // 60 % clay, 25 % silt, 15 % sand, seven tenths of the clay in flocs before the silt mark.
    double total = 0.60 / 450 + 0.25 / 1080 + 0.15 / 1520;
    double first = 0.15 / 1520 / total;
    double second = 1 - 0.3 * 0.60 / 450 / total;
    TexturePosterior read =
        SoilAssessment.assess(
                List.of(
                    new JarTest(
                        0.08 * first,
                        0.08 * second,
                        0.08,
                        0.2,
                        20,
                        false,
                        List.of(JarTiming.measured(140, 90000, 4e5)))))
            .texture();
    assertThat(read.clayRange().high()).isGreaterThan(0.6);
    assertThat(read.probabilityOfClay(0.2, 1)).isGreaterThan(0.5);
  }

  @Test
  void aCrowdedJarSettlesSlowly() {
    // 395 g/L: (1 - 395/2650)^4.65 = 0.47.
    JarTest jar =
        new JarTest(0.02, 0.07, 0.11, 0.19, 20, true, List.of(JarTiming.measured(94, 9e4, 4e5)));
    assertThat(jar.settlingFactor())
        .isCloseTo(Math.pow(1 - jar.soilPerVolume() / 2650, 4.65), within(1e-12));
    assertThat(jar.settlingFactor()).isBetween(0.3, 0.7);
    assertThat(jar.remarks()).anyMatch(text -> text.contains("hinder one another"));
  }

  private static TexturePosterior jar(double sandTop, double siltTop, boolean dispersed) {
    return SoilAssessment.assess(
            List.of(
                new JarTest(
                    sandTop,
                    siltTop,
                    0.1,
                    0.3,
                    20,
                    dispersed,
                    List.of(JarTiming.measured(150, 120000, 4e5)))))
        .texture();
  }
}
