package io.github.seamstead.assembly.fixings;

/** Cross-section of a bead. */
public enum BeadShape {
  /** A round bead as it leaves the nozzle: {@code pi / 4 w^2}. */
  ROUND("round bead", "pi / 4 * w^2"),
  /** A half-round bead on a surface: {@code pi / 8 w^2}. */
  HALF_ROUND("half-round bead", "pi / 8 * w^2"),
  /** A fillet in a corner: {@code w d / 2}. */
  FILLET("fillet", "w * d / 2"),
  /** A filled joint, or a film spread on a lap: {@code w d}. */
  RECTANGLE("rectangle", "w * d");

  private final String label;
  private final String formula;

  BeadShape(String label, String formula) {
    this.label = label;
    this.formula = formula;
  }

  /**
   * Names the shape.
   *
   * @return for example {@code half-round bead}
   */
  public String label() {
    return label;
  }

  String formula() {
    return formula;
  }
}
