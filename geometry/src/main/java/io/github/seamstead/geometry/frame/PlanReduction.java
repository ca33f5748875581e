package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.derivation.Steps;

/** Turns a measure of the plan into the inradius r, and an angle into the steepness t = H / r. */
final class PlanReduction {

  private final int n;
  private final double cos;
  private final double tan;
  private final boolean even;
  private final Steps steps;

  PlanReduction(int sides, Steps steps) {
    this.n = sides;
    this.cos = StrictMath.cos(Math.PI / sides);
    this.tan = StrictMath.tan(Math.PI / sides);
    this.even = sides % 2 == 0;
    this.steps = steps;
  }

  double inradius(PyramidMeasure measure, double value) {
    return switch (measure) {
      case INRADIUS -> value;
      case BASE_SIDE -> radius("a / (2 * tan(pi/n))", measure, value, value / (2 * tan));
      case CIRCUMRADIUS -> radius("R * cos(pi/n)", measure, value, value * cos);
      case ACROSS_FLATS ->
          even
              ? radius("F / 2", measure, value, value / 2)
              : radius("F / (1 + 1 / cos(pi/n))", measure, value, value / (1 + 1 / cos));
      case ACROSS_CORNERS ->
          even
              ? radius("K / 2 * cos(pi/n)", measure, value, value / 2 * cos)
              : radius(
                  "K / (2 * cos(pi / (2 * n))) * cos(pi/n)",
                  measure,
                  value,
                  value / (2 * StrictMath.cos(Math.PI / (2 * n))) * cos);
      case PERIMETER -> radius("P / (2 * n * tan(pi/n))", measure, value, value / (2 * n * tan));
      case BASE_AREA ->
          radius("sqrt(A_b / (n * tan(pi/n)))", measure, value, Math.sqrt(value / (n * tan)));
      default -> throw new IllegalStateException(measure + " is not a measure of the plan");
    };
  }

  private double radius(String formula, PyramidMeasure measure, double value, double gives) {
    return steps
        .step("r", "inradius of the base")
        .formula(formula)
        .with(measure.symbol(), value, measure.unit())
        .with("n", n, "")
        .from(FrameSources.POLYGON)
        .gives(gives, "m");
  }

  double steepness(PyramidMeasure measure, double value) {
    return switch (measure) {
      case FACE_SLOPE -> steep("tan(theta)", measure, value, StrictMath.tan(value));
      case HIP_SLOPE ->
          steep("tan(gamma) / cos(pi/n)", measure, value, StrictMath.tan(value) / cos);
      case APEX_ANGLE -> {
        double slantRatio = tan / StrictMath.tan(value / 2);
        yield steep(
            "sqrt((tan(pi/n) / tan(alpha / 2))^2 - 1)",
            measure,
            value,
            Math.sqrt(Math.max(0, slantRatio * slantRatio - 1)));
      }
      default -> throw new IllegalStateException(measure + " is not an angle");
    };
  }

  private double steep(String formula, PyramidMeasure measure, double value, double gives) {
    return steps
        .step("t", "steepness, height over inradius")
        .formula(formula)
        .with(measure.symbol(), value, "rad")
        .with("n", n, "")
        .from(FrameSources.PYRAMID)
        .gives(gives, "");
  }
}
