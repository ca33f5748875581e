package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;

/** Turns evenly spread numbers into those of a standard normal distribution. */
public final class NormalScore {

  /** One-sided score of 95 %: a range from 5 % to 95 % reaches so many deviations either way. */
  public static final double AT_95 = 1.6448536269514722;

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
  private static final double FARTHEST = 6;

  /** The logistic curve of this scale lies close to the normal one. */
  private static final double LOGISTIC = Math.sqrt(3) / Math.PI;

  private NormalScore() {}

  /**
   * Gives the score that a part of the normal distribution lies below: the z for which {@code u =
   * Phi(z)}, by Newton's steps on the series {@code Phi(z) = 1/2 + phi(z) (z + z^3/3 + z^5/(3 5) +
   * ...)}. Correct to 1e-9 or better; held to -6 and 6.
   *
   * @param part u, between 0 and 1
   * @return z, from -6 to 6
   * @throws IllegalArgumentException if the part is outside 0 to 1
   */
  public static double of(double part) {
    Args.within("part of the distribution", part, 0, 1, "");
    if (part <= below(-FARTHEST) || part >= below(FARTHEST)) {
      return part < 0.5 ? -FARTHEST : FARTHEST;
    }
    double z = LOGISTIC * StrictMath.log(part / (1 - part));
    for (int i = 0; i < 60; i++) {
      double step = (below(z) - part) / density(z);
      // Far out the curve is so flat that a whole step could overshoot.
      z -= Math.max(-0.5, Math.min(0.5, step));
      if (Math.abs(step) < 1e-12) {
        break;
      }
    }
    return z;
  }

  /**
   * Gives the part of the standard normal distribution below a score.
   *
   * @param z the score, -8 to 8
   * @return Phi(z)
   */
  public static double below(double z) {
    double term = z;
    double sum = z;
    for (int n = 3; Math.abs(term) > 1e-17 * Math.abs(sum) && n < 400; n += 2) {
      term *= z * z / n;
      sum += term;
    }
    return Math.max(0, Math.min(1, 0.5 + sum * density(z)));
  }

  private static double density(double z) {
    return StrictMath.exp(-z * z / 2) / ROOT_TWO_PI;
  }
}
