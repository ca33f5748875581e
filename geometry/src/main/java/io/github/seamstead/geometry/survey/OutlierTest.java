package io.github.seamstead.geometry.survey;

import java.util.Optional;

/**
 * The test that is put to every reading.
 *
 * @param kind which distribution it uses
 * @param significance the chance of a false alarm per reading
 * @param critical the value that a standardised residual must exceed to be suspect; empty if no
 *     test is possible
 */
public record OutlierTest(Kind kind, double significance, Optional<Double> critical) {

  /** Which distribution a test uses. */
  public enum Kind {
    /** Known uncertainties: normal distribution, critical value 3.29. */
    NORMAL,
    /** Estimated uncertainties: tau distribution by the number of redundancies. */
    TAU,
    /** Too few redundancies to tell any reading from another. */
    NONE
  }

  static OutlierTest of(SigmaBasis basis, int degreesOfFreedom) {
    double alpha = CriticalValues.READING_SIGNIFICANCE;
    if (basis == SigmaBasis.KNOWN && degreesOfFreedom >= 1) {
      return new OutlierTest(Kind.NORMAL, alpha, Optional.of(CriticalValues.normal(alpha)));
    }
    if (basis == SigmaBasis.ESTIMATED && degreesOfFreedom >= 2) {
      double tau = CriticalValues.tau(alpha, degreesOfFreedom);
      return new OutlierTest(Kind.TAU, alpha, Optional.of(tau));
    }
    return new OutlierTest(Kind.NONE, alpha, Optional.empty());
  }
}
