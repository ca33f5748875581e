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
   * effort first. What tests by hand have in common is counted, so a further one tells less.
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
    SharedPlasticity shared = new SharedPlasticity(finding.evidence());
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

  /** By the law of total variance: the variance of the mean clay over what may be seen. */
  /** What a test by hand would show at a clay share; cells of a row have two shares in turn. */
  private static final class RowOfClay {
    private final SharedPlasticity shared;
    private final List<ClayLikelihood> outcomes;
    private double here = Double.NaN;
    private double before = Double.NaN;
    private double[] chancesHere = {};
    private double[] chancesBefore = {};

    RowOfClay(SharedPlasticity shared, List<ClayLikelihood> outcomes) {
      this.shared = shared;
      this.outcomes = outcomes;
    }

    double[] given(double clay) {
      if (clay == before) {
        return chancesBefore;
      }
      if (clay != here) {
        before = here;
        chancesBefore = chancesHere;
        here = clay;
        chancesHere = shared.given(clay, outcomes);
      }
      return chancesHere;
    }
  }

  private static double cut(
      TestKind kind, double[] weights, TextureGrid grid, SharedPlasticity shared) {
    List<SoilEvidence> outcomes = kind.outcomes();
    boolean felt = SharedPlasticity.feels(outcomes.get(0));
    List<TextureLikelihood> likelihoods = outcomes.stream().map(SoilEvidence::likelihood).toList();
    List<ClayLikelihood> byClay =
        felt ? likelihoods.stream().map(ClayLikelihood.class::cast).toList() : List.of();
    RowOfClay byRow = new RowOfClay(shared, byClay);
    double[] probability = new double[outcomes.size()];
    double[] clay = new double[outcomes.size()];
    double mean = 0;
    double square = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] == 0) {
        continue;
      }
      double here = grid.clay(cell);
      double[] chances = felt ? byRow.given(here) : chances(likelihoods, grid, cell);
      mean += weights[cell] * here;
      square += weights[cell] * here * here;
      for (int k = 0; k < chances.length; k++) {
        probability[k] += weights[cell] * chances[k];
        clay[k] += weights[cell] * chances[k] * here;
      }
    }
    double variance = square - mean * mean;
    double explained = -mean * mean;
    for (int k = 0; k < clay.length; k++) {
      explained += probability[k] > 0 ? clay[k] * clay[k] / probability[k] : 0;
    }
    return variance > 0 ? Math.min(1, Math.max(0, explained / variance)) : 0;
  }

  private static double[] chances(List<TextureLikelihood> outcomes, TextureGrid grid, int cell) {
    double[] chances = new double[outcomes.size()];
    double sum = 0;
    for (int k = 0; k < chances.length; k++) {
      chances[k] = outcomes.get(k).at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
      sum += chances[k];
    }
    for (int k = 0; k < chances.length; k++) {
      chances[k] /= sum;
    }
    return chances;
  }
}
