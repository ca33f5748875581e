package io.github.seamstead.api.job;

import java.util.List;

/**
 * A hydrometer analysis.
 *
 * @param readings readings in the order of time
 * @param soilPerVolume dry soil over volume of the suspension; g/l is kg/m3, in kilograms per cubic
 *     metre
 * @param temperature temperature of the suspension, in degrees Celsius
 * @param blank reading in water with dispersant alone, in kilograms per cubic metre
 * @param particleDensity density of the grains, in kilograms per cubic metre
 */
public record HydrometerSheet(
    List<HydrometerReading> readings,
    double soilPerVolume,
    double temperature,
    double blank,
    double particleDensity) {

  /**
   * Copies the lists.
   *
   * @param readings readings in the order of time
   * @param soilPerVolume dry soil over volume of the suspension; g/l is kg/m3, in kilograms per
   *     cubic metre
   * @param temperature temperature of the suspension, in degrees Celsius
   * @param blank reading in water with dispersant alone, in kilograms per cubic metre
   * @param particleDensity density of the grains, in kilograms per cubic metre
   */
  public HydrometerSheet {
    readings = List.copyOf(readings);
  }
}
