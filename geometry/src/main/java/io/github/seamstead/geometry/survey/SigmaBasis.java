package io.github.seamstead.geometry.survey;

/** How far the stated uncertainties are trusted. */
public enum SigmaBasis {
  /** They are known: readings are tested against the normal distribution. */
  KNOWN,
  /**
   * Only their ratios are known: their common scale is estimated from the residuals, which are then
   * tested against the tau distribution.
   */
  ESTIMATED
}
