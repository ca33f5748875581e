package io.github.seamstead.api.page;

/**
 * The line styles of all drawings. They differ by weight and dash and never by colour alone, so
 * that a black-and-white print says the same.
 */
public enum Ink {
  /** What is cut, or the outline of a thing. */
  CUT(1.4, "", "#111"),
  /** A seam or stitch line. */
  SEAM(0.9, "5 2.5", "#111"),
  /** A fold. */
  FOLD(0.8, "7 2 1.5 2", "#111"),
  /** Thin lines: dimensions, grids, leaders. */
  THIN(0.5, "", "#555"),
  /** Dotted helper lines. */
  DOTTED(0.7, "1 2.5", "#333"),
  /** A heavy line: a reinforced edge, a critical path. */
  HEAVY(2.6, "", "#111");

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
