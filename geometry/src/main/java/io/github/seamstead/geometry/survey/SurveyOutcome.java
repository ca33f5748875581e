package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.ArgumentFault;

/** What comes of a survey: an {@link Adjustment}, or the {@link Deficiency} that prevents it. */
public sealed interface SurveyOutcome permits Adjustment, Deficiency {

  /**
   * Gives the adjustment or fails with what is missing.
   *
   * @return the adjustment
   * @throws IllegalArgumentException with {@link Deficiency#message()} if readings are missing
   */
  default Adjustment orThrow() {
    if (this instanceof Adjustment adjustment) {
      return adjustment;
    }
    throw ArgumentFault.finding(((Deficiency) this).message());
  }
}
