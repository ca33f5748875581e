package io.github.seamstead.assembly.handling;

/** How well the hands hold a load. */
public enum Coupling {
  /** Handles of the right size, or a grip all round. */
  GOOD("good", 1.00, 1.00),
  /** Poorer handles, or fingers bent at a right angle under the load. */
  FAIR("fair", 0.95, 1.00),
  /** Bulky, sharp or sagging: folded cloth. */
  POOR("poor", 0.90, 0.90);

  private final String label;
  private final double low;
  private final double high;

  Coupling(String label, double low, double high) {
    this.label = label;
    this.low = low;
    this.high = high;
  }

  /**
   * Names the coupling.
   *
   * @return for example {@code poor}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the coupling multiplier.
   *
   * @param handsAtOrAbove75Centimetres true if the hands are at 75 cm (30 in) or higher
   * @return 0.90 to 1
   */
  public double multiplier(boolean handsAtOrAbove75Centimetres) {
    return handsAtOrAbove75Centimetres ? high : low;
  }
}
