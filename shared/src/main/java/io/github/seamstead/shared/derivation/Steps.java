package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.source.Source;

/**
 * Where a calculation writes its worked steps while it computes.
 *
 * <p>{@link #none()} ignores everything at no cost; a {@link StepRecorder} keeps it.
 */
public interface Steps {

  /**
   * Gives the receiver that keeps nothing.
   *
   * @return the same instance at every call
   */
  static Steps none() {
    return NoSteps.INSTANCE;
  }

  /**
   * Tells whether steps are kept. Only needed to skip work that exists for the record alone, such
   * as a loop that writes one step for each of many items.
   *
   * @return false for {@link #none()}
   */
  boolean isRecording();

  /**
   * Starts a new part of the derivation.
   *
   * @param heading a few words
   */
  void section(String heading);

  /**
   * Starts a step. It is kept when {@link Entry#gives} is called.
   *
   * @param symbol the result's symbol, such as {@code s} or {@code rho_d}
   * @param name the result's name in the trade's words
   * @return the step to fill in
   */
  Entry step(String symbol, String name);

  /** A step that is being filled in. */
  interface Entry {

    /**
     * States the formula in the notation of {@link Formula}. A step without one is a given value.
     *
     * @param formula the right-hand side, such as {@code sqrt(r^2 + H^2)}
     * @return this entry
     */
    Entry formula(String formula);

    /**
     * States an input of the formula.
     *
     * @param symbol the symbol as it stands in the formula
     * @param value the number that goes in
     * @param unit its unit's symbol, empty for a pure number
     * @return this entry
     */
    Entry with(String symbol, double value, String unit);

    /**
     * States the source of the formula or of the given value.
     *
     * @param source the source
     * @return this entry
     */
    Entry from(Source source);

    /**
     * Adds a remark, such as which branch was taken and why.
     *
     * @param note a sentence
     * @return this entry
     */
    Entry note(String note);

    /**
     * Closes the step.
     *
     * @param value the result
     * @param unit its unit's symbol, empty for a pure number
     * @return {@code value}
     */
    double gives(double value, String unit);
  }
}
