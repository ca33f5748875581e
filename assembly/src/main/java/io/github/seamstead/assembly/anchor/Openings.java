package io.github.seamstead.assembly.anchor;

/** How the wind may get in. */
public enum Openings {
  /** Door and vents shut or small and spread: internal pressure coefficient 0.2. */
  CLOSED("closed", 0.2),
  /** A door or vent open to the wind, or one that may blow open: 0.9 times 0.8, which is 0.72. */
  OPEN_TO_WIND("open to the wind", 0.72);

  private final String label;
  private final double internal;

  Openings(String label, double internal) {
    this.label = label;
    this.internal = internal;
  }

  /**
   * Names the state.
   *
   * @return for example {@code open to the wind}
   */
  public String label() {
    return label;
  }

  double internal() {
    return internal;
  }
}
