package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** Critical values of the tests of an adjustment. Significance is the chance of a false alarm. */
public final class CriticalValues {

  /** Significance of the test of a single reading: 0.1 %. */
  public static final double READING_SIGNIFICANCE = 0.001;

  /** Power for which the minimal detectable error is stated: 80 %. */
  public static final double POWER = 0.80;

  /** Confidence of the test of the variance factor: 95 %, two-sided. */
  public static final double GLOBAL_CONFIDENCE = 0.95;

  /** Where the test of single readings with known sigma comes from. */
  public static final Source BAARDA =
      Source.fromMemory(
          "W. Baarda", "A testing procedure for use in geodetic networks", "1968", "");

  /** Where the test with estimated sigma comes from. */
  public static final Source POPE =
      Source.fromMemory(
          "A. J. Pope", "The statistics of residuals and the detection of outliers", "1976", "");

  private CriticalValues() {}

  /**
   * Two-sided normal value: {@code P(|w| > z) = alpha}; 3.2905 for 0.1 %.
   *
   * @param significance alpha, more than 0 and less than 1
   * @return z
   * @throws IllegalArgumentException if alpha is out of range
   */
  public static double normal(double significance) {
    Args.between("significance", significance, 0, 1, "");
    return new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - significance / 2);
  }

  /**
   * Shift of the standardised residual that is found with a given power: {@code delta = z(1 -
   * alpha/2) + z(power)}; 4.1321 for 0.1 % and 80 %.
   *
   * @param significance alpha, more than 0 and less than 1
   * @param power chance of finding it, more than 0 and less than 1
   * @return delta
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double noncentrality(double significance, double power) {
    Args.between("power", power, 0, 1, "");
    return normal(significance)
        + new NormalDistribution(null, 0, 1).inverseCumulativeProbability(power);
  }

  /**
   * Two-sided tau value for a residual standardised with the sigma estimated from the same
   * readings: {@code tau = sqrt(nu) t / sqrt(nu - 1 + t^2)} with Student's t for {@code nu - 1}
   * degrees of freedom. It never exceeds {@code sqrt(nu)}, so a fixed 3.29 could not be reached
   * with ten redundancies or fewer.
   *
   * @param significance alpha, more than 0 and less than 1
   * @param degreesOfFreedom nu, 2 or more: with one redundancy all readings look alike
   * @return tau
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double tau(double significance, int degreesOfFreedom) {
    Args.between("significance", significance, 0, 1, "");
    Args.within("degrees of freedom", degreesOfFreedom, 2, Integer.MAX_VALUE);
    double nu = degreesOfFreedom;
    double t = new TDistribution(null, nu - 1).inverseCumulativeProbability(1 - significance / 2);
    return Math.sqrt(nu) * t / Math.sqrt(nu - 1 + t * t);
  }

  /**
   * Quantile of the chi-squared distribution.
   *
   * @param probability chance of staying below, more than 0 and less than 1
   * @param degreesOfFreedom 1 or more
   * @return the quantile
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double chiSquared(double probability, int degreesOfFreedom) {
    Args.between("probability", probability, 0, 1, "");
    Args.within("degrees of freedom", degreesOfFreedom, 1, Integer.MAX_VALUE);
    return new ChiSquaredDistribution(null, degreesOfFreedom)
        .inverseCumulativeProbability(probability);
  }
}
