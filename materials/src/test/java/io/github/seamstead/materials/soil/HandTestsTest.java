package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HandTestsTest {

  @Test
  void eachRicherOutcomeMeansMoreClay() {
    assertRising(Stream.of(SqueezeTest.Outcome.values()).map(SqueezeTest::new));
    assertRising(Stream.of(DropTest.Outcome.values()).map(DropTest::new));
    assertRising(Stream.of(ShineTest.Outcome.values()).map(ShineTest::new));
    assertRising(Stream.of(BendTest.Outcome.values()).map(BendTest::new));
    assertRising(Stream.of(DryStrengthTest.Outcome.values()).map(DryStrengthTest::new));
    assertRising(
        Stream.of(
            RollTest.cannotBeRolled(),
            RollTest.holding(0.004),
            RollTest.holding(0.003),
            RollTest.holding(0.002),
            RollTest.holding(0.0012),
            RollTest.holding(0.001),
            RollTest.holding(0.0005)));
    assertRising(Stream.of(0.005, 0.02, 0.04, 0.075).map(RibbonTest::ofLength));
  }

  @Test
  void chancesOfAllOutcomesAddToOne() {
    for (double clay = 0.02; clay < 1; clay += 0.07) {
      assertThat(sum(Stream.of(BendTest.Outcome.values()).map(BendTest::new), clay))
          .isCloseTo(1, within(1e-12));
      assertThat(sum(Stream.of(WashTest.Outcome.values()).map(WashTest::new), clay))
          .isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void washTestTellsSandSiltAndClayApart() {
    Texture gritty = mean(new WashTest(WashTest.Outcome.GRITTY));
    Texture powdery = mean(new WashTest(WashTest.Outcome.POWDERY));
    Texture soapy = mean(new WashTest(WashTest.Outcome.SOAPY));
    assertThat(gritty.sandRatio()).isGreaterThan(0.5);
    assertThat(powdery.siltRatio()).isGreaterThan(0.5);
    assertThat(soapy.clayRatio()).isGreaterThan(0.4);
  }

  @Test
  void signsAndStonesLeaveTheTexture() {
    SoilFinding blind = SoilAssessment.assess(List.of());
    SoilFinding marked =
        SoilAssessment.assess(
            List.of(new WarningSign(WarningSign.Kind.SALTS), new StonesScreened(2, 20, 0.01)));
    assertThat(marked.texture().mean()).isEqualTo(blind.texture().mean());
    assertThat(marked.gravelRatio().orElseThrow().value()).isCloseTo(0.1, within(1e-12));
    assertThat(marked.remarks()).anyMatch(t -> t.contains("10 mm passed and is not counted"));
    assertThat(Suitability.of(marked, SoilUse.FLOOR).verdict())
        .isEqualTo(Suitability.Verdict.NOT_ADVISED);
  }

  @Test
  void suitabilityNamesTheDirection() {
    SoilFinding rich =
        SoilAssessment.assess(
            List.of(LaboratoryTexture.of(Texture.ofPercent(55, 25, 20), SizeLimits.USDA)));
    assertThat(Suitability.of(rich, SoilUse.FLOOR).verdict())
        .isEqualTo(Suitability.Verdict.WITH_SAND);
    SoilFinding lean =
        SoilAssessment.assess(
            List.of(LaboratoryTexture.of(Texture.ofPercent(5, 15, 80), SizeLimits.USDA)));
    assertThat(Suitability.of(lean, SoilUse.FLOOR).verdict())
        .isEqualTo(Suitability.Verdict.WITH_RICHER_SOIL);
    assertThat(Suitability.of(SoilAssessment.assess(List.of()), SoilUse.FLOOR).reasons())
        .anyMatch(reason -> reason.contains("earth floor wants 14 % to 20 %"));
  }

  @Test
  void nextTestsAreRankedAndDoneOnesLeftOut() {
    SoilFinding blind = SoilAssessment.assess(List.of());
    List<NextTest> ranked = NextTest.rank(blind);
    assertThat(ranked).hasSize(TestKind.values().length);
    assertThat(ranked.get(0).cutPerHour()).isGreaterThan(ranked.get(5).cutPerHour());
    double sheet = cut(ranked, TestKind.LABORATORY);
    assertThat(ranked).allSatisfy(t -> assertThat(t.clayVarianceCut()).isLessThanOrEqualTo(sheet));
    SoilFinding known =
        SoilAssessment.assess(
            List.of(LaboratoryTexture.of(Texture.ofPercent(55, 25, 20), SizeLimits.USDA)));
    List<NextTest> after = NextTest.rank(known);
    assertThat(after).noneMatch(t -> t.kind() == TestKind.LABORATORY);
    assertThat(cut(after, TestKind.RIBBON)).isLessThan(cut(ranked, TestKind.RIBBON));
  }

  @Test
  void activityComesFromMeasuredLimits() {
    SoilFinding finding =
        SoilAssessment.assess(
            List.of(
                LaboratoryTexture.of(Texture.ofPercent(30, 30, 40), SizeLimits.USDA),
                new ConsistencyLimits(0.62, 0.20)));
    Plasticity.Activity activity = finding.plasticity().activity().orElseThrow();
    assertThat(activity.label()).isEqualTo("active");
    assertThat(activity.inactive() + activity.normal() + activity.active())
        .isCloseTo(1, within(1e-9));
    assertThat(finding.plasticity().label()).isEqualTo("very high");
  }

  private static double cut(List<NextTest> ranked, TestKind kind) {
    return ranked.stream()
        .filter(t -> t.kind() == kind)
        .findFirst()
        .orElseThrow()
        .clayVarianceCut();
  }

  private static double sum(Stream<? extends SoilEvidence> outcomes, double clay) {
    return outcomes
        .mapToDouble(o -> o.likelihood().at(clay, 0.4 * (1 - clay), 0.6 * (1 - clay)))
        .sum();
  }

  private static Texture mean(SoilEvidence test) {
    return SoilAssessment.assess(List.of(test)).texture().mean();
  }

  private static void assertRising(Stream<? extends SoilEvidence> outcomes) {
    double before = -1;
    for (SoilEvidence test : outcomes.toList()) {
      double clay = mean(test).clayRatio();
      assertThat(clay).as(test.label()).isGreaterThan(before);
      before = clay;
    }
  }

  @Test
  void theTableOfTestsTellsWhatEachSaysAndWhatErrsTogether() {
    SoilFinding finding =
        SoilAssessment.assess(
            List.of(
                RibbonTest.ofLength(0.06),
                RollTest.holding(0.002),
                new WashTest(WashTest.Outcome.values()[0]),
                new WarningSign(WarningSign.Kind.SWELLING)));
    List<TestReading> readings = TestReading.of(finding);
    assertThat(readings).extracting(TestReading::plastic).containsExactly(true, true, false, true);
    TestReading together = readings.get(3);
    assertThat(together.label()).contains("together");
    assertThat(together.clay().high() - together.clay().low())
        .isLessThan(readings.get(0).clay().high() - readings.get(0).clay().low());
    assertThat(TestReading.of(SoilAssessment.assess(List.of()))).isEmpty();
  }
}
