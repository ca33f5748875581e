package io.github.seamstead.geometry.survey;

import java.util.OptionalDouble;

/**
 * The test that is put to every reading.
 *
 * @param kind which distribution it uses
 * @param significance the chance of a false alarm per reading
 * @param critical the value that a standardised residual must exceed to be suspect; empty if no
 *     test is possible
 */
public record OutlierTest(Kind kind, double significance, OptionalDouble critical) {

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
      return new OutlierTest(Kind.NORMAL, alpha, OptionalDouble.of(CriticalValues.normal(alpha)));
    }
    if (basis == SigmaBasis.ESTIMATED && degreesOfFreedom >= 2) {
      double tau = CriticalValues.tau(alpha, degreesOfFreedom);
      return new OutlierTest(Kind.TAU, alpha, OptionalDouble.of(tau));
    }
    return new OutlierTest(Kind.NONE, alpha, OptionalDouble.empty());
  }
}
