package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;

/**
 * How moisture moves in the earth and what it holds against the air.
 *
 * <p>The diffusivity is D(u) = D_dry (D_wet / D_dry)^(u / u_wet) up to u_wet and D_wet above, with
 * u the moisture, water over dry mass. The air above the surface at moisture u is as humid as a(u)
 * = 1 − exp(−c u^m) (Henderson's form, 1952; from memory), with c and m from the moistures at 50 %
 * and 80 % relative humidity.
 *
 * @param dryDiffusivity D_dry at 20 °C, in m²/s; 1e-13 to 1e-6 m²/s
 * @param wetDiffusivity D_wet at 20 °C, in m²/s; 1e-13 to 1e-6 m²/s, at least {@code
 *     dryDiffusivity}, at most 1000 times it
 * @param wetMoisture u_wet at which D is D_wet; 0.02 to 1
 * @param moistureAt50 moisture in balance with air of 50 %; 0.0005 to 0.2
 * @param moistureAt80 moisture in balance with air of 80 %; 1.1 to 2.3 times {@code moistureAt50},
 *     so that m is more than 1
 */
public record EarthMoisture(
    double dryDiffusivity,
    double wetDiffusivity,
    double wetMoisture,
    double moistureAt50,
    double moistureAt80) {

  /** How far published diffusivities scatter about a middle value: tenfold from end to end. */
  public static final double SCATTER = Math.sqrt(10);

  public EarthMoisture {
    Args.within("dry diffusivity", dryDiffusivity, 1e-13, 1e-6, "m2/s");
    Args.within("wet diffusivity", wetDiffusivity, dryDiffusivity, 1000 * dryDiffusivity, "m2/s");
    Args.within("wet moisture", wetMoisture, 0.02, 1, "");
    Args.within("moisture at 50 % humidity", moistureAt50, 0.0005, 0.2, "");
    Args.within(
        "moisture at 80 % humidity", moistureAt80, 1.1 * moistureAt50, 2.3 * moistureAt50, "");
  }

  /**
   * Makes earth for a sandy floor mix: 3e-10 m²/s dry (a published value for brick clay while
   * drying is 3.34e-10) rising tenfold to 20 % moisture; 1.2 % and 2 % of moisture in balance with
   * 50 and 80 % humidity (common practice). Weigh a test tile to narrow it.
   *
   * @return the earth
   */
  public static EarthMoisture sandyMix() {
    return new EarthMoisture(3e-10, 3e-9, 0.20, 0.012, 0.020);
  }

  /**
   * Scales both diffusivities.
   *
   * @param factor more than 0
   * @return the scaled earth
   * @throws IllegalArgumentException if the result is out of range
   */
  public EarthMoisture timesDiffusivity(double factor) {
    return new EarthMoisture(
        dryDiffusivity * factor, wetDiffusivity * factor, wetMoisture, moistureAt50, moistureAt80);
  }

  /**
   * Gives the diffusivity.
   *
   * @param moisture water over dry mass, 0 to 1
   * @return D(u) at 20 °C, in m²/s
   * @throws IllegalArgumentException if the moisture is out of range
   */
  public double diffusivity(double moisture) {
    Args.within("moisture", moisture, 0, 1, "");
    return dryDiffusivity * StrictMath.exp(growth() * Math.min(moisture, wetMoisture));
  }

  /**
   * Gives the moisture in balance with air.
   *
   * @param relativeHumidity 0 to 0.999
   * @return water over dry mass
   * @throws IllegalArgumentException if the humidity is out of range
   */
  public double equilibriumMoisture(double relativeHumidity) {
    Args.within("relative humidity", relativeHumidity, 0, 0.999, "");
    return StrictMath.pow(-StrictMath.log1p(-relativeHumidity) / scale(), 1 / exponent());
  }

  /** Exponent a of D = D_dry exp(a u). */
  double growth() {
    return StrictMath.log(wetDiffusivity / dryDiffusivity) / wetMoisture;
  }

  double exponent() {
    return StrictMath.log(StrictMath.log(0.2) / StrictMath.log(0.5))
        / StrictMath.log(moistureAt80 / moistureAt50);
  }

  double scale() {
    return StrictMath.log(2) / StrictMath.pow(moistureAt50, exponent());
  }
}
