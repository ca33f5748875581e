package io.github.seamstead.materials.drying;

import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * Evaporation from a wet surface: the constant-rate period of drying.
 *
 * <p>Formulas of this kind scatter by ± 40 % (Hover, ACI SP-338, 2020).
 */
public final class Evaporation {

  /** How far evaporation formulas scatter: a factor either way. */
  public static final double SCATTER = 1.4;

  private static final Source CONVECTION =
      Source.fromMemory(
          "Watmuff, Charters and Proctor",
          "Solar and wind induced external coefficients",
          "1977",
          "h = 2.8 + 3.0 v");
  private static final Source LEWIS =
      Source.fromMemory("Chilton and Colburn", "Analogy of heat and mass transfer", "1934", "");
  private static final Source PENMAN =
      Source.fromMemory("Penman", "Natural evaporation", "1948", "linearised surface balance");

  /**
   * Density × heat capacity of air × (Lewis number)^(2/3), in J/(m³ K): 1.20 × 1006 × 0.87^(2/3).
   */
  private static final double AIR_HEAT = 1.20 * 1006 * StrictMath.pow(0.87, 2.0 / 3);

  /** Exchange of long-wave radiation with a room of air temperature, in W/(m² K): 4 σ T³ × 0.95. */
  private static final double RADIATION = 5.4;

  private Evaporation() {}

  /**
   * Gives the convective mass-transfer coefficient: h / (ρ c Le^(2/3)) with h = 2.8 + 3.0 v.
   *
   * @param speed along the surface, in m/s, 0 to 30
   * @return in m/s
   * @throws IllegalArgumentException if the speed is out of range
   */
  public static double massTransferCoefficient(double speed) {
    return convection(speed) / AIR_HEAT;
  }

  private static double convection(double speed) {
    return 2.8 + 3.0 * Args.within("air speed", speed, 0, 30, "m/s");
  }

  /**
   * Computes evaporation from a wet floor in the shade, which its own evaporation cools: the
   * coefficient falls by 1 + L β Δ / (h + h_r), so that heat and vapour balance. In full it is
   * β_eff (ρ_sat(T) − ρ).
   *
   * @param air the air
   * @param steps receives the coefficients, the cooling and the result
   * @return in kg/(m² s), 0 or more
   */
  @Calculation("materials.drying.evaporation")
  public static double wetFloor(AirState air, Steps steps) {
    double potential = potential(air, steps);
    return steps
        .step("E", "evaporation of the wet floor")
        .formula("k * (1 - r)")
        .with("k", potential, "kg/(m2 s)")
        .with("r", air.relativeHumidity(), "")
        .gives(potential * (1 - air.relativeHumidity()), "kg/(m2 s)");
  }

  /** Evaporation into bone-dry air; what the surface gives is this × (activity − humidity). */
  static double potential(AirState air, Steps steps) {
    double temperature = air.temperature();
    double convection =
        steps
            .step("h", "convection")
            .formula("2.8 + 3.0 * v")
            .with("v", air.speed(), "m/s")
            .from(CONVECTION)
            .gives(convection(air.speed()), "W/(m2 K)");
    double transfer =
        steps
            .step("beta", "mass-transfer coefficient")
            .formula("h / c")
            .with("h", convection, "W/(m2 K)")
            .with("c", AIR_HEAT, "J/(m3 K)")
            .from(LEWIS)
            .gives(convection / AIR_HEAT, "m/s");
    double pressure = Psychrometrics.saturationPressure(temperature, steps);
    double gas = Psychrometrics.VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS);
    double density =
        steps
            .step("rho_s", "vapour density at saturation")
            .formula("e_s / (461.5 * (T + 273.15))")
            .with("e_s", pressure, "Pa")
            .with("T", temperature, "degC")
            .gives(pressure / gas, "kg/m3");
    double span = temperature + 237.3;
    double relativeSlope = 17.27 * 237.3 / (span * span) - 1 / (temperature + ZERO_CELSIUS);
    double slope =
        steps
            .step("Delta", "rise of the vapour density with temperature")
            .formula("rho_s * (17.27 * 237.3 / (T + 237.3)^2 - 1 / (T + 273.15))")
            .with("rho_s", density, "kg/m3")
            .with("T", temperature, "degC")
            .gives(density * relativeSlope, "kg/(m3 K)");
    double latent =
        steps
            .step("L", "heat of evaporation")
            .formula("2501000 - 2361 * T")
            .with("T", temperature, "degC")
            .from(Psychrometrics.FAO_56.at("annex 3, latent heat"))
            .gives(2_501_000 - 2361 * temperature, "J/kg");
    double effective =
        steps
            .step("beta_e", "coefficient with the surface cooled by its evaporation")
            .formula("beta / (1 + L * beta * Delta / (h + h_r))")
            .with("beta", transfer, "m/s")
            .with("L", latent, "J/kg")
            .with("Delta", slope, "kg/(m3 K)")
            .with("h", convection, "W/(m2 K)")
            .with("h_r", RADIATION, "W/(m2 K)")
            .from(PENMAN)
            .gives(transfer / (1 + latent * transfer * slope / (convection + RADIATION)), "m/s");
    return steps
        .step("k", "evaporation into dry air")
        .formula("beta_e * rho_s")
        .with("beta_e", effective, "m/s")
        .with("rho_s", density, "kg/m3")
        .gives(effective * density, "kg/(m2 s)");
  }
}
