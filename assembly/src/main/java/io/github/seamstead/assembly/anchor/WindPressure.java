package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * Velocity pressure of a gust: {@code q = rho v^2 / 2}.
 *
 * <p>The speed is the gust at the height of the cover that local rules ask for. A mean speed is not
 * a gust: a mean speed from a forecast must be raised first.
 *
 * @param gust gust at the height of the cover, in m/s, greater than 0, at most {@link
 *     #GREATEST_SPEED}
 * @param density the density of air used
 */
public record WindPressure(double gust, AirDensity density) {

  /** The greatest speed taken, in m/s. */
  public static final double GREATEST_SPEED = 100;

  static final Source VELOCITY_PRESSURE =
      Source.found(
          "", "Steel Buildings in Europe, part 3", "", "app. B, EN 1991-1-4 basic pressure");

  public WindPressure {
    Args.positive("design gust", gust, "m/s");
    Args.within("design gust", gust, 0, GREATEST_SPEED, "m/s");
  }

  /**
   * Reckons with the European density, the greatest of the three in use.
   *
   * @param gust gust at the height of the cover, in m/s
   * @return the pressure
   * @throws IllegalArgumentException if the speed is out of range
   */
  public static WindPressure of(double gust) {
    return new WindPressure(gust, AirDensity.EUROPEAN);
  }

  /**
   * Reckons with a density of the caller's choice.
   *
   * @param gust gust at the height of the cover, in m/s
   * @param density the density of air
   * @return the pressure
   * @throws IllegalArgumentException if the speed is out of range
   */
  public static WindPressure of(double gust, AirDensity density) {
    return new WindPressure(gust, density);
  }

  /**
   * Names the rival density.
   *
   * @return the handbook density, or the European one if the handbook density is used
   */
  public AirDensity rival() {
    return density == AirDensity.HANDBOOK ? AirDensity.EUROPEAN : AirDensity.HANDBOOK;
  }

  /**
   * Computes the pressure.
   *
   * @return in pascals
   */
  public double pressure() {
    return pressure(Steps.none());
  }

  /**
   * Computes the pressure with the rival density, for comparison.
   *
   * @return in pascals
   */
  public double rivalPressure() {
    return 0.5 * rival().density() * gust * gust;
  }

  /**
   * Computes the pressure with the steps.
   *
   * @param steps where the steps go
   * @return in pascals
   */
  @Calculation("assembly.anchor.pressure")
  public double pressure(Steps steps) {
    steps
        .step("q_rival", "velocity pressure with the density of " + rival().label())
        .formula("rho_rival * v^2 / 2")
        .with("rho_rival", rival().density(), "kg/m3")
        .with("v", gust, "m/s")
        .note("for comparison")
        .gives(rivalPressure(), "Pa");
    return steps
        .step("q", "velocity pressure")
        .formula("rho * v^2 / 2")
        .with("rho", density.density(), "kg/m3")
        .with("v", gust, "m/s")
        .from(VELOCITY_PRESSURE)
        .note("density of " + density.label())
        .gives(0.5 * density.density() * gust * gust, "Pa");
  }
}
