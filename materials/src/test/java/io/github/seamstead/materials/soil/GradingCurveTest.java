package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradingCurveTest {

  @Test
  void textureGoesInAndComesOut() {
    Texture texture = Texture.ofPercent(22, 31, 47);
    GradingCurve curve = GradingCurve.ofTexture(texture, 0.2, 0.016);
    assertThat(curve.gravelRatio()).isCloseTo(0.2, within(1e-12));
    assertThat(curve.texture().clayRatio()).isCloseTo(0.22, within(1e-12));
    assertThat(curve.texture().sandRatio()).isCloseTo(0.47, within(1e-12));
  }

  @Test
  void readingBothWaysAgrees() {
    GradingCurve curve = GradingCurve.ofTexture(Texture.ofPercent(22, 31, 47), 0.2, 0.016);
    for (double share = 0.01; share < 1; share += 0.03) {
      assertThat(curve.finer(curve.diameterAt(share))).isCloseTo(share, within(1e-9));
    }
    assertThat(curve.finer(1)).isEqualTo(1);
    assertThat(curve.finer(1e-9)).isZero();
    assertThat(curve.uniformity()).isGreaterThan(1);
  }

  @Test
  void finerSharesAreLinearInTheTexture() {
    double[] parts = GrainSizes.partsFiner(0.063e-3);
    Texture texture = Texture.ofPercent(30, 40, 30);
    GradingCurve curve = GradingCurve.ofTexture(texture, 0, 0.02);
    assertThat(GrainSizes.finer(parts, 0.3, 0.4)).isCloseTo(curve.finer(0.063e-3), within(1e-12));
  }

  @Test
  void fallingCurvesAreNamed() {
    assertThatThrownBy(
            () ->
                new GradingCurve(
                    List.of(
                        new GradingCurve.Point(0.001, 0.5), new GradingCurve.Point(0.002, 0.4))))
        .hasMessageContaining("point 2 (2 mm, 0.4)");
    assertThatThrownBy(
            () ->
                new GradingCurve(
                    List.of(
                        new GradingCurve.Point(0.001, 0.5), new GradingCurve.Point(0.002, 0.9))))
        .hasMessageContaining("must be 1");
  }

  @ParameterizedTest
  @CsvSource({
    "0.14,''",
    "0.15,gravelly",
    "0.34,gravelly",
    "0.35,very gravelly",
    "0.59,very gravelly",
    "0.60,extremely gravelly",
    "0.89,extremely gravelly"
  })
  void rockFragmentWords(double share, String word) {
    OutsideCheck.of(
            "materials.soil", share + " of stones by volume: '" + word + "'", RockFragments.SOURCE)
        .expect(1)
        .within(0)
        .got(RockFragments.modifier(share).equals(word) ? 1 : 0);
  }

  @Test
  void stonesByVolumeFollow() {
    StepRecorder steps = new StepRecorder();
    double v = RockFragments.volumeRatio(0.4, 2650, 1300, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.soil.stones_by_volume", "stones"), v);
    assertThat(v).isLessThan(0.4);
  }

  @ParameterizedTest
  @CsvSource({"0,5,0,5", "10,20,15,25", "20,30,25,40", "30,35,40,50", "35,40,50,75"})
  void australianRibbonBands(double clayFrom, double clayTo, double mmFrom, double mmTo) {
    Source source = RibbonChart.AUSTRALIAN.source();
    OutsideCheck.of(
            "materials.soil", "ribbon, mm, at " + clayFrom + " to " + clayTo + " % clay", source)
        .expect((mmFrom + mmTo) / 2)
        .within((mmTo - mmFrom) / 2)
        .got(RibbonChart.AUSTRALIAN.expectedLength((clayFrom + clayTo) / 200) * 1000);
  }

  @Test
  void ribbonLengthsPrintedInCentimetresAreRefused() {
    // One reprint has "25 to 40 cm" where mm is meant.
    assertThatThrownBy(() -> RibbonTest.ofLength(0.25)).hasMessageContaining("some print cm");
  }

  @Test
  void sizeSystemsMoveTheSandShare() {
    double usda = sand(SizeLimits.USDA);
    // The same figures by coarser silt limits hide sand of 0.05 to 0.063 mm in the silt.
    assertThat(sand(SizeLimits.ISO_14688)).isGreaterThan(usda);
    assertThat(sand(SizeLimits.INTERNATIONAL)).isLessThan(usda);
    assertThat(SizeLimits.ALL).hasSize(6);
  }

  private static double sand(SizeLimits limits) {
    return SoilAssessment.assess(
            List.of(LaboratoryTexture.of(Texture.ofPercent(20, 40, 40), limits)))
        .texture()
        .sand()
        .value();
  }
}
