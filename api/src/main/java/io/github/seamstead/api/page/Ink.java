package io.github.seamstead.api.page;

/**
 * The line styles of all drawings. They differ by weight and dash and never by colour alone, so
 * that a black-and-white print says the same. A drawing 360 units wide is printed 90 mm wide, so
 * the weights are 0.18, 0.25, 0.35 and 0.7 mm on paper, widths of the series of ISO 128.
 */
public enum Ink {
  /** What is cut, or the outline of a thing. */
  CUT(1.4, "", "#111"),
  /** A seam or stitch line. */
  SEAM(1, "5 2.5", "#111"),
  /** A fold. */
  FOLD(1, "7 2 1.5 2", "#111"),
  /** Thin lines: dimensions, grids, leaders. */
  THIN(0.72, "", "#555"),
  /** Dotted helper lines. */
  DOTTED(0.72, "1 2.5", "#333"),
  /** A heavy line: a reinforced edge, a critical path. */
  HEAVY(2.8, "", "#111");

  private final double weight;
  private final String dash;
  private final String colour;

  Ink(double weight, String dash, String colour) {
    this.weight = weight;
    this.dash = dash;
    this.colour = colour;
  }

  /**
   * Gives the line's width for a drawing 360 units wide.
   *
   * @return in user units
   */
  public double weight() {
    return weight;
  }

  String dash() {
    return dash;
  }

  String colour() {
    return colour;
  }
}
