package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/** How far the cloth reaches beyond a corner where two allowances meet. */
public final class Mitre {

  /** The limit that panels use: a corner reaches at most twice as far as the wider allowance. */
  public static final double USUAL_LIMIT = 2;

  private static final Source PLANE = Source.derived("two lines parallel to the sides of an angle");
  private static final Source LIMIT =
      Source.commonPractice("the spike of cloth beyond a sharp tip is cut off square");

  private Mitre() {}

  /**
   * Gives the reach without worked steps; see {@link #reach(double, double, double, double,
   * Steps)}.
   *
   * @param angle inner angle of the corner, in radians, more than 0 and less than 2π, not π
   * @param first allowance along one side, in metres, 0 or more
   * @param second allowance along the other side, in metres, 0 or more
   * @param limit greatest reach as a multiple of the wider allowance, 1 or more
   * @return the reach, in metres
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double reach(double angle, double first, double second, double limit) {
    return reach(angle, first, second, limit, Steps.none());
  }

  /**
   * Gives how far the cut line's corner lies from the stitch line's corner: {@code d = sqrt(a² + b²
   * + 2ab cos φ) / |sin φ|}. Where that is more than {@code m max(a, b)} it is held: a corner
   * blunter than a right angle is not mitred but each allowance ends square, so that the reach is
   * {@code max(a, b)}; at a sharper one the reach is {@code m max(a, b)}, and the cloth is cut off
   * square to the direction of the mitre there, which takes nothing from the allowance beside a
   * stitch for any {@code m} of 1 or more.
   *
   * @param angle inner angle φ of the corner, in radians, more than 0 and less than 2π, not π
   * @param first allowance a along one side, in metres, 0 or more
   * @param second allowance b along the other side, in metres, 0 or more
   * @param limit m, the greatest reach as a multiple of the wider allowance, 1 or more
   * @param steps takes the worked steps
   * @return the reach, in metres
   * @throws IllegalArgumentException if an argument is out of range
   */
  @Calculation("geometry.pattern.mitre")
  public static double reach(double angle, double first, double second, double limit, Steps steps) {
    Args.between("corner angle", angle, 0, 2 * Math.PI, "rad");
    Args.require(angle != Math.PI, "corner angle: given π rad, a straight line has no mitre");
    Args.notNegative("first allowance", first, "m");
    Args.notNegative("second allowance", second, "m");
    requireLimit(limit);
    double cos = StrictMath.cos(angle);
    double full =
        steps
            .step("d", "full mitre, corner of the stitch line to corner of the cut line")
            .formula("sqrt(a^2 + b^2 + 2 * a * b * cos(phi)) / abs(sin(phi))")
            .with("a", first, "m")
            .with("b", second, "m")
            .with("phi", angle, "rad")
            .from(PLANE)
            .gives(
                Math.sqrt(Math.max(0, first * first + second * second + 2 * first * second * cos))
                    / Math.abs(StrictMath.sin(angle)),
                "m");
    double widest = Math.max(first, second);
    if (angle > Math.PI || (angle >= Math.PI / 2 && full <= limit * widest)) {
      return steps
          .step("l", "reach of the cloth beyond the corner")
          .formula("d")
          .with("d", full, "m")
          .note("the mitre stays whole")
          .gives(full, "m");
    }
    if (angle >= Math.PI / 2) {
      return steps
          .step("l", "reach of the cloth beyond the corner")
          .formula("max(a, b)")
          .with("a", first, "m")
          .with("b", second, "m")
          .from(LIMIT)
          .note("at a blunt corner the wider allowance ends square to its own stitch line")
          .gives(widest, "m");
    }
    return steps
        .step("l", "reach of the cloth beyond the corner")
        .formula("min(d, m * max(a, b))")
        .with("d", full, "m")
        .with("m", limit, "")
        .with("a", first, "m")
        .with("b", second, "m")
        .from(LIMIT)
        .gives(Math.min(full, limit * widest), "m");
  }

  static void requireLimit(double limit) {
    Args.require(
        limit >= 1 && Double.isFinite(limit),
        "mitre limit",
        () -> Numbers.plain(limit),
        "must be 1 or more, or seams lose their allowance");
  }
}
