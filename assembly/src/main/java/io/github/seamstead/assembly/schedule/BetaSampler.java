package io.github.seamstead.assembly.schedule;

import java.util.random.RandomGenerator;

/**
 * Draws durations from the beta distribution that PERT assumes: {@code alpha = 1 + 4 (m - a) / (b -
 * a)}, {@code beta = 1 + 4 (b - m) / (b - a)} on a to b.
 *
 * <p>A beta value is a ratio of two gamma values, each drawn by Marsaglia and Tsang, A simple
 * method for generating gamma variables, ACM TOMS 26 (2000), from memory. Strict arithmetic, so
 * that equal seeds give equal numbers on every machine.
 */
final class BetaSampler {

  private final RandomGenerator random;

  BetaSampler(RandomGenerator random) {
    this.random = random;
  }

  double draw(ThreePoint t) {
    double width = t.pessimistic() - t.optimistic();
    if (width <= 0) {
      return t.likely();
    }
    double x = gamma(1 + 4 * (t.likely() - t.optimistic()) / width);
    double y = gamma(1 + 4 * (t.pessimistic() - t.likely()) / width);
    return t.optimistic() + width * x / (x + y);
  }

  /** Draws from the gamma distribution of unit scale; the shape is 1 or more. */
  private double gamma(double shape) {
    double d = shape - 1.0 / 3;
    double c = 1 / StrictMath.sqrt(9 * d);
    while (true) {
      double x = normal();
      double v = 1 + c * x;
      if (v <= 0) {
        continue;
      }
      v = v * v * v;
      double u = 1 - random.nextDouble();
      if (StrictMath.log(u) < 0.5 * x * x + d - d * v + d * StrictMath.log(v)) {
        return d * v;
      }
    }
  }

  /** Draws from the standard normal distribution by the polar method. */
  private double normal() {
    while (true) {
      double u = 2 * random.nextDouble() - 1;
      double v = 2 * random.nextDouble() - 1;
      double s = u * u + v * v;
      if (s > 0 && s < 1) {
        return u * StrictMath.sqrt(-2 * StrictMath.log(s) / s);
      }
    }
  }
}
