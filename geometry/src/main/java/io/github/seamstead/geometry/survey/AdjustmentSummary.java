package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/** The sums of an adjustment that a teacher can redo from its table of residuals. */
public final class AdjustmentSummary {

  private static final Source LEAST_SQUARES =
      Source.derived("method of least squares, weights 1/u^2");

  private AdjustmentSummary() {}

  /**
   * Tests the variance factor: {@code v'Pv = sum((v/u)^2)}, {@code s0^2 = v'Pv / nu}, against the
   * 2.5 % and 97.5 % quantiles of chi-squared for nu degrees of freedom.
   *
   * @param adjustment an adjustment with redundancy
   * @param steps receives the worked steps; the last is the variance factor
   * @return the test
   * @throws IllegalArgumentException if there is no redundancy
   */
  @Calculation("geometry.survey.global-test")
  public static GlobalTest globalTest(Adjustment adjustment, Steps steps) {
    int nu = adjustment.degreesOfFreedom();
    Args.require(nu > 0, "degrees of freedom", "0", "must be 1 or more");
    steps.section("Weighted squares of the residuals");
    double sum = 0;
    for (ReadingResult result : adjustment.readings()) {
      double ratio = result.residual() / result.reading().standardUncertainty();
      double next = sum + ratio * ratio;
      if (steps.isRecording()) {
        String k = "S_" + result.number();
        Steps.Entry entry =
            steps
                .step(
                    k,
                    "running sum with reading " + result.number() + ", " + result.reading().name())
                .formula(
                    result.number() == 1
                        ? "(v / u)^2"
                        : "S_" + (result.number() - 1) + " + (v / u)^2")
                .with("v", result.residual(), "m")
                .with("u", result.reading().standardUncertainty(), "m")
                .from(LEAST_SQUARES);
        if (result.number() > 1) {
          entry.with("S_" + (result.number() - 1), sum, "");
        }
        entry.gives(next, "");
      }
      sum = next;
    }
    steps.section("Test of the variance factor");
    double tail = (1 - CriticalValues.GLOBAL_CONFIDENCE) / 2;
    double lower =
        steps
            .step("chi_low", "2.5 % quantile of chi-squared for the degrees of freedom")
            .gives(CriticalValues.chiSquared(tail, nu), "");
    double upper =
        steps
            .step("chi_high", "97.5 % quantile of chi-squared for the degrees of freedom")
            .gives(CriticalValues.chiSquared(1 - tail, nu), "");
    int readings = adjustment.readings().size();
    double unknowns = 3.0 * adjustment.nodeNames().size();
    steps
        .step("nu", "degrees of freedom")
        .formula("m - u + d")
        .with("m", readings, "")
        .with("u", unknowns, "")
        .with("d", adjustment.freeMotions(), "")
        .note("m readings, u coordinates, d rigid motions that no reading sees")
        .gives(nu, "");
    String last = "S_" + readings;
    double factor =
        steps
            .step("s0_2", "variance factor")
            .formula(last + " / nu")
            .with(last, sum, "")
            .with("nu", nu, "")
            .from(LEAST_SQUARES)
            .note("the test passes while chi_low <= v'Pv <= chi_high")
            .gives(sum / nu, "");
    return new GlobalTest(nu, sum, factor, lower, upper);
  }

  /**
   * Standardises one residual: {@code w = v / (s u sqrt(r))}.
   *
   * @param adjustment the adjustment
   * @param number the reading's place in the field book, from 1
   * @param steps receives the worked steps; the last is the standardised residual
   * @return w, a pure number
   * @throws IllegalArgumentException if there is no such reading, or its redundancy is 0
   */
  @Calculation("geometry.survey.standardised-residual")
  public static double standardisedResidual(Adjustment adjustment, int number, Steps steps) {
    ReadingResult result = controlled(adjustment, number);
    double spread = spread(adjustment, result, steps);
    double v =
        steps
            .step("v", "residual of " + result.reading().name())
            .formula("l_adj - l_obs")
            .with("l_adj", result.adjusted(), "m")
            .with("l_obs", result.reading().value(), "m")
            .gives(result.adjusted() - result.reading().value(), "m");
    return steps
        .step("w", "standardised residual")
        .formula("v / s_v")
        .with("v", v, "m")
        .with("s_v", spread, "m")
        .from(
            adjustment.outlierTest().kind() == OutlierTest.Kind.TAU
                ? CriticalValues.POPE
                : CriticalValues.BAARDA)
        .gives(v / spread, "");
  }

  /**
   * Gives the least error in one reading that its test finds with 80 % chance: {@code delta s u /
   * sqrt(r)} with delta = 4.13.
   *
   * @param adjustment the adjustment
   * @param number the reading's place in the field book, from 1
   * @param steps receives the worked steps; the last is the minimal detectable error
   * @return in metres
   * @throws IllegalArgumentException if there is no such reading, or its redundancy is 0
   */
  @Calculation("geometry.survey.minimal-detectable-error")
  public static double minimalDetectableError(Adjustment adjustment, int number, Steps steps) {
    ReadingResult result = controlled(adjustment, number);
    double delta =
        steps
            .step("delta", "shift found at 0.1 % significance with 80 % power")
            .from(CriticalValues.BAARDA)
            .gives(
                CriticalValues.noncentrality(
                    CriticalValues.READING_SIGNIFICANCE, CriticalValues.POWER),
                "");
    double su = adjustment.uncertaintyScale() * result.reading().standardUncertainty();
    return steps
        .step("MDE", "minimal detectable error of " + result.reading().name())
        .formula("delta * s * u / sqrt(r)")
        .with("delta", delta, "")
        .with("s", adjustment.uncertaintyScale(), "")
        .with("u", result.reading().standardUncertainty(), "m")
        .with("r", result.redundancy(), "")
        .from(CriticalValues.BAARDA)
        .gives(delta * su / Math.sqrt(result.redundancy()), "m");
  }

  private static double spread(Adjustment adjustment, ReadingResult result, Steps steps) {
    double s = adjustment.uncertaintyScale();
    double u = result.reading().standardUncertainty();
    return steps
        .step("s_v", "standard deviation of the residual")
        .formula("s * u * sqrt(r)")
        .with("s", s, "")
        .with("u", u, "m")
        .with("r", result.redundancy(), "")
        .gives(s * u * Math.sqrt(result.redundancy()), "m");
  }

  private static ReadingResult controlled(Adjustment adjustment, int number) {
    Args.within("reading number", number, 1, adjustment.readings().size());
    ReadingResult result = adjustment.readings().get(number - 1);
    Args.require(
        result.statistic().isPresent() && adjustment.uncertaintyScale() > 0,
        "reading "
            + number
            + " ("
            + result.reading().name()
            + "): no other reading controls it, so it cannot be tested");
    return result;
  }
}
