package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much a test would tell about the clay, on which verdict and mix rest, before it is done.
 *
 * @param kind the test
 * @param clayVarianceCut expected share of the variance of the clay that it takes away, 0 to 1
 * @param cutPerHour the same per hour of effort ({@link TestKind#effortSeconds()})
 */
public record NextTest(TestKind kind, double clayVarianceCut, double cutPerHour) {

  private static final int STEPS = 50;
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
   * possible outcomes: at most a few hundred thousand likelihoods.
   *
   * @param finding what is known so far
   * @return the tests not done yet, possibly none
   */
  public static List<NextTest> rank(SoilFinding finding) {
    TextureGrid grid = new TextureGrid(STEPS);
    double[] weights = gathered(finding.texture(), grid);
    SharedPlasticity shared = new SharedPlasticity(finding.evidence(), grid);
    List<NextTest> list = new ArrayList<>();
    for (TestKind kind : TestKind.values()) {
      if (finding.evidence().stream().noneMatch(kind::done)) {
        double cut = cut(kind, weights, grid, shared);
        list.add(new NextTest(kind, cut, cut * 3600 / kind.effortSeconds()));
      }
    }
    list.sort(Comparator.comparingDouble(NextTest::cutPerHour).reversed());
    return List.copyOf(list);
  }

  /** Sums fine cells into the coarse cell that holds them, and drops what does not count. */
  private static double[] gathered(TexturePosterior texture, TextureGrid coarse) {
    double[] weights = new double[coarse.size()];
    TextureGrid fine = texture.grid();
    for (int cell = 0; cell < fine.size(); cell++) {
      weights[coarse.cellAt(fine.clay(cell), fine.silt(cell))] += texture.weight(cell);
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

  /** How likely each outcome of a test is in a cell, given what is known; they add to one. */
  @FunctionalInterface
  private interface Chances {
    double[] in(int cell);
  }

  private static Chances chances(
      List<SoilEvidence> outcomes, TextureGrid grid, SharedPlasticity shared) {
    if (SharedPlasticity.shares(outcomes.get(0))) {
      List<SharedPlasticity.Seen> seen =
          outcomes.stream().map(outcome -> new SharedPlasticity.Seen(outcome, grid)).toList();
      return cell -> byMineral(seen, shared.minerals(cell), cell);
    }
    List<TextureLikelihood> likelihoods = outcomes.stream().map(SoilEvidence::likelihood).toList();
    return cell -> {
      double[] chances = new double[likelihoods.size()];
      for (int k = 0; k < chances.length; k++) {
        chances[k] = likelihoods.get(k).at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
      }
      return addTo(new double[chances.length], chances, 1);
    };
  }

  private static double[] byMineral(
      List<SharedPlasticity.Seen> outcomes, double[] minerals, int cell) {
    double[] sums = new double[outcomes.size()];
    double[] here = new double[sums.length];
    for (int mineral = 0; mineral < minerals.length; mineral++) {
      for (int k = 0; k < here.length; k++) {
        here[k] = outcomes.get(k).at(cell, mineral);
      }
      addTo(sums, here, minerals[mineral]);
    }
    return sums;
  }

  /** Adds likelihoods, scaled to a sum, to what is there. */
  private static double[] addTo(double[] sums, double[] likelihoods, double sum) {
    double all = 0;
    for (double likelihood : likelihoods) {
      all += likelihood;
    }
    for (int k = 0; k < sums.length; k++) {
      sums[k] += likelihoods[k] / all * sum;
    }
    return sums;
  }

  /** By the law of total variance: the variance of the mean clay over what may be seen. */
  private static double cut(
      TestKind kind, double[] weights, TextureGrid grid, SharedPlasticity shared) {
    List<SoilEvidence> outcomes = kind.outcomes();
    Chances chancesOf = chances(outcomes, grid, shared);
    int count = outcomes.size();
    double[] probability = new double[count];
    double[] clay = new double[count];
    double mean = 0;
    double square = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] == 0) {
        continue;
      }
      double here = grid.clay(cell);
      double[] chances = chancesOf.in(cell);
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
