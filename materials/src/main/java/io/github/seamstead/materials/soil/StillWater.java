package io.github.seamstead.materials.soil;

import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import io.github.seamstead.shared.source.Source;

/** Density and viscosity of still water at atmospheric pressure. */
final class StillWater {

  static final Source VISCOSITY =
      Source.fromMemory(
          "IAPWS", "Supplementary Release on Properties of Liquid Water at 0.1 MPa", "2008", "");
  static final Source DENSITY =
      Source.fromMemory(
          "Tanaka et al.",
          "Recommended table for the density of water, Metrologia 38",
          "2001",
          "eq. 1");

  private StillWater() {}

  /** mu = 1e-6 (280.68 T^-1.9 + 511.45 T^-7.7 + 61.131 T^-19.6 + 0.45903 T^-40), T in 300 K. */
  static double viscosity(double celsius) {
    double t = (celsius + ZERO_CELSIUS) / 300;
    return 1e-6
        * (280.68 * StrictMath.pow(t, -1.9)
            + 511.45 * StrictMath.pow(t, -7.7)
            + 61.131 * StrictMath.pow(t, -19.6)
            + 0.45903 * StrictMath.pow(t, -40));
  }

  static double density(double celsius) {
    double shifted = celsius - 3.983035;
    return 999.97495
        * (1 - shifted * shifted * (celsius + 301.797) / (522528.9 * (celsius + 69.34881)));
  }
}
