package io.github.seamstead.assembly.anchor;

/** Densities of air that codes and handbooks use; they spread by 4 %. */
public enum AirDensity {
  /** EN 1991-1-4: 1.25 kg/m³. The greatest, and the one used unless another is named. */
  EUROPEAN("EN 1991-1-4", 1.25),
  /** The constant 0.613 of ASCE 7: 1.226 kg/m³. */
  AMERICAN("ASCE 7", 1.226),
  /** Handbook tables: 1.2 kg/m³, air at about 20 degC. */
  HANDBOOK("handbook tables", 1.2);

  private final String label;
  private final double density;

  AirDensity(String label, double density) {
    this.label = label;
    this.density = density;
  }

  /**
   * Names who uses it.
   *
   * @return for example {@code EN 1991-1-4}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the density.
   *
   * @return in kg/m³
   */
  public double density() {
    return density;
  }
}
