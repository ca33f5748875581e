package io.github.seamstead.materials.mix;

import org.apache.commons.math3.special.Erf;

/** Tail of the standard normal distribution. */
final class NormalTail {

  private NormalTail() {}

  static double above(double z) {
    return 0.5 * Erf.erfc(z / Math.sqrt(2));
  }
}
