package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Optional;

/**
 * What the adjustment says of one reading.
 *
 * @param number the reading's place in the field book, from 1
 * @param reading the reading
 * @param adjusted the adjusted value, in metres
 * @param residual v = adjusted - observed, in metres
 * @param redundancy r, the share of an error in this reading that shows in its own residual, 0 to
 *     1; all add up to the degrees of freedom
 * @param statistic the standardised residual {@code v / (s u sqrt(r))} with s = 1 where the
 *     uncertainties are known, else the root of the variance factor; empty where r is 0
 * @param minimalDetectableError the least error that the test finds with 80 % chance, {@code 4.13 s
 *     u / sqrt(r)}, in metres; empty where r is 0: an error there goes unseen
 * @param suspect true if the statistic exceeds the critical value
 * @param uncertaintyScale s, by which the stated uncertainty is multiplied: 1 where it is known,
 *     else the root of the variance factor
 */
public record ReadingResult(
    int number,
    Reading reading,
    double adjusted,
    double residual,
    double redundancy,
    Optional<Double> statistic,
    Optional<Double> minimalDetectableError,
    boolean suspect,
    double uncertaintyScale) {

  /** Below this redundancy number no error can show. */
  static final double LEAST_REDUNDANCY = 1e-6;

  /**
   * Below this redundancy number a reading counts as uncontrolled: an error must reach {@code 4.13
   * / sqrt(0.05) = 18} of its standard uncertainties before the test finds it.
   */
  public static final double CONTROLLED = 0.05;

  /**
   * Tells whether the other readings control this one.
   *
   * @return true if its redundancy number is {@value #CONTROLLED} or more
   */
  public boolean isControlled() {
    return redundancy >= CONTROLLED;
  }

  /**
   * Gives what the other readings say this one should be: {@code observed + v / r} with {@code s u
   * sqrt((1 - r) / r)}.
   *
   * @return in metres; empty where the redundancy is 0
   */
  public Optional<Uncertain> predictedByOthers() {
    if (redundancy < LEAST_REDUNDANCY) {
      return Optional.empty();
    }
    double spread = Math.sqrt(Math.max(1 - redundancy, 0) / redundancy);
    return Optional.of(
        new Uncertain(
            reading.value() + residual / redundancy,
            uncertaintyScale * reading.standardUncertainty() * spread));
  }
}
