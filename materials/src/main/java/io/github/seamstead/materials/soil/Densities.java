package io.github.seamstead.materials.soil;

/** Density functions of the likelihoods. */
final class Densities {

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private static final double NEGLIGIBLE = 40;

  private Densities() {}

  static double normal(double x, double mean, double deviation) {
    double z = (x - mean) / deviation;
    return StrictMath.exp(-0.5 * z * z) / (deviation * ROOT_TWO_PI);
  }

  /** Joint density of two independent normal deviations. */
  static double normal(double a, double b, double varianceA, double varianceB) {
    double z = 0.5 * (a * a / varianceA + b * b / varianceB);
    // Far out the density is below 1e-17 of its peak, far under every stated floor.
    return z > NEGLIGIBLE
        ? 0
        : StrictMath.exp(-z) / (2 * Math.PI * Math.sqrt(varianceA * varianceB));
  }

  static double logistic(double x) {
    return 1 / (1 + StrictMath.exp(-x));
  }
}
