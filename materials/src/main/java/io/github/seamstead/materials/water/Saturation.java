package io.github.seamstead.materials.water;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/** How much water a packed earth can hold: with every pore full. */
public final class Saturation {

  /** Density of the grains of soil and sand, in kg/m³ (common practice). */
  public static final double GRAINS = 2650;

  private static final Source PORES = Source.derived("all pores full of water");

  private Saturation() {}

  /**
   * Computes the moisture at which all pores are full: ρ_w / ρ_d − ρ_w / ρ_s.
   *
   * @param dryDensity dry mass over volume of the packed earth, in kg/m³, 300 to {@code
   *     grainDensity}
   * @param grainDensity density of the grains, in kg/m³, 2000 to 3500
   * @param steps receives the formula
   * @return water over dry mass, 0 or more
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.water.saturation")
  public static double moisture(double dryDensity, double grainDensity, Steps steps) {
    Args.within("grain density", grainDensity, 2000, 3500, "kg/m3");
    Args.within("dry density", dryDensity, 300, grainDensity, "kg/m3");
    return steps
        .step("w_s", "moisture with all pores full")
        .formula("rho_w / rho_d - rho_w / rho_s")
        .with("rho_w", WATER_DENSITY, "kg/m3")
        .with("rho_d", dryDensity, "kg/m3")
        .with("rho_s", grainDensity, "kg/m3")
        .from(PORES)
        .gives(WATER_DENSITY / dryDensity - WATER_DENSITY / grainDensity, "");
  }

  /**
   * Gives the moisture at which all pores are full, with grains of {@link #GRAINS}.
   *
   * @param dryDensity in kg/m³, 300 to 2650
   * @return water over dry mass
   * @throws IllegalArgumentException if the density is out of range
   */
  public static double moisture(double dryDensity) {
    return moisture(dryDensity, GRAINS, Steps.none());
  }

  /**
   * Gives the greatest dry density that can hold a moisture.
   *
   * @param moisture water over dry mass, 0 or more
   * @return in kg/m³, with grains of {@link #GRAINS}
   * @throws IllegalArgumentException if the moisture is negative
   */
  public static double densestAt(double moisture) {
    Args.notNegative("moisture", moisture, "");
    return WATER_DENSITY / (moisture + WATER_DENSITY / GRAINS);
  }
}
