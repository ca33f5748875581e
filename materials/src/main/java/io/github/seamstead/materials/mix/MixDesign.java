package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Proportions any components for a target: clay band, shrinkage limit, and the nearest grading, the
 * middle of the band or the least cost.
 *
 * <p>Unknowns are the shares of the dry mass. The nearest grading is a least-squares problem with
 * limits, the least cost a linear programme. A limit that cannot be met is named with the nearest
 * value that can, and the mix for that is given. Cost: 6 x 2^n small linear systems for n
 * components.
 */
public final class MixDesign {

  private static final int MOST_COMPONENTS = 6;
  private static final double DRY_KILOGRAMS = 1000;

  private MixDesign() {}

  /**
   * Finds the mix.
   *
   * @param components two to six materials with different names
   * @param target what the mix should be
   * @param rounding how the buckets are rounded
   * @return the mix, with what cannot be met
   * @throws IllegalArgumentException if the number of components is out of range, or a price or
   *     shrinkage that the target needs is missing
   */
  public static MixSolution solve(
      List<MixComponent> components, MixTarget target, BucketRounding rounding) {
    return solve(components, target, rounding, Steps.none());
  }

  /**
   * As {@link #solve(List, MixTarget, BucketRounding)}, with its worked steps; the last step is the
   * clay share of the exact mix.
   *
   * @param components two to six materials with different names
   * @param target what the mix should be
   * @param rounding how the buckets are rounded
   * @param steps receives the worked steps
   * @return the mix, with what cannot be met
   * @throws IllegalArgumentException if the number of components is out of range, or a price or
   *     shrinkage that the target needs is missing
   */
  @Calculation("materials.mix.design")
  public static MixSolution solve(
      List<MixComponent> components, MixTarget target, BucketRounding rounding, Steps steps) {
    Args.within("number of components", components.size(), 2, MOST_COMPONENTS);
    Args.require(
        components.stream().map(MixComponent::name).distinct().count() == components.size(),
        "components",
        "two of the same name",
        "must have different names");
    MixProblem problem = new MixProblem(components, target);
    Reach reach = new Reach(problem, target, components);
    double[] shares = cleaned(shares(problem, reach, target));
    List<Double> masses = new ArrayList<>();
    for (double share : shares) {
      masses.add(share * DRY_KILOGRAMS);
    }
    Recipe exact = Recipe.ofDryMasses(components, masses);
    Recipe rounded = BucketSearch.round(exact, target.band(), rounding);
    Optional<Double> price = perDryTonne(exact);
    Optional<Double> roundedPrice = perDryTonne(rounded);
    return new MixSolution(
        target,
        exact,
        rounded,
        clay(components, problem, shares, target, steps),
        MixProblem.shrinkageOf(components, shares),
        target.grading().map(g -> g.misfit(exact::finer)),
        price,
        rounded.clayRatio().value() - exact.clayRatio().value(),
        price.isPresent() && roundedPrice.isPresent()
            ? Optional.of(roundedPrice.get() - price.get())
            : Optional.empty(),
        reach.unmet);
  }

  /** Takes away what rounding leaves below zero. */
  private static double[] cleaned(double[] shares) {
    double[] clean = new double[shares.length];
    double sum = 0;
    for (int i = 0; i < clean.length; i++) {
      clean[i] = Math.max(0, shares[i]);
      sum += clean[i];
    }
    for (int i = 0; i < clean.length; i++) {
      clean[i] /= sum;
    }
    return clean;
  }

  private static double[] shares(MixProblem problem, Reach reach, MixTarget target) {
    return switch (target.aim()) {
      case LEAST_COST ->
          LinearMix.least(
              problem.prices(),
              problem,
              reach.leastClay,
              reach.greatestClay,
              reach.greatestShrinkage);
      case MIDDLE_OF_BAND ->
          new QuadraticMix(
                  problem, reach, List.of(problem.clay), new double[] {target.band().middle()})
              .solve();
      case NEAREST_GRADING -> nearest(problem, reach, target.grading().orElseThrow());
    };
  }

  private static double[] nearest(MixProblem problem, Reach reach, GradingTarget grading) {
    List<Double> sizes = grading.sizes();
    List<double[]> rows = new ArrayList<>();
    double[] aims = new double[sizes.size()];
    for (int k = 0; k < aims.length; k++) {
      double[] row = new double[problem.size()];
      for (int i = 0; i < row.length; i++) {
        row[i] = problem.finer(i, sizes.get(k));
      }
      rows.add(row);
      aims[k] = grading.finer(sizes.get(k));
    }
    return new QuadraticMix(problem, reach, rows, aims).solve();
  }

  private static double clay(
      List<MixComponent> components,
      MixProblem problem,
      double[] shares,
      MixTarget target,
      Steps steps) {
    double clay = MixProblem.dot(problem.clay, shares);
    if (!steps.isRecording()) {
      return clay;
    }
    Steps.Entry sum = steps.step("S", "sum of the shares, which must be 1");
    Steps.Entry mix = steps.step("c_mix", "clay share of the mix");
    StringBuilder sumText = new StringBuilder();
    StringBuilder mixText = new StringBuilder();
    double all = 0;
    for (int i = 0; i < shares.length; i++) {
      String x = "x" + (i + 1);
      String c = "c" + (i + 1);
      steps
          .step(x, "share of the dry mass: " + components.get(i).name())
          .note("found by " + method(target.aim()) + "; it solves the equations below")
          .gives(shares[i], "");
      sum.with(x, shares[i], "");
      mix.with(x, shares[i], "").with(c, problem.clay[i], "");
      sumText.append(i == 0 ? "" : " + ").append(x);
      mixText.append(i == 0 ? "" : " + ").append(c).append(" * ").append(x);
      all += shares[i];
    }
    sum.formula(sumText.toString()).gives(all, "");
    return mix.formula(mixText.toString())
        .from(MixSources.MASS_BALANCE)
        .note(
            "wanted: "
                + Numbers.significant(target.band().least() * 100, 3)
                + " to "
                + Numbers.significant(target.band().greatest() * 100, 3)
                + " %")
        .gives(clay, "");
  }

  private static String method(MixTarget.Aim aim) {
    return switch (aim) {
      case LEAST_COST -> "a linear programme for the least cost";
      case MIDDLE_OF_BAND -> "least squares to the middle of the clay band";
      case NEAREST_GRADING -> "least squares to the grading target within the limits";
    };
  }

  private static Optional<Double> perDryTonne(Recipe recipe) {
    Optional<Double> price = recipe.price();
    return price.isPresent() ? Optional.of(price.get() / recipe.dryMass() * DRY_KILOGRAMS) : price;
  }
}
