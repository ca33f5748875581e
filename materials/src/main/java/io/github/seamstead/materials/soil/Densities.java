package io.github.seamstead.materials.soil;

/** Density functions of the likelihoods. */
final class Densities {

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private Densities() {}

  static double normal(double x, double mean, double deviation) {
    double z = (x - mean) / deviation;
    return Math.exp(-0.5 * z * z) / (deviation * ROOT_TWO_PI);
  }

  /** Density of two independent normal deviations of equal spread. */
  static double normalPair(double a, double b, double deviation) {
    double variance = deviation * deviation;
    return Math.exp(-0.5 * (a * a + b * b) / variance) / (2 * Math.PI * variance);
  }

  static double logistic(double x) {
    return 1 / (1 + Math.exp(-x));
  }
}
