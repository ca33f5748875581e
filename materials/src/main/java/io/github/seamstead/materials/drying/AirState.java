package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * The air over the floor.
 *
 * @param temperature in °C, more than 0; at most 60 °C: wet earth that freezes is spoilt
 * @param relativeHumidity 0 to 1
 * @param speed along the floor, in m/s, more than 0; 0.01 to 30 m/s
 */
public record AirState(double temperature, double relativeHumidity, double speed) {

  public AirState {
    requireNoFrost(temperature);
    Args.require(
        relativeHumidity >= 0 && relativeHumidity <= 1,
        "relative humidity",
        Numbers.plain(relativeHumidity),
        "must be from 0 to 1 (0 to 100 %)");
    Args.require(
        speed >= 0.01 && speed <= 30,
        "air speed",
        Numbers.plain(speed) + " m/s",
        "must be from 0.01 to 30 m/s",
        "still air in a closed shelter moves at about 0.1 m/s");
  }

  static void requireNoFrost(double temperature) {
    Args.finite("air temperature", temperature, "degC");
    Args.agree(
        temperature > 0,
        "air temperature: given " + Numbers.plain(temperature) + " degC, frost",
        "must be above 0 degC, since wet earth that freezes crumbles. Heat the room or wait");
    Args.within("air temperature", temperature, 0, 60, "degC");
  }

  /**
   * Gives the vapour pressure.
   *
   * @return in Pa
   */
  public double vapourPressure() {
    return relativeHumidity * Psychrometrics.saturationPressure(temperature);
  }

  /**
   * Changes the air as shading, heating or opening does. The vapour pressure stays, so that warmer
   * air has the lower relative humidity; air cooled below its dew point is saturated.
   *
   * @param temperatureShift in K
   * @param speedFactor more than 0
   * @return the changed air
   * @throws IllegalArgumentException as the constructor does
   */
  public AirState changed(double temperatureShift, double speedFactor) {
    double warmer = temperature + temperatureShift;
    double humidity =
        warmer > 0 && warmer <= 60
            ? Math.min(1, vapourPressure() / Psychrometrics.saturationPressure(warmer))
            : relativeHumidity;
    return new AirState(warmer, humidity, speed * speedFactor);
  }
}
