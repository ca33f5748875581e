package io.github.seamstead.shared.quantity;

/** Constants of nature and of convention that several calculations share, each stated once. */
public final class PhysicalConstants {
  /**
   * Standard acceleration of free fall, in m/s2; exact by convention (3rd General Conference on
   * Weights and Measures, 1901; NIST SP 811, appendix B.8, from memory). Local values differ from
   * it by up to 0.3 %.
   */
  public static final double STANDARD_GRAVITY = 9.80665;

  /**
   * Zero of the Celsius scale, in kelvin; exact by definition (SI Brochure, 9th edition, section
   * 2.3.1, from memory).
   */
  public static final double ZERO_CELSIUS = 273.15;

  /**
   * Density of water as builders weigh it, in kg/m3: 999.97 at its greatest, 998.2 at 20 degrees
   * Celsius (common practice). Where the temperature counts, the calculation states its own.
   */
  public static final double WATER_DENSITY = 1000;

  /**
   * The inch, in metres; exact by the international yard and pound agreement of 1959 (from memory).
   */
  public static final double INCH = 0.0254;

  private PhysicalConstants() {}
}
