package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The weather while the floor dries: one mean, or week after week.
 *
 * @param temperature mean air temperature, in degrees Celsius, if stated
 * @param humidity mean relative humidity of the air, as a part of one, if stated
 * @param wetBulb temperature of the wet bulb, in degrees Celsius, if stated
 * @param airSpeed mean air speed over the floor, in metres per second, if stated
 * @param weeks week after week; empty if a mean is stated
 * @param laid the day on which the lowest mixed layer is laid, if stated
 * @param tiles test tiles of the mixes
 * @param horizon how far the forecast looks, in seconds
 * @param airChanges how often the air under the cover is renewed in a day, if stated
 * @param roomVolume volume of the air under the cover, in cubic metres, if stated
 */
public record Weather(
    Optional<Double> temperature,
    Optional<Double> humidity,
    Optional<Double> wetBulb,
    Optional<Double> airSpeed,
    List<WeatherWeek> weeks,
    Optional<LocalDate> laid,
    List<TileTest> tiles,
    double horizon,
    Optional<Integer> airChanges,
    Optional<Double> roomVolume) {

  /**
   * Copies the lists.
   *
   * @param temperature mean air temperature, in degrees Celsius, if stated
   * @param humidity mean relative humidity of the air, as a part of one, if stated
   * @param wetBulb temperature of the wet bulb, in degrees Celsius, if stated
   * @param airSpeed mean air speed over the floor, in metres per second, if stated
   * @param weeks week after week; empty if a mean is stated
   * @param laid the day on which the lowest mixed layer is laid, if stated
   * @param tiles test tiles of the mixes
   * @param horizon how far the forecast looks, in seconds
   * @param airChanges how often the air under the cover is renewed in a day, if stated
   * @param roomVolume volume of the air under the cover, in cubic metres, if stated
   */
  public Weather {
    weeks = List.copyOf(weeks);
    tiles = List.copyOf(tiles);
  }
}
