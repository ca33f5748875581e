package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HydrometerTestTest {

  private static final Source EXAMPLE =
      Source.found("", "Texture vignette of an environmental analysis package", "", "clay loam");
  private static final double[][] ROWS = {
    {0.66, 39, 0.05155, 0.754},
    {2, 33, 0.03102, 0.634},
    {5, 29, 0.02019, 0.554},
    {15, 23, 0.01214, 0.434},
    {30, 22, 0.00864, 0.414},
    {60, 20, 0.00618, 0.374},
    {180, 18, 0.00361, 0.334}
  };

  @Test
  void workedExample() {
    HydrometerTest test = example();
    for (int i = 0; i < ROWS.length; i++) {
      HydrometerTest.Reading reading = test.readings().get(i);
      // The source takes the depth of the corrected reading, which makes D up to 1.1 % larger.
      OutsideCheck.of("materials.soil", "hydrometer diameter, mm, " + ROWS[i][0] + " min", EXAMPLE)
          .expect(ROWS[i][2])
          .withinRatio(0.015)
          .got(test.diameter(reading) * 1000);
      OutsideCheck.of("materials.soil", "share finer, " + ROWS[i][0] + " min", EXAMPLE)
          .expect(ROWS[i][3])
          .within(0.0005)
          .got(test.finerRatio(reading));
    }
  }

  @Test
  void exampleIsAClayLoam() {
    SoilFinding finding = SoilAssessment.assess(List.of(example()));
    // A fitted curve of the source reads 31.8 % clay and 25.4 % sand; drawing the last two points
    // on gives less clay, which the stated doubt covers.
    assertThat(finding.texture().clay().value()).isCloseTo(0.318, within(0.04));
    assertThat(finding.texture().sand().value()).isCloseTo(0.254, within(0.02));
    assertThat(finding.texture().classProbabilities().keySet().iterator().next())
        .isEqualTo(TextureClass.CLAY_LOAM);
    assertThat(finding.remarks()).anyMatch(t -> t.contains("6 to 8 hours"));
  }

  @ParameterizedTest
  @CsvSource({
    "16,2.60,0.01457",
    "16,2.65,0.01435",
    "20,2.65,0.01365",
    "20,2.70,0.01344",
    "23,2.70,0.01297",
    "25,2.75,0.01249",
    "30,2.60,0.01236"
  })
  void factorOfTheDiameterFormula(double celsius, double gravity, double factor) {
    // D = K sqrt(L/t) with L in cm and t in min, D in mm; its water is up to 0.7 % more viscous.
    double d = Stokes.smallestSettled(0.12, 3600, celsius, gravity * 1000) * 1000;
    OutsideCheck.of(
            "materials.soil",
            "K at " + celsius + " degC, Gs " + gravity,
            HydrometerTest.SOURCE.at("table 3"))
        .expect(factor)
        .withinRatio(0.005)
        .got(d / Math.sqrt(12.0 / 60));
  }

  @ParameterizedTest
  @CsvSource({"0,16.3", "10,14.7", "25,12.2", "30,11.4", "60,6.5"})
  void effectiveDepth(double reading, double depthCm) {
    Source source = Source.fromMemory("ASTM", "D422-63", "2007", "table 2");
    StepRecorder steps = new StepRecorder();
    example().diameter(new HydrometerTest.Reading(3600, reading), steps);
    OutsideCheck.of("materials.soil", "effective depth of 152H, cm, R " + reading, source)
        .expect(depthCm)
        .within(0.051)
        .got(steps.derivation("x", "x").steps().get(0).value() * 100);
  }

  @Test
  void sixtyMinutesAreSixty() {
    // A page in print uses 120 min for 60 and gets 0.0041 mm.
    HydrometerTest test =
        new HydrometerTest(
            List.of(new HydrometerTest.Reading(60, 40), new HydrometerTest.Reading(3600, 25)),
            50,
            23,
            2,
            2700);
    assertThat(test.diameter(test.readings().get(1)) * 1000).isCloseTo(0.00585, within(0.00004));
  }

  @Test
  void derivationsFollow() {
    HydrometerTest test = example();
    StepRecorder d = new StepRecorder();
    double diameter = test.diameter(test.readings().get(3), d);
    DerivationChecks.assertFollowsTo(
        d.derivation("materials.soil.hydrometer_diameter", "diameter"), diameter);
    StepRecorder p = new StepRecorder();
    double finer = test.finerRatio(test.readings().get(3), p);
    DerivationChecks.assertFollowsTo(
        p.derivation("materials.soil.hydrometer_finer", "share finer"), finer);
  }

  private static HydrometerTest example() {
    return new HydrometerTest(
        java.util.Arrays.stream(ROWS)
            .map(row -> new HydrometerTest.Reading(row[0] * 60, row[1]))
            .toList(),
        50,
        23,
        2,
        2650);
  }
}
