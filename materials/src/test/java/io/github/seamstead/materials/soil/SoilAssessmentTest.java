package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class SoilAssessmentTest {

  private static final LaboratoryTexture SHEET =
      LaboratoryTexture.of(Texture.ofPercent(32, 43, 25), SizeLimits.USDA);
  private static final JarTest JAR =
      new JarTest(
          0.020, 0.045, 0.080, 0.16, 18, true, List.of(JarTiming.measured(180, 112000, 345600)));

  @Test
  void nothingKnownIsTheWholeTriangle() {
    TexturePosterior blind = SoilAssessment.assess(List.of()).texture();
    assertThat(blind.mean().clayRatio()).isCloseTo(1 / 3.0, within(1e-12));
    // A uniform triangle has variance 1/18 on each share.
    assertThat(blind.sand().standardUncertainty()).isCloseTo(Math.sqrt(1 / 18.0), within(1e-4));
    assertThat(blind.clayRange().likely()).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(blind.clayRange().low()).isCloseTo(1 - Math.sqrt(0.95), within(1e-4));
    assertThat(blind.classProbabilities().values().stream().mapToDouble(p -> p).sum())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void aSheetIsFoundAgain() {
    SoilFinding finding = SoilAssessment.assess(List.of(SHEET));
    assertThat(finding.texture().mode().clayRatio()).isCloseTo(0.32, within(0.01));
    assertThat(finding.texture().mode().usdaClass()).isEqualTo(TextureClass.CLAY_LOAM);
    assertThat(finding.conflicts()).isEmpty();
    CredibleRegion region = finding.texture().region(0.95);
    assertThat(region.probability()).isBetween(0.95, 0.97);
    assertThat(region.outlines()).hasSize(1);
    assertThat(region.areaRatio()).isLessThan(0.05);
    // The drawn line is smoothed by up to half a step along an outline of about 40 steps.
    assertThat(area(region)).isCloseTo(region.areaRatio(), within(0.002));
  }

  @Test
  void theOutlineFollowsTheCircleOfEqualDensity() {
    TexturePosterior p = SoilAssessment.assess(List.of(SHEET)).texture();
    // Two independent normals of 0.02 hold 0.98 of the probability; the rest, for a sheet that
    // misleads, is spread over the triangle. So the circle holds 0.95/0.98 of the normals.
    double radius = 0.02 * Math.sqrt(-2 * Math.log(1 - 0.95 / 0.98));
    // The stated smoothing: half of the step of 0.01.
    double smoothing = 0.005;
    for (Texture corner : p.region(0.95).outlines().get(0)) {
      double off = Math.hypot(corner.clayRatio() - 0.32, corner.sandRatio() - 0.25);
      assertThat(off).isCloseTo(radius, within(smoothing));
    }
  }

  @Test
  void theWholeTriangleIsOneOutline() {
    CredibleRegion all = SoilAssessment.assess(List.of()).texture().region(0.95);
    assertThat(all.outlines()).hasSize(1);
    assertThat(area(all)).isCloseTo(1, within(1e-9));
  }

  @Test
  void agreeingTestsNarrowAndContradictingOnesWidenAndWarn() {
    double one = deviation(List.of(SHEET));
    double two = deviation(List.of(SHEET, SHEET));
    assertThat(two).isLessThan(one);
    LaboratoryTexture other = LaboratoryTexture.of(Texture.ofPercent(8, 22, 70), SizeLimits.USDA);
    SoilFinding torn = SoilAssessment.assess(List.of(SHEET, other));
    assertThat(torn.texture().clay().standardUncertainty()).isGreaterThan(2 * one);
    assertThat(torn.conflicts()).hasSize(2);
    assertThat(torn.conflicts().get(0).message()).contains("laboratory sheet", "Repeat");
  }

  @Test
  void aNamedChartDoubtsLessThanAllCharts() {
    double all = deviation(List.of(RibbonTest.ofLength(0.05)));
    double one = deviation(List.of(new RibbonTest(0.05, List.of(RibbonChart.AUSTRALIAN))));
    assertThat(one).isLessThan(all);
  }

  @Test
  void aJarReadTooEarlyIsRecognised() {
    JarTest early =
        new JarTest(
            0.020, 0.045, 0.080, 0.16, 18, true, List.of(JarTiming.measured(60, 1800, 86400)));
    assertThat(early.remarks())
        .anyMatch(text -> text.contains("Silt mark after 30 min is too early"));
    // The same marks then hold more silt above the mark, so there is less clay than it looks.
    assertThat(clay(early)).isLessThan(clay(JAR) - 0.02);
    assertThat(JAR.remarks()).noneMatch(text -> text.contains("Silt mark"));
  }

  @Test
  void gridErrorAgainstATenTimesFinerGrid() {
    List<SoilEvidence> tests = List.of(SHEET, JAR, RibbonTest.ofLength(0.045));
    TexturePosterior coarse = SoilAssessment.assess(tests).texture();
    TexturePosterior fine =
        SoilAssessment.assess(tests, new TextureGrid(1000), Steps.none()).texture();
    assertThat(coarse.clay().value()).isCloseTo(fine.clay().value(), within(5e-4));
    assertThat(coarse.sand().value()).isCloseTo(fine.sand().value(), within(5e-4));
    fine.classProbabilities()
        .forEach(
            (c, p) ->
                assertThat(coarse.classProbabilities().getOrDefault(c, 0.0))
                    .isCloseTo(p, within(0.01)));
  }

  @Test
  void derivationFollows() {
    StepRecorder steps = new StepRecorder();
    SoilFinding finding = SoilAssessment.assess(List.of(SHEET, JAR), steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.soil.assessment", "what the soil is"),
        finding.texture().clay().value());
  }

  @Test
  void badReadingsAreNamed() {
    assertThatThrownBy(() -> RibbonTest.ofLength(2))
        .hasMessageContaining("ribbon length: given 2 m")
        .hasMessageContaining("0.2 m");
    assertThatThrownBy(() -> Texture.ofPercent(30, 33, 33))
        .hasMessageContaining("add to 96 %")
        .hasMessageContaining("100 %");
    assertThatThrownBy(
            () ->
                new JarTest(
                    0.05, 0.03, 0.08, 0.16, 18, true, List.of(JarTiming.measured(60, 3600, 86400))))
        .hasMessageContaining("must not fall");
  }

  private static double deviation(List<SoilEvidence> tests) {
    return SoilAssessment.assess(tests).texture().clay().standardUncertainty();
  }

  private static double clay(SoilEvidence test) {
    return SoilAssessment.assess(List.of(test)).texture().clay().value();
  }

  private static double area(CredibleRegion region) {
    double twice = 0;
    for (List<Texture> loop : region.outlines()) {
      for (int i = 0; i < loop.size(); i++) {
        Texture a = loop.get(i);
        Texture b = loop.get((i + 1) % loop.size());
        twice += a.clayRatio() * b.siltRatio() - b.clayRatio() * a.siltRatio();
      }
    }
    return Math.abs(twice);
  }
}
