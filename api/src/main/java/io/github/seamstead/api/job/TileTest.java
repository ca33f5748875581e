package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * A tile of a mix in a tray, weighed as it dries.
 *
 * @param mix the mix, by its id under floor
 * @param thickness thickness of the tile, in metres
 * @param area its open face, in square metres
 * @param moisture water over dry mass when it was filled, as a part of one
 * @param weighings in the order of time
 * @param scale standard uncertainty of a weighing, in kilograms
 * @param temperature temperature where it stood, in degrees Celsius
 * @param humidity relative humidity there, as a part of one, if stated
 * @param wetBulb temperature of a wet bulb there, in degrees Celsius, if stated
 * @param airSpeed air speed there, in metres per second
 */
public record TileTest(
    String mix,
    double thickness,
    double area,
    double moisture,
    List<TileWeighing> weighings,
    double scale,
    double temperature,
    Optional<Double> humidity,
    Optional<Double> wetBulb,
    double airSpeed) {

  /**
   * Copies the lists.
   *
   * @param mix the mix, by its id under floor
   * @param thickness thickness of the tile, in metres
   * @param area its open face, in square metres
   * @param moisture water over dry mass when it was filled, as a part of one
   * @param weighings in the order of time
   * @param scale standard uncertainty of a weighing, in kilograms
   * @param temperature temperature where it stood, in degrees Celsius
   * @param humidity relative humidity there, as a part of one, if stated
   * @param wetBulb temperature of a wet bulb there, in degrees Celsius, if stated
   * @param airSpeed air speed there, in metres per second
   */
  public TileTest {
    weighings = List.copyOf(weighings);
  }
}
