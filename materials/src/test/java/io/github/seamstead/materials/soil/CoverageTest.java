package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Do the ranges hold the truth as often as they claim? Virtual soils, even over the triangle, are
 * tested with the scatter that the tests state. {@code -Dseamstead.soils=2000} for the long run.
 */
class CoverageTest {

  private static final int SOILS = Integer.getInteger("seamstead.soils", 100);

  /** Three standard deviations of a share of 0.9 counted in as many soils, and 3 points. */
  private static final double SLACK = 0.03 + 3 * Math.sqrt(0.09 / SOILS);

  private final Random random = new Random(20261128);

  @Test
  void fiveHandTestsThatErrTogether() {
    double held =
        share(
            truth -> {
              double felt =
                  Math.min(
                      1,
                      truth.clayRatio()
                          * Math.exp(SharedPlasticity.DEVIATION * random.nextGaussian()));
              List<SoilEvidence> tests = new ArrayList<>();
              for (TestKind kind :
                  List.of(
                      TestKind.SQUEEZE,
                      TestKind.DROP,
                      TestKind.ROLL,
                      TestKind.BEND,
                      TestKind.RIBBON)) {
                tests.add(drawn(kind, felt, truth));
              }
              return tests;
            });
    assertThat(held).isBetween(0.9 - SLACK, Math.min(1, 0.9 + SLACK));
  }

  @Test
  void aJarWhoseClaySinksInFlocs() {
    double held =
        share(
            truth -> {
              double flocs = 0.3 + 0.6 * random.nextDouble();
              double clay = truth.clayRatio() / 450;
              double silt = truth.siltRatio() / 1080;
              double sand = truth.sandRatio() / 1520;
              double total = clay + silt + sand;
              double afloat = (1 - flocs) * clay;
              double first = sand / total + 0.05 * random.nextGaussian();
              double second = 1 - afloat / total + 0.05 * random.nextGaussian();
              first = Math.min(1, Math.max(0, first));
              second = Math.min(1, Math.max(first, second));
              return List.of(
                  new JarTest(
                      0.08 * first,
                      0.08 * second,
                      0.08,
                      0.2,
                      20,
                      false,
                      List.of(JarTiming.measured(140, 140 * 625, 4e5))));
            });
    assertThat(held).isGreaterThan(0.9 - SLACK);
  }

  private double share(Function<Texture, List<SoilEvidence>> made) {
    int held = 0;
    for (int i = 0; i < SOILS; i++) {
      double a = random.nextDouble();
      double b = random.nextDouble();
      Texture truth = Texture.ofClayAndSand(Math.min(a, b), 1 - Math.max(a, b));
      var range = SoilAssessment.assess(made.apply(truth)).texture().clayRange();
      if (range.low() <= truth.clayRatio() && truth.clayRatio() <= range.high()) {
        held++;
      }
    }
    return (double) held / SOILS;
  }

  /** An outcome drawn by the test's own likelihood. */
  private SoilEvidence drawn(TestKind kind, double clay, Texture truth) {
    List<SoilEvidence> outcomes = kind.outcomes();
    double[] chances = new double[outcomes.size()];
    double sum = 0;
    double rest = (1 - clay) / Math.max(1e-9, 1 - truth.clayRatio());
    for (int i = 0; i < chances.length; i++) {
      chances[i] =
          outcomes.get(i).likelihood().at(clay, truth.siltRatio() * rest, truth.sandRatio() * rest);
      sum += chances[i];
    }
    double left = random.nextDouble() * sum;
    int i = 0;
    while (i < chances.length - 1 && left > chances[i]) {
      left -= chances[i];
      i++;
    }
    return outcomes.get(i);
  }
}
