package io.github.seamstead.geometry.survey;

/**
 * The test of the whole adjustment: {@code v'Pv} against the chi-squared distribution.
 *
 * @param degreesOfFreedom nu, readings less unknowns plus free motions, 1 or more
 * @param weightedSquares {@code v'Pv = sum((v/u)^2)}, the test statistic
 * @param varianceFactor {@code s0^2 = v'Pv / nu}; 1 is expected
 * @param lower 2.5 % quantile of chi-squared
 * @param upper 97.5 % quantile of chi-squared
 */
public record GlobalTest(
    int degreesOfFreedom,
    double weightedSquares,
    double varianceFactor,
    double lower,
    double upper) {

  /** What the test says. */
  public enum Verdict {
    /** The residuals are as large as the stated uncertainties let expect. */
    AS_EXPECTED,
    /** They are larger: a blunder, a bent frame between readings, or too hopeful uncertainties. */
    TOO_LARGE,
    /** They are smaller: the uncertainties are stated too large, or readings were copied. */
    TOO_SMALL
  }

  /**
   * Gives the verdict.
   *
   * @return where the statistic lies against the two quantiles
   */
  public Verdict verdict() {
    if (weightedSquares > upper) {
      return Verdict.TOO_LARGE;
    }
    return weightedSquares < lower ? Verdict.TOO_SMALL : Verdict.AS_EXPECTED;
  }
}
