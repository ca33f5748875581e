package io.github.seamstead.materials.water;

/** What can be known about the three phases of a soil: grains, water and air. */
public enum PhaseQuantity {
  /** Density of the grains over that of water. */
  SPECIFIC_GRAVITY("specific gravity of the grains", "", 1, 6),
  /** Volume of voids over volume of grains. */
  VOID_RATIO("void ratio", "", 1e-3, 20),
  /** Volume of voids over whole volume. */
  POROSITY("porosity", "", 1e-3, 0.99),
  /** Water over dry mass. */
  MOISTURE("moisture on the dry basis", "", 0, 20),
  /** Water over wet mass. */
  MOISTURE_WET_BASIS("moisture on the wet basis", "", 0, 0.95),
  /** Volume of water over volume of voids. */
  SATURATION("degree of saturation", "", 0, 1),
  /** Volume of air over whole volume. */
  AIR_CONTENT("air content", "", 0, 0.99),
  /** Dry mass over whole volume, in kg/m³. */
  DRY_DENSITY("dry density", "kg/m3", 50, 6000),
  /** Wet mass over whole volume, in kg/m³. */
  BULK_DENSITY("bulk density", "kg/m3", 50, 6000);

  private final String label;
  private final String unit;
  private final double least;
  private final double greatest;

  PhaseQuantity(String label, String unit, double least, double greatest) {
    this.label = label;
    this.unit = unit;
    this.least = least;
    this.greatest = greatest;
  }

  /**
   * Names the quantity as the book prints it.
   *
   * @return for example {@code void ratio}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the unit.
   *
   * @return {@code kg/m3}, or empty for a pure number
   */
  public String unit() {
    return unit;
  }

  double least() {
    return least;
  }

  double greatest() {
    return greatest;
  }
}
