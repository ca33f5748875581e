package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.derivation.Steps;
import java.util.List;

/**
 * The base inradii and heights that a pair of measures allows.
 *
 * @param roots none, one or two
 * @param reason why there is none; empty otherwise
 */
record Roots(List<Root> roots, String reason) {

  /** Two solutions that differ by less than rounding count as one. */
  private static final double TOUCHING = 1e-12;

  /**
   * One solution.
   *
   * @param inradius r, in metres
   * @param height H, in metres
   * @param touching true if two solutions fall together here
   * @param number what follows the symbols of this solution in the worked steps, such as _1
   */
  record Root(double inradius, double height, boolean touching, String number) {}

  Roots {
    roots = List.copyOf(roots);
  }

  static Roots of(double inradius, double height) {
    return new Roots(List.of(new Root(inradius, height, false, "")), "");
  }

  static Roots none(String reason) {
    return new Roots(List.of(), reason);
  }

  /**
   * The two positive roots of {@code x^3 - p x + q = 0}, p and q positive, smallest first: one if
   * they touch, none if the curve stays above zero.
   *
   * <p>The largest root and the negative one come from the cosine form, which loses no digits; the
   * small root follows from the product of all three, where the cosine form would cancel.
   */
  static double[] cubic(String x, String unit, double p, double q, Steps steps) {
    double third = Math.sqrt(p / 3);
    double ratio = q / 2 / (third * third * third);
    if (!(ratio <= 1 + TOUCHING)) {
      return new double[0];
    }
    double omega =
        steps
            .step("omega", "cosine that the cubic " + x + "^3 - p*" + x + " + q = 0 leads to")
            .formula("min(1, q / 2 / sqrt(p / 3)^3)")
            .with("q", q, "")
            .with("p", p, "")
            .gives(Math.min(1, ratio), "");
    double large =
        steps
            .step(x + "_2", "larger root of the cubic")
            .formula("2 * sqrt(p / 3) * cos(acos(-omega) / 3)")
            .with("p", p, "")
            .with("omega", omega, "")
            .gives(2 * third * StrictMath.cos(StrictMath.acos(-omega) / 3), unit);
    if (ratio >= 1 - TOUCHING) {
      return new double[] {large};
    }
    double small =
        steps
            .step(x + "_1", "smaller root of the cubic, from the product of the roots")
            .formula("q / (2 * sqrt(p / 3) * cos(acos(omega) / 3)) / " + x + "_2")
            .with("q", q, "")
            .with("p", p, "")
            .with("omega", omega, "")
            .with(x + "_2", large, unit)
            .gives(q / (2 * third * StrictMath.cos(StrictMath.acos(omega) / 3)) / large, unit);
    return new double[] {small, large};
  }
}
