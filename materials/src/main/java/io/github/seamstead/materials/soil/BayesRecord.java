package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;

/** Writes the worked steps of Bayes' rule on the grid. */
final class BayesRecord {

  private BayesRecord() {}

  static void write(List<SoilAssessment.Factor> factors, TexturePosterior posterior, Steps steps) {
    TextureGrid grid = posterior.grid();
    int mode = posterior.modeCell();
    atMostProbable(factors, posterior, mode, steps);
    steps.section("Mean clay share, by bands of clay");
    double[] contributions = posterior.clayByBand();
    Steps.Entry sum = steps.step("c_mean", "mean clay share of the dry mass below 2 mm");
    StringBuilder formula = new StringBuilder();
    double total = 0;
    for (int band = 0; band < contributions.length; band++) {
      double probability = 0;
      int last = posterior.firstCellOfBand(band + 1);
      for (int cell = posterior.firstCellOfBand(band); cell < last; cell++) {
        probability += posterior.weight(cell);
      }
      double mean =
          probability > 0 ? contributions[band] / probability : (band + 0.5) / contributions.length;
      steps
          .step(
              "m" + (band + 1),
              "share of the mean from " + band * 10 + " to " + (band + 1) * 10 + " % clay")
          .formula("P" + (band + 1) + " * c" + (band + 1))
          .with("P" + (band + 1), probability, "")
          .with("c" + (band + 1), mean, "")
          .note(
              "P: probability of the band, c: mean clay in it, both sums over "
                  + grid.size()
                  + " grid cells")
          .gives(contributions[band], "");
      sum.with("m" + (band + 1), contributions[band], "");
      formula.append(band == 0 ? "m1" : " + m" + (band + 1));
      total += contributions[band];
    }
    sum.formula(formula.toString()).from(SoilAssessment.SOURCE).gives(total, "");
  }

  private static void atMostProbable(
      List<SoilAssessment.Factor> factors, TexturePosterior posterior, int mode, Steps steps) {
    TextureGrid grid = posterior.grid();
    steps.section(
        "Bayes' rule at the most probable texture: clay "
            + Numbers.fixed(grid.clay(mode) * 100, 1)
            + " %, silt "
            + Numbers.fixed(grid.silt(mode) * 100, 1)
            + " %, sand "
            + Numbers.fixed(grid.sand(mode) * 100, 1)
            + " %");
    double prior = 1.0 / grid.size();
    steps
        .step("p0", "probability of this cell before any test")
        .formula("1 / n")
        .with("n", grid.size(), "")
        .note("every cell of the triangle alike")
        .gives(prior, "");
    StringBuilder product = new StringBuilder("p0");
    double unscaled = prior;
    for (int i = 0; i < factors.size(); i++) {
      SoilAssessment.Factor test = factors.get(i);
      steps
          .step("L" + (i + 1), "likelihood of: " + test.label())
          .from(test.source())
          .note("relative to its greatest value over the triangle")
          .gives(factors.get(i).at(mode), "");
      product.append(" * L").append(i + 1);
      unscaled *= factors.get(i).at(mode);
    }
    Steps.Entry entry = steps.step("u", "prior times likelihoods").formula(product.toString());
    entry.with("p0", prior, "");
    for (int i = 0; i < factors.size(); i++) {
      entry.with("L" + (i + 1), factors.get(i).at(mode), "");
    }
    entry.gives(unscaled, "");
    double weight = posterior.weight(mode);
    steps
        .step("p", "probability of this cell after all tests")
        .formula("u / z")
        .with("u", unscaled, "")
        .with("z", unscaled / weight, "")
        .from(SoilAssessment.SOURCE)
        .note("z: the same product added up over all cells")
        .gives(weight, "");
  }
}
