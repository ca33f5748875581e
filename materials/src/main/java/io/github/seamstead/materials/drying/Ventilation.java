package io.github.seamstead.materials.drying;

import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * The air of a covered room that a drying floor makes damp, and the air changes that carry its
 * water off.
 *
 * <p>The floor gives k A (a − r), with k the evaporation into dry air, A its area, a the activity
 * of its surface and r the humidity inside; the air change takes Q ρ_s (r − r_o) out, with Q the
 * flow of air, ρ_s the vapour density at saturation and r_o the humidity outside, at one
 * temperature. Both being equal, the room acts as a second resistance: the floor dries into the
 * outer air with k Q ρ_s / (k A + Q ρ_s) in place of k.
 *
 * @param changesPerDay how often the air of the room is renewed in a day; 0.1 to 20 000
 * @param roomVolume in m³; 0.01 to 100 000 m³
 * @param floorArea that dries, in m²; more than 0, at most 100 000 m²
 */
public record Ventilation(double changesPerDay, double roomVolume, double floorArea) {

  /** Air changes a day of a cover that is shut: half a change in an hour (common practice). */
  public static final double SHUT = 12;

  private static final Source BALANCE = Source.derived("mass balance of vapour in the room");

  public Ventilation {
    Args.within("air changes a day", changesPerDay, 0.1, 20_000, "");
    Args.within("room volume", roomVolume, 0.01, 100_000, "m3");
    Args.positive("floor area", floorArea, "m2");
    Args.within("floor area", floorArea, 0, 100_000, "m2");
  }

  /**
   * Gives the humidity over a floor that is wet all over.
   *
   * @param outside the air outside; its speed is that along the floor
   * @return (k A + Q ρ_s r_o) / (k A + Q ρ_s), 0 to 1
   */
  public double humidityOverWetFloor(AirState outside) {
    return humidityOverWetFloor(outside, Steps.none());
  }

  /**
   * Computes the humidity over a floor that is wet all over.
   *
   * @param outside the air outside; its speed is that along the floor
   * @param steps receives the evaporation into dry air, the vapour taken out and the balance
   * @return 0 to 1
   */
  @Calculation("materials.drying.closed-cover")
  public double humidityOverWetFloor(AirState outside, Steps steps) {
    double potential = Evaporation.potential(outside, steps);
    double given =
        steps
            .step("G", "evaporation of the whole floor into dry air")
            .formula("k * A")
            .with("k", potential, "kg/(m2 s)")
            .with("A", floorArea, "m2")
            .gives(potential * floorArea, "kg/s");
    double taken =
        steps
            .step("T_v", "vapour that the air change can take, from dry to saturated")
            .formula("n * V / 86400 * rho_s")
            .with("n", changesPerDay, "")
            .with("V", roomVolume, "m3")
            .with("rho_s", saturationDensity(outside.temperature()), "kg/m3")
            .gives(taken(outside), "kg/s");
    double r = outside.relativeHumidity();
    return steps
        .step("r", "humidity inside")
        .formula("(G + T_v * r_o) / (G + T_v)")
        .with("G", given, "kg/s")
        .with("T_v", taken, "kg/s")
        .with("r_o", r, "")
        .from(BALANCE)
        .gives((given + taken * r) / (given + taken), "");
  }

  /**
   * Computes the air changes that carry water off: m / (V ρ_s (r_l − r_i)).
   *
   * @param waterPerDay that the floor gives, in kg, 0 or more
   * @param roomVolume in m³, greater than 0
   * @param temperature in °C, more than 0, at most 60
   * @param incoming humidity of the air that comes in, 0 to 1
   * @param leaving humidity of the air that leaves, above {@code incoming}, at most 1
   * @param steps receives the vapour density and the quotient
   * @return air changes a day
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.drying.air-changes")
  public static double changesFor(
      double waterPerDay,
      double roomVolume,
      double temperature,
      double incoming,
      double leaving,
      Steps steps) {
    Args.notNegative("water given in a day", waterPerDay, "kg");
    Args.positive("room volume", roomVolume, "m3");
    AirState.requireNoFrost(temperature);
    Args.within("humidity of the air that comes in", incoming, 0, 1, "");
    Args.require(
        leaving > incoming && leaving <= 1,
        "humidity of the air that leaves",
        Numbers.plain(leaving),
        "must be above that of the air that comes in, "
            + Numbers.plain(incoming)
            + ", and at most 1");
    double density =
        steps
            .step("rho_s", "vapour density at saturation")
            .formula("e_s / (461.5 * (T + 273.15))")
            .with("e_s", Psychrometrics.saturationPressure(temperature), "Pa")
            .with("T", temperature, "degC")
            .gives(saturationDensity(temperature), "kg/m3");
    return steps
        .step("n", "air changes a day")
        .formula("m / (V * rho_s * (r_l - r_i))")
        .with("m", waterPerDay, "kg")
        .with("V", roomVolume, "m3")
        .with("rho_s", density, "kg/m3")
        .with("r_l", leaving, "")
        .with("r_i", incoming, "")
        .from(BALANCE)
        .gives(waterPerDay / (roomVolume * density * (leaving - incoming)), "");
  }

  /** What is left of the exchange between floor and outer air; k is scaled by a doubt. */
  double exchangeLeft(AirState outside, double doubt) {
    double given = doubt * Evaporation.potential(outside, Steps.none()) * floorArea;
    double taken = taken(outside);
    return taken / (given + taken);
  }

  private double taken(AirState outside) {
    return changesPerDay * roomVolume / Weather.DAY * saturationDensity(outside.temperature());
  }

  private static double saturationDensity(double temperature) {
    return Psychrometrics.saturationPressure(temperature)
        / (Psychrometrics.VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS));
  }
}
