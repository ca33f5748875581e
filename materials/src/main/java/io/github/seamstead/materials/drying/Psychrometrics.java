package io.github.seamstead.materials.drying;

import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Water vapour in air, after FAO Irrigation and Drainage Paper 56. Pressures in pascals,
 * temperatures in degrees Celsius from −40 to 60, relative humidity 0 to 1.
 */
public final class Psychrometrics {

  /** Source of the formulas. */
  public static final Source FAO_56 =
      Source.found(
          "Allen, Pereira, Raes and Smith", "FAO Irrigation and Drainage Paper 56", "1998", "");

  /** Specific gas constant of water vapour, in J/(kg K). */
  public static final double VAPOUR_GAS_CONSTANT = 461.5;

  private Psychrometrics() {}

  /**
   * Gives the saturation vapour pressure over water: e° = 610.8 exp(17.27 T / (T + 237.3)).
   *
   * @param temperature in °C, −40 to 60
   * @return in Pa
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public static double saturationPressure(double temperature) {
    return saturationPressure(temperature, Steps.none());
  }

  /**
   * Computes the saturation vapour pressure over water (eq. 11).
   *
   * @param temperature in °C, −40 to 60
   * @param steps receives the formula
   * @return in Pa
   * @throws IllegalArgumentException if the temperature is out of range
   */
  @Calculation("materials.drying.saturation-pressure")
  public static double saturationPressure(double temperature, Steps steps) {
    Args.within("air temperature", temperature, -40, 60, "degC");
    return steps
        .step("e_s", "saturation vapour pressure")
        .formula("610.8 * exp(17.27 * T / (T + 237.3))")
        .with("T", temperature, "degC")
        .from(FAO_56.at("eq. 11"))
        .gives(610.8 * StrictMath.exp(17.27 * temperature / (temperature + 237.3)), "Pa");
  }

  /**
   * Gives the slope of the saturation vapour pressure (eq. 13).
   *
   * @param temperature in °C, −40 to 60
   * @return in Pa/K
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public static double saturationSlope(double temperature) {
    double span = temperature + 237.3;
    return 17.27 * 237.3 * saturationPressure(temperature) / (span * span);
  }

  /**
   * Gives the mean saturation pressure of a day: the mean of the pressures at its highest and
   * lowest temperature (eq. 12), which is more than the pressure at the mean temperature.
   *
   * @param highest in °C
   * @param lowest in °C, at most {@code highest}
   * @return in Pa
   * @throws IllegalArgumentException if the lowest is above the highest or out of range
   */
  public static double meanSaturationPressure(double highest, double lowest) {
    Args.require(
        lowest <= highest,
        "day temperatures: given lowest "
            + Numbers.plain(lowest)
            + " above highest "
            + Numbers.plain(highest)
            + " degC");
    return (saturationPressure(highest) + saturationPressure(lowest)) / 2;
  }

  /**
   * Gives the air pressure at an altitude (eq. 7).
   *
   * @param altitude in metres, −430 to 6000
   * @return in Pa
   * @throws IllegalArgumentException if the altitude is out of range
   */
  public static double airPressure(double altitude) {
    Args.within("altitude", altitude, -430, 6000, "m");
    return 101_300 * StrictMath.pow((293 - 0.0065 * altitude) / 293, 5.26);
  }

  /**
   * Computes the vapour pressure from a ventilated wet and dry bulb (eq. 15): e = e°(Tw) − 0.000662
   * P (T − Tw).
   *
   * @param dryBulb in °C
   * @param wetBulb in °C, at most {@code dryBulb}
   * @param pressure air pressure, in Pa, 40 000 to 110 000
   * @param steps receives both pressures
   * @return in Pa
   * @throws IllegalArgumentException if a value is out of range or the bulbs are too far apart for
   *     any humidity
   */
  @Calculation("materials.drying.wet-bulb")
  public static double vapourPressureFromWetBulb(
      double dryBulb, double wetBulb, double pressure, Steps steps) {
    Args.within("dry bulb", dryBulb, -40, 60, "degC");
    Args.within("wet bulb", wetBulb, -40, dryBulb, "degC");
    Args.within("air pressure", pressure, 40_000, 110_000, "Pa");
    double saturation =
        steps
            .step("e_w", "saturation vapour pressure at the wet bulb")
            .formula("610.8 * exp(17.27 * T_w / (T_w + 237.3))")
            .with("T_w", wetBulb, "degC")
            .from(FAO_56.at("eq. 11"))
            .gives(saturationPressure(wetBulb), "Pa");
    double vapour =
        steps
            .step("e", "vapour pressure of the air")
            .formula("e_w - 0.000662 * P * (T - T_w)")
            .with("e_w", saturation, "Pa")
            .with("P", pressure, "Pa")
            .with("T", dryBulb, "degC")
            .with("T_w", wetBulb, "degC")
            .from(FAO_56.at("eq. 15 and 16, ventilated"))
            .gives(saturation - 0.000662 * pressure * (dryBulb - wetBulb), "Pa");
    Args.agree(
        vapour > 0,
        "wet bulb: given "
            + Numbers.plain(wetBulb)
            + " degC with dry bulb "
            + Numbers.plain(dryBulb)
            + " degC, no air is that dry",
        "wet the wick and read again");
    return vapour;
  }

  /**
   * Gives the relative humidity.
   *
   * @param vapourPressure in Pa, 0 or more
   * @param temperature in °C
   * @return vapour over saturation pressure; above 1 where the air is supersaturated
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double relativeHumidity(double vapourPressure, double temperature) {
    return Args.notNegative("vapour pressure", vapourPressure, "Pa")
        / saturationPressure(temperature);
  }

  /**
   * Gives the dew point, the inverse of the saturation pressure.
   *
   * @param vapourPressure in Pa, 20 to 19 000
   * @return in °C
   * @throws IllegalArgumentException if the pressure is out of range
   */
  public static double dewPoint(double vapourPressure) {
    Args.within("vapour pressure", vapourPressure, 20, 19_000, "Pa");
    double log = StrictMath.log(vapourPressure / 610.8);
    return 237.3 * log / (17.27 - log);
  }

  /**
   * Gives the density of water vapour by the gas law.
   *
   * @param vapourPressure in Pa, 0 or more
   * @param temperature in °C
   * @return in kg/m³
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double vapourDensity(double vapourPressure, double temperature) {
    Args.notNegative("vapour pressure", vapourPressure, "Pa");
    Args.within("air temperature", temperature, -40, 60, "degC");
    return vapourPressure / (VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS));
  }

  /**
   * Brings a wind speed to 2 m over short grass (eq. 47).
   *
   * @param speed in m/s, 0 or more
   * @param height height of the reading, in metres, 0.5 to 100
   * @return in m/s
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double windAtTwoMetres(double speed, double height) {
    Args.notNegative("wind speed", speed, "m/s");
    Args.within("height of the wind reading", height, 0.5, 100, "m");
    return speed * 4.87 / StrictMath.log(67.8 * height - 5.42);
  }
}
