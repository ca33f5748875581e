package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * From a code's basic wind speed, a ten-minute mean at 10 m, to the gust at the height of the
 * cover: {@code v = v_b sqrt(c_e)}, {@code c_e = (1 + 7 / ln(z / z_0)) (k_r ln(z / z_0))^2}, flat
 * ground.
 *
 * <p>Use it where the local code prints a mean. Where it prints a gust, that gust goes straight
 * into {@link WindPressure}: to raise it again would count gusts twice.
 *
 * @param basic basic wind speed, a ten-minute mean, in m/s, greater than 0, at most 60
 * @param terrain what the country upwind looks like
 * @param height height of the cover, in metres, greater than 0, at most 200
 */
public record PeakWind(double basic, Terrain terrain, double height) {

  private static final Source EN =
      Source.fromMemory(
          "CEN", "EN 1991-1-4 Actions on structures: wind", "2005", "eq. 4.3 to 4.8, flat ground");

  public PeakWind {
    Args.positive("basic wind speed", basic, "m/s");
    Args.within("basic wind speed", basic, 0, 60, "m/s");
    Args.positive("height of the cover", height, "m");
    Args.within("height of the cover", height, 0, 200, "m");
  }

  /**
   * Raises a mean to a gust.
   *
   * @param basic basic wind speed, a ten-minute mean, in m/s
   * @param terrain what the country upwind looks like
   * @param height height of the cover, in metres
   * @return the wind
   * @throws IllegalArgumentException if a number is out of range
   */
  public static PeakWind of(double basic, Terrain terrain, double height) {
    return new PeakWind(basic, terrain, height);
  }

  /**
   * Computes the terrain factor k_r.
   *
   * @return {@code 0.19 (z_0 / 0.05)^0.07}
   */
  public double terrainFactor() {
    return 0.19 * StrictMath.pow(terrain.roughness() / 0.05, 0.07);
  }

  /**
   * Computes the roughness factor c_r: mean at the height over basic wind speed.
   *
   * @return {@code k_r ln(z / z_0)}
   */
  public double roughnessFactor() {
    return terrainFactor() * heightLog();
  }

  /**
   * Computes the turbulence intensity at the height.
   *
   * @return {@code 1 / ln(z / z_0)}
   */
  public double turbulence() {
    return 1 / heightLog();
  }

  /**
   * Computes the exposure factor c_e: peak over basic pressure.
   *
   * @return {@code (1 + 7 I) c_r^2}
   */
  public double exposureFactor() {
    return (1 + 7 * turbulence()) * roughnessFactor() * roughnessFactor();
  }

  /**
   * Computes the gust at the height of the cover.
   *
   * @return in m/s
   */
  public double gust() {
    return gust(Steps.none());
  }

  /**
   * Computes the gust at the height of the cover with the steps.
   *
   * @param steps where the steps go
   * @return in m/s
   */
  @Calculation("assembly.anchor.gust")
  public double gust(Steps steps) {
    double factor =
        steps
            .step("k_r", "terrain factor")
            .formula("0.19 * (z_0 / 0.05)^0.07")
            .with("z_0", terrain.roughness(), "m")
            .from(EN)
            .note("terrain " + terrain.label())
            .gives(terrainFactor(), "");
    double reached = Math.max(height, terrain.leastHeight());
    double log =
        steps
            .step("L_z", "logarithm of height over roughness")
            .formula("ln(z / z_0)")
            .with("z", reached, "m")
            .with("z_0", terrain.roughness(), "m")
            .from(EN)
            .note("not lower than " + Numbers.plain(terrain.leastHeight()) + " m")
            .gives(heightLog(), "");
    double exposure =
        steps
            .step("c_e", "exposure factor")
            .formula("(1 + 7 / L_z) * (k_r * L_z)^2")
            .with("L_z", log, "")
            .with("k_r", factor, "")
            .from(EN)
            .gives(exposureFactor(), "");
    return steps
        .step("v", "gust at the height of the cover")
        .formula("v_b * sqrt(c_e)")
        .with("v_b", basic, "m/s")
        .with("c_e", exposure, "")
        .from(EN)
        .gives(basic * Math.sqrt(exposure), "m/s");
  }

  /**
   * Gives the caution that goes with a raised mean.
   *
   * @return hills, and what the country upwind looks like
   */
  public Caution caution() {
    return Caution.of(
        Hazard.STRUCTURE,
        "The gust is raised from a mean for flat ground. On a hill, at the edge of a slope or in a"
            + " gap between buildings the wind is stronger.",
        "Count on rougher country only if it reaches far in every direction; else, and on a hill,"
            + " ask for the gust by the local code.",
        EN);
  }

  private double heightLog() {
    return StrictMath.log(Math.max(height, terrain.leastHeight()) / terrain.roughness());
  }
}
