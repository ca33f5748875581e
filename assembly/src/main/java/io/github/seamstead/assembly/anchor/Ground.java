package io.github.seamstead.assembly.anchor;

/** The ground on the day that counts, beside the day of the test. */
public enum Ground {
  /** As on the day of the test. */
  AS_TESTED("as tested", 1),
  /** Saturated, or thawing and the month after: half. */
  WET_OR_THAWING("wet or thawing", 0.5);

  private final String label;
  private final double factor;

  Ground(String label, double factor) {
    this.label = label;
    this.factor = factor;
  }

  /**
   * Names the state.
   *
   * @return for example {@code wet or thawing}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the part of the tested pull that is left.
   *
   * @return 1 or 0.5
   */
  public double factor() {
    return factor;
  }
}
