package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much a test would tell, before it is done.
 *
 * @param kind the test
 * @param expectedBits expected information about the texture, in bits: the entropy of what it would
 *     show less the entropy that remains when the texture is given
 * @param bitsPerHour the same per hour of effort ({@link TestKind#effortSeconds()})
 */
public record NextTest(TestKind kind, double expectedBits, double bitsPerHour) {

  private static final int STEPS = 50;
  private static final double NEGLIGIBLE = 1e-6;

  /**
   * Ranks the tests that were not done yet, the most information per effort first.
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
    List<NextTest> list = new ArrayList<>();
    for (TestKind kind : TestKind.values()) {
      if (finding.evidence().stream().noneMatch(kind::done)) {
        double bits = information(kind, weights, grid);
        list.add(new NextTest(kind, bits, bits * 3600 / kind.effortSeconds()));
      }
    }
    list.sort(Comparator.comparingDouble(NextTest::bitsPerHour).reversed());
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

  private static double information(TestKind kind, double[] weights, TextureGrid grid) {
    List<TextureLikelihood> outcomes =
        kind.outcomes().stream().map(SoilEvidence::likelihood).toList();
    double[] marginal = new double[outcomes.size()];
    double[] chances = new double[outcomes.size()];
    double given = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] == 0) {
        continue;
      }
      double sum = 0;
      for (int k = 0; k < chances.length; k++) {
        chances[k] = outcomes.get(k).at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
        sum += chances[k];
      }
      for (int k = 0; k < chances.length; k++) {
        double chance = chances[k] / sum;
        marginal[k] += weights[cell] * chance;
        given += weights[cell] * surprise(chance);
      }
    }
    double entropy = 0;
    for (double chance : marginal) {
      entropy += surprise(chance);
    }
    return Math.max(0, entropy - given);
  }

  private static double surprise(double chance) {
    return chance > 0 ? -chance * Math.log(chance) / Math.log(2) : 0;
  }
}
