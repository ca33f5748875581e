package io.github.seamstead.examples.fuzz;

import java.util.List;
import java.util.SplittableRandom;

/** Random choices of one case: they follow from the seed of the run and the number of the case. */
final class Draw {

  private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

  private final SplittableRandom random;

  Draw(long seed, int number) {
    random = new SplittableRandom(seed + number * GOLDEN_GAMMA);
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  /** From 0 to one less than the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  @SafeVarargs
  final <T> T one(T... of) {
    return of[random.nextInt(of.length)];
  }

  /** A number within limits: now and then a limit itself, mostly spread over its decades. */
  double within(double low, double high) {
    if (chance(0.1)) {
      return chance(0.5) ? low : high;
    }
    if (low > 0) {
      return rounded(low * Math.pow(high / low, random.nextDouble()), low, high);
    }
    return rounded(between(low, high), low, high);
  }

  /** Four digits, as a person writes; a plan that shows more has made them itself. */
  static double rounded(double value, double low, double high) {
    return Math.max(low, Math.min(high, rounded(value)));
  }

  static double rounded(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return value;
    }
    double step = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 3);
    double rounded = Math.round(value / step) * step;
    return Double.isFinite(rounded)
        ? Double.parseDouble(String.format(java.util.Locale.ROOT, "%.4g", rounded))
        : value;
  }
}
