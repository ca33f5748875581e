package io.github.seamstead.geometry.frame;

/** How errors of two measures grow on their way to inradius and height. */
final class Sensitivity {

  private Sensitivity() {}

  /**
   * The greatest relative change of r or H for a small relative change of one measure: the largest
   * entry of the inverse of the matrix of logarithmic derivatives.
   */
  static double magnification(PyramidMeasure first, PyramidMeasure second, FrameMeasures m) {
    double[] x = logDerivatives(first, m);
    double[] y = logDerivatives(second, m);
    double det = x[0] * y[1] - x[1] * y[0];
    double largest =
        Math.max(
            Math.max(Math.abs(x[0]), Math.abs(x[1])), Math.max(Math.abs(y[0]), Math.abs(y[1])));
    return det == 0 ? Double.POSITIVE_INFINITY : largest / Math.abs(det);
  }

  /** Derivatives of ln(measure) by ln r and by ln H. */
  private static double[] logDerivatives(PyramidMeasure measure, FrameMeasures m) {
    double rise = StrictMath.sin(m.faceSlope());
    double run = StrictMath.cos(m.faceSlope());
    return switch (measure.kind()) {
      case PLAN -> new double[] {measure == PyramidMeasure.BASE_AREA ? 2 : 1, 0};
      case HEIGHT -> new double[] {0, 1};
      case SLANT -> new double[] {run * run, rise * rise};
      case HIP -> {
        double hipRise = StrictMath.sin(m.hipSlope());
        yield new double[] {1 - hipRise * hipRise, hipRise * hipRise};
      }
      case VOLUME -> new double[] {2, 1};
      case COVER -> new double[] {1 + run * run, rise * rise};
      case SHAPE -> {
        double steep =
            switch (measure) {
              case FACE_SLOPE -> rise * run / m.faceSlope();
              case HIP_SLOPE -> StrictMath.sin(2 * m.hipSlope()) / (2 * m.hipSlope());
              default -> -StrictMath.sin(m.apexAngle()) * rise * rise / m.apexAngle();
            };
        yield new double[] {-steep, steep};
      }
    };
  }
}
