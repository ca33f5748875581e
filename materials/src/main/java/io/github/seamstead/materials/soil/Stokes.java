package io.github.seamstead.materials.soil;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Settling of single grains in still water by Stokes' law: {@code v = (rho_s - rho_w) g d^2 / (18
 * mu)}. Valid for Reynolds numbers up to about 1, which in water is a diameter of about 0.1 mm;
 * beyond that the calculation refuses. Constant time.
 */
public final class Stokes {

  /** The law and its range. */
  public static final Source SOURCE =
      Source.found("BSI", "BS 1377-2", "1990", "9.4 to 9.6, sedimentation");

  private static final double GREATEST_REYNOLDS = 1;

  private Stokes() {}

  /**
   * Gives how long a grain takes to fall a depth.
   *
   * @param depth depth fallen, 0.001 to 2 m
   * @param diameter diameter of the grain, 1e-7 to 2e-4 m
   * @param celsius temperature of the water, 0 to 40 degC
   * @param particleDensity density of the grain, 2000 to 5300 kg/m3
   * @return time in seconds
   * @throws IllegalArgumentException if an argument is out of range or the Reynolds number exceeds
   *     1
   */
  public static double settlingTime(
      double depth, double diameter, double celsius, double particleDensity) {
    return settlingTime(depth, diameter, celsius, particleDensity, Steps.none());
  }

  /**
   * As {@link #settlingTime(double, double, double, double)}, with its worked steps.
   *
   * @param depth depth fallen, 0.001 to 2 m
   * @param diameter diameter of the grain, 1e-7 to 2e-4 m
   * @param celsius temperature of the water, 0 to 40 degC
   * @param particleDensity density of the grain, 2000 to 5300 kg/m3
   * @param steps receives the worked steps
   * @return time in seconds
   * @throws IllegalArgumentException if an argument is out of range or the Reynolds number exceeds
   *     1
   */
  @Calculation("materials.soil.settling_time")
  public static double settlingTime(
      double depth, double diameter, double celsius, double particleDensity, Steps steps) {
    Args.within("depth", depth, 0.001, 2, "m");
    double velocity = velocity(diameter, celsius, particleDensity, steps);
    return steps
        .step("t", "time to fall the depth")
        .formula("h / v")
        .with("h", depth, "m")
        .with("v", velocity, "m/s")
        .gives(depth / velocity, "s");
  }

  /**
   * Gives the smallest grain that has fallen a depth within a time; every larger one has too.
   *
   * @param depth depth fallen, 0.001 to 2 m
   * @param seconds time since the water was still, 1 s or more
   * @param celsius temperature of the water, 0 to 40 degC
   * @param particleDensity density of the grain, 2000 to 5300 kg/m3
   * @return diameter in metres
   * @throws IllegalArgumentException if an argument is out of range or the Reynolds number exceeds
   *     1
   */
  public static double smallestSettled(
      double depth, double seconds, double celsius, double particleDensity) {
    return smallestSettled(depth, seconds, celsius, particleDensity, Steps.none());
  }

  /**
   * As {@link #smallestSettled(double, double, double, double)}, with its worked steps.
   *
   * @param depth depth fallen, 0.001 to 2 m
   * @param seconds time since the water was still, 1 s or more
   * @param celsius temperature of the water, 0 to 40 degC
   * @param particleDensity density of the grain, 2000 to 5300 kg/m3
   * @param steps receives the worked steps
   * @return diameter in metres
   * @throws IllegalArgumentException if an argument is out of range or the Reynolds number exceeds
   *     1
   */
  @Calculation("materials.soil.smallest_settled_grain")
  public static double smallestSettled(
      double depth, double seconds, double celsius, double particleDensity, Steps steps) {
    Args.within("depth", depth, 0.001, 2, "m");
    Args.within("time", seconds, 1, 1e8, "s");
    checkWater(celsius, particleDensity);
    double viscosity = viscosityStep(celsius, steps);
    double water = densityStep(celsius, steps);
    double diameter =
        Math.sqrt(
            18 * viscosity * depth / ((particleDensity - water) * STANDARD_GRAVITY * seconds));
    double velocity = depth / seconds;
    checkReynolds(water * velocity * diameter / viscosity, diameter);
    return steps
        .step("d", "smallest diameter that has fallen the depth")
        .formula("sqrt(18 * mu * h / ((rho_s - rho_w) * g * t))")
        .with("mu", viscosity, "Pa s")
        .with("h", depth, "m")
        .with("rho_s", particleDensity, "kg/m3")
        .with("rho_w", water, "kg/m3")
        .with("g", STANDARD_GRAVITY, "m/s2")
        .with("t", seconds, "s")
        .from(SOURCE)
        .gives(diameter, "m");
  }

  /** Terminal velocity in m/s, with its steps. */
  static double velocity(double diameter, double celsius, double particleDensity, Steps steps) {
    Args.within("diameter", diameter, 1e-7, 1e-3, "m");
    checkWater(celsius, particleDensity);
    double viscosity = viscosityStep(celsius, steps);
    double water = densityStep(celsius, steps);
    double velocity =
        (particleDensity - water) * STANDARD_GRAVITY * diameter * diameter / (18 * viscosity);
    steps
        .step("v", "terminal velocity of the grain")
        .formula("(rho_s - rho_w) * g * d^2 / (18 * mu)")
        .with("rho_s", particleDensity, "kg/m3")
        .with("rho_w", water, "kg/m3")
        .with("g", STANDARD_GRAVITY, "m/s2")
        .with("d", diameter, "m")
        .with("mu", viscosity, "Pa s")
        .from(SOURCE)
        .gives(velocity, "m/s");
    double reynolds =
        steps
            .step("Re", "Reynolds number, which must not exceed 1")
            .formula("rho_w * v * d / mu")
            .with("rho_w", water, "kg/m3")
            .with("v", velocity, "m/s")
            .with("d", diameter, "m")
            .with("mu", viscosity, "Pa s")
            .gives(water * velocity * diameter / viscosity, "");
    checkReynolds(reynolds, diameter);
    return velocity;
  }

  private static double viscosityStep(double celsius, Steps steps) {
    return steps
        .step("mu", "viscosity of water")
        .formula(
            "1e-6 * (280.68 * ((T + 273.15) / 300)^(-1.9) + 511.45 * ((T + 273.15) / 300)^(-7.7)"
                + " + 61.131 * ((T + 273.15) / 300)^(-19.6)"
                + " + 0.45903 * ((T + 273.15) / 300)^(-40))")
        .with("T", celsius, "degC")
        .from(StillWater.VISCOSITY)
        .gives(StillWater.viscosity(celsius), "Pa s");
  }

  private static double densityStep(double celsius, Steps steps) {
    return steps
        .step("rho_w", "density of water")
        .formula("999.97495 * (1 - (T - 3.983035)^2 * (T + 301.797) / (522528.9 * (T + 69.34881)))")
        .with("T", celsius, "degC")
        .from(StillWater.DENSITY)
        .gives(StillWater.density(celsius), "kg/m3");
  }

  private static void checkWater(double celsius, double particleDensity) {
    Args.within("water temperature", celsius, 0, 40, "degC");
    Args.within("particle density", particleDensity, 2000, 5300, "kg/m3");
  }

  private static void checkReynolds(double reynolds, double diameter) {
    Args.agree(
        reynolds <= GREATEST_REYNOLDS,
        "grain of "
            + Numbers.significant(diameter * 1000, 3)
            + " mm: Reynolds number "
            + Numbers.significant(reynolds, 3),
        "must be 1 or less (Stokes' law holds for grains up to about 0.1 mm in water)");
  }
}
