package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the tests of a soil say together, against closed forms and another library's integrals. */
class PosteriorOutsideTest {

  private static final Source DIRICHLET =
      Source.derived("closed form: Dirichlet distribution with parameters 1, 1, 1");
  private static final Source ROMBERG =
      Source.derived("commons-math3, Romberg integration of the likelihood over clay and silt");

  /** The grid's own error, measured on the closed form: below one in ten thousand. */
  private static final double GRID = 1e-4;

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("materials.soil.assessment", what, source)
        .expect(expected)
        .within(within)
        .got(got);
  }

  @Test
  void aSoilOfWhichNothingIsKnown() {
    TexturePosterior soil = SoilAssessment.assess(List.of(), Steps.none()).texture();
    double third = 1.0 / 3;
    double deviation = Math.sqrt(1.0 / 18);
    check("no test: mean clay", DIRICHLET, third, GRID, soil.clay().value());
    check("no test: mean silt", DIRICHLET, third, GRID, soil.silt().value());
    check("no test: mean sand", DIRICHLET, third, GRID, soil.sand().value());
    check(
        "no test: deviation of clay",
        DIRICHLET,
        deviation,
        GRID,
        soil.clay().standardUncertainty());
    check(
        "no test: deviation of sand",
        DIRICHLET,
        deviation,
        GRID,
        soil.sand().standardUncertainty());
    double[][] bands = {{0, 0.1, 0.19}, {0, 0.3, 0.51}, {0.2, 0.5, 0.39}, {0.6, 1, 0.16}};
    for (double[] band : bands) {
      check(
          "no test: chance of clay from " + band[0] + " to " + band[1],
          DIRICHLET,
          band[2],
          GRID,
          soil.probabilityOfClay(band[0], band[1]));
    }
  }

  private static double integral(DoubleUnaryOperator f, double from, double to) {
    return to <= from
        ? 0
        : new RombergIntegrator(1e-7, 1e-9, 4, 16).integrate(200_000, f::applyAsDouble, from, to);
  }

  /** Integral over the triangle of a power of clay times the likelihood. */
  private static double moment(TextureLikelihood likelihood, int power) {
    return integral(
        clay ->
            Math.pow(clay, power)
                * integral(silt -> likelihood.at(clay, silt, 1 - clay - silt), 0, 1 - clay),
        0,
        1);
  }

  /** Clay and sand by a laboratory, and how far it may be off. */
  @ParameterizedTest
  @CsvSource({"0.3,0.3,0.1", "0.2,0.5,0.08", "0.45,0.2,0.1", "0.1,0.4,0.12", "0.55,0.15,0.15"})
  void aLaboratoryAgainstIntegrals(double clay, double sand, double doubt) {
    LaboratoryTexture test =
        new LaboratoryTexture(Texture.ofClayAndSand(clay, sand), doubt, SizeLimits.USDA);
    TexturePosterior soil = SoilAssessment.assess(List.of(test), Steps.none()).texture();
    double whole = moment(test.likelihood(), 0);
    double mean = moment(test.likelihood(), 1) / whole;
    double square = moment(test.likelihood(), 2) / whole;
    String what = "laboratory: clay " + clay + ", sand " + sand + ", off by " + doubt;
    check(what + ": mean clay", ROMBERG, mean, 2 * GRID, soil.clay().value());
    check(
        what + ": deviation of clay",
        ROMBERG,
        Math.sqrt(square - mean * mean),
        5 * GRID,
        soil.clay().standardUncertainty());
  }
}
