package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * A duration by three estimates.
 *
 * <p>The rule used is PERT's: mean {@code (a + 4 m + b) / 6}, standard deviation {@code (b - a) /
 * 6}. Its rival, the triangular distribution, takes {@code (a + m + b) / 3}: see {@link
 * #triangularMean()}. For 3, 5 and 13 they give 6 and 7.
 *
 * @param optimistic if all goes well, in seconds, 0 or more
 * @param likely most likely, in seconds; at least {@code optimistic}
 * @param pessimistic if much goes wrong, in seconds; at least {@code likely}
 */
public record ThreePoint(double optimistic, double likely, double pessimistic) {

  public ThreePoint {
    Args.notNegative("optimistic duration", optimistic, "s");
    Args.notNegative("likely duration", likely, "s");
    Args.notNegative("pessimistic duration", pessimistic, "s");
    Args.require(
        optimistic <= likely && likely <= pessimistic,
        "duration",
        Numbers.plain(optimistic)
            + ", "
            + Numbers.plain(likely)
            + ", "
            + Numbers.plain(pessimistic)
            + " s",
        "must not fall");
  }

  /**
   * Makes a duration without doubt.
   *
   * @param seconds in seconds, 0 or more
   * @return three equal estimates
   */
  public static ThreePoint exactly(double seconds) {
    return new ThreePoint(seconds, seconds, seconds);
  }

  /**
   * Scales all three.
   *
   * @param factor 0 or more
   * @return the scaled estimates
   */
  public ThreePoint times(double factor) {
    Args.notNegative("factor", factor, "");
    return new ThreePoint(optimistic * factor, likely * factor, pessimistic * factor);
  }

  /**
   * Computes PERT's mean.
   *
   * @return {@code (a + 4 m + b) / 6}, in seconds
   */
  public double mean() {
    return mean(Steps.none());
  }

  /**
   * Computes PERT's mean with its steps.
   *
   * @param steps where the steps go
   * @return {@code (a + 4 m + b) / 6}, in seconds
   */
  @Calculation("assembly.schedule.pert")
  public double mean(Steps steps) {
    steps
        .step("sigma", "standard deviation")
        .formula("(b - a) / 6")
        .with("a", optimistic, "s")
        .with("b", pessimistic, "s")
        .from(ScheduleSources.PERT)
        .gives(standardDeviation(), "s");
    steps
        .step("t_tri", "mean by the rival triangular rule, for comparison")
        .formula("(a + m + b) / 3")
        .with("a", optimistic, "s")
        .with("m", likely, "s")
        .with("b", pessimistic, "s")
        .gives(triangularMean(), "s");
    return steps
        .step("t_e", "expected duration")
        .formula("(a + 4 * m + b) / 6")
        .with("a", optimistic, "s")
        .with("m", likely, "s")
        .with("b", pessimistic, "s")
        .from(ScheduleSources.PERT)
        .gives((optimistic + 4 * likely + pessimistic) / 6, "s");
  }

  /**
   * Computes PERT's standard deviation.
   *
   * @return {@code (b - a) / 6}, in seconds
   */
  public double standardDeviation() {
    return (pessimistic - optimistic) / 6;
  }

  /**
   * Computes PERT's variance.
   *
   * @return the square of {@link #standardDeviation()}, in seconds squared
   */
  public double variance() {
    return standardDeviation() * standardDeviation();
  }

  /**
   * Computes the mean by the rival rule.
   *
   * @return {@code (a + m + b) / 3}, in seconds
   */
  public double triangularMean() {
    return (optimistic + likely + pessimistic) / 3;
  }
}
