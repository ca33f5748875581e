package io.github.seamstead.materials.mix;

import java.util.ArrayList;
import java.util.List;

/**
 * What is known of one critical sand ratio: below it (or above it) samples fail. A grid of
 * logarithms of the ratio, a log-normal prior, and for each sample a logistic chance of failing,
 * misread one time in twenty.
 */
final class RatioLimit {

  static final double SCATTER = 0.08;
  static final double MISREAD = 0.05;

  private static final int SLOTS = 240;
  private static final double LN_FROM = StrictMath.log(0.1);
  private static final double LN_STEP = StrictMath.log(20 / 0.1) / (SLOTS - 1);

  private final double[] weights = new double[SLOTS];

  /** Takes the prior's middle (parts of sand) and its log deviation. */
  RatioLimit(double middle, double logDeviation) {
    double sum = 0;
    for (int i = 0; i < SLOTS; i++) {
      double z = (LN_FROM + i * LN_STEP - StrictMath.log(middle)) / logDeviation;
      weights[i] = StrictMath.exp(-0.5 * z * z);
      sum += weights[i];
    }
    scale(sum);
  }

  /**
   * Takes in a sample.
   *
   * @param parts its parts of sand
   * @param below how surely it lies below the limit, 0 to 1
   */
  void learn(double parts, double below) {
    double sum = 0;
    for (int i = 0; i < SLOTS; i++) {
      double chance = seenBelow(i, parts);
      weights[i] *= below * chance + (1 - below) * (1 - chance);
      sum += weights[i];
    }
    scale(sum);
  }

  /** Probability that a ratio lies below the limit itself, scatter of samples apart. */
  double below(double parts) {
    double place = (StrictMath.log(parts) - LN_FROM) / LN_STEP;
    double sum = 0;
    for (int i = 0; i < SLOTS; i++) {
      // A slot stands for the step around it; the one that holds the ratio counts in part.
      sum += weights[i] * Math.min(1, Math.max(0, i + 0.5 - place));
    }
    return sum;
  }

  /** Information that a sample at a ratio would bring, in bits. */
  double information(double parts) {
    double marginal = 0;
    double given = 0;
    for (int i = 0; i < SLOTS; i++) {
      double chance = seenBelow(i, parts);
      marginal += weights[i] * chance;
      given += weights[i] * entropy(chance);
    }
    return Math.max(0, entropy(marginal) - given);
  }

  double quantile(double level) {
    double sum = 0;
    for (int i = 0; i < SLOTS; i++) {
      sum += weights[i];
      if (sum >= level) {
        return StrictMath.exp(LN_FROM + i * LN_STEP);
      }
    }
    return StrictMath.exp(LN_FROM + (SLOTS - 1) * LN_STEP);
  }

  static List<Double> multiples(double step, double to) {
    List<Double> list = new ArrayList<>();
    for (int k = 1; k * step <= to + 1e-9; k++) {
      list.add(k * step);
    }
    return list;
  }

  private double seenBelow(int slot, double parts) {
    return MISREAD + (1 - 2 * MISREAD) * chance(slot, parts);
  }

  private static double chance(int slot, double parts) {
    if (parts == 0) {
      return 1;
    }
    return 1 / (1 + StrictMath.exp(-(LN_FROM + slot * LN_STEP - StrictMath.log(parts)) / SCATTER));
  }

  private static double entropy(double p) {
    if (p <= 0 || p >= 1) {
      return 0;
    }
    return -(p * StrictMath.log(p) + (1 - p) * StrictMath.log(1 - p)) / StrictMath.log(2);
  }

  private void scale(double sum) {
    for (int i = 0; i < SLOTS; i++) {
      weights[i] /= sum;
    }
  }
}
