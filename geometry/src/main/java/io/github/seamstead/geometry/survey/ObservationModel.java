package io.github.seamstead.geometry.survey;

/** Observations as functions of unknowns, for {@link GaussNewton}. */
interface ObservationModel {

  int unknowns();

  int observations();

  /** The most unknowns that one observation depends on. */
  int mostPerObservation();

  /** The unknowns at which to start. A fresh copy. */
  double[] start();

  /** The unknowns to which the free motions are tied. */
  default double[] datum(double[] unknowns) {
    return start();
  }

  double weight(int observation);

  /**
   * Evaluates one observation.
   *
   * @param row receives the derivatives of the computed value
   * @return observed minus computed
   */
  double evaluate(int observation, double[] unknowns, DesignRow row);

  /**
   * Adds {@code factor} times the second derivatives of one observation's computed value to the
   * lower triangle. A model without them converges more slowly where residuals are large.
   */
  default void addCurvature(int observation, double[] unknowns, double factor, double[][] lower) {}

  /** Orthonormal directions in which no observation changes, one per row; often none. */
  double[][] freeMotions(double[] unknowns);
}
