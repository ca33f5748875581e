package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much a test would tell about the clay, on which verdict and mix rest, before it is done.
 *
 * @param kind the test
 * @param clayVarianceCut expected share of the variance of the clay that it takes away, 0 to 1
 * @param cutPerHour the same per hour of effort ({@link TestKind#effort()})
 */
public record NextTest(TestKind kind, double clayVarianceCut, double cutPerHour) {

  private static final TextureGrid GRID = TestOutcomes.GRID;
  private static final double NEGLIGIBLE = 1e-6;

  /**
   * Gives what is expected to be left of the doubt of the clay.
   *
   * @return standard deviation after the test over that before it, 0 to 1
   */
  public double clayDoubtLeft() {
    return Math.sqrt(1 - clayVarianceCut);
  }

  /**
   * Ranks the tests that were not done yet, the greatest expected cut of the clay's variance per
   * effort first. What tests of plasticity have in common is counted, so a further one tells less.
   *
   * <p>The posterior is gathered on a grid of 2 % of mass. Cost: cells that still count, times
   * possible outcomes: at most a few hundred thousand likelihoods, of which those that depend on no
   * soil are calculated once.
   *
   * @param finding what is known so far
   * @return the tests not done yet, possibly none
   */
  public static List<NextTest> rank(SoilFinding finding) {
    double[] weights = gathered(finding.texture());
    SharedPlasticity shared = new SharedPlasticity(finding.evidence(), GRID);
    List<NextTest> list = new ArrayList<>();
    for (TestKind kind : TestKind.values()) {
      if (finding.evidence().stream().noneMatch(kind::done)) {
        double cut = cut(kind, weights, shared);
        list.add(new NextTest(kind, cut, cut * 3600 / kind.effort()));
      }
    }
    list.sort(Comparator.comparingDouble(NextTest::cutPerHour).reversed());
    return List.copyOf(list);
  }

  /** Sums fine cells into the coarse cell that holds them, and drops what does not count. */
  private static double[] gathered(TexturePosterior texture) {
    double[] weights = new double[GRID.size()];
    TextureGrid fine = texture.grid();
    for (int cell = 0; cell < fine.size(); cell++) {
      weights[GRID.cellAt(fine.clay(cell), fine.silt(cell))] += texture.weight(cell);
    }
    double greatest = 0;
    for (double weight : weights) {
      greatest = Math.max(greatest, weight);
    }
    double kept = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] < NEGLIGIBLE * greatest) {
        weights[cell] = 0;
      }
      kept += weights[cell];
    }
    for (int cell = 0; cell < weights.length; cell++) {
      weights[cell] /= kept;
    }
    return weights;
  }

  /** By the law of total variance: the variance of the mean clay over what may be seen. */
  private static double cut(TestKind kind, double[] weights, SharedPlasticity shared) {
    TestOutcomes outcomes = TestOutcomes.of(kind);
    int count = outcomes.count();
    double[] probability = new double[count];
    double[] clay = new double[count];
    double mean = 0;
    double square = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] == 0) {
        continue;
      }
      double here = GRID.clay(cell);
      double[] chances = outcomes.in(cell, shared);
      mean += weights[cell] * here;
      square += weights[cell] * here * here;
      for (int k = 0; k < count; k++) {
        probability[k] += weights[cell] * chances[k];
        clay[k] += weights[cell] * chances[k] * here;
      }
    }
    double variance = square - mean * mean;
    double explained = -mean * mean;
    for (int k = 0; k < count; k++) {
      explained += probability[k] > 0 ? clay[k] * clay[k] / probability[k] : 0;
    }
    return variance > 0 ? Math.min(1, Math.max(0, explained / variance)) : 0;
  }
}
