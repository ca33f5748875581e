package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A grading to come close to: the power curve {@code p = (d/D)^n} (Fuller and Thompson).
 *
 * <p>The pure curve leaves only 1 % of clay at D = 19 mm and 3 % at D = 2 mm, so it shapes sand and
 * gravel and never sets the clay: the fit looks at the diameters from 0.063 mm up.
 *
 * @param largest largest grain D, in metres, 0.0005 to 0.1; 0.0005 to 0.1 m
 * @param exponent exponent n, 0.2 to 0.8; 0.5 is the classic value, 0.45 that of road bases
 */
public record GradingTarget(double largest, double exponent) {

  /** The curve. */
  public static final Source SOURCE =
      Source.found(
          "Fuller and Thompson, in Das",
          "Fundamentals of Geotechnical Engineering",
          "",
          "problem 2.15");

  private static final double[] SIZES = {
    0.063e-3, 0.125e-3, 0.25e-3, 0.5e-3, 1e-3, 2e-3, 4e-3, 8e-3, 16e-3, 31.5e-3, 63e-3
  };

  public GradingTarget {
    Args.within("largest grain", largest, 0.0005, 0.1, "m");
    Args.within("exponent of the grading curve", exponent, 0.2, 0.8, "");
  }

  /**
   * Gives the share finer than a diameter.
   *
   * @param diameter diameter, in metres, above 0
   * @return share of the dry mass, 0 to 1
   */
  public double finer(double diameter) {
    return finer(diameter, Steps.none());
  }

  /**
   * As {@link #finer(double)}, with its worked step.
   *
   * @param diameter diameter, in metres, above 0
   * @param steps receives the worked step
   * @return share of the dry mass, 0 to 1
   */
  @Calculation("materials.mix.power_curve")
  public double finer(double diameter, Steps steps) {
    Args.positive("grain diameter", diameter, "m");
    return steps
        .step("p", "share finer by the power curve")
        .formula("min(1, (d / D)^n)")
        .with("d", diameter, "m")
        .with("D", largest, "m")
        .with("n", exponent, "")
        .from(SOURCE)
        .gives(Math.min(1, StrictMath.pow(diameter / largest, exponent)), "");
  }

  /**
   * Gives the diameters at which closeness is measured: the halving series from 0.063 mm to D.
   *
   * @return diameters in metres, finest first
   */
  public List<Double> sizes() {
    List<Double> list = new ArrayList<>();
    for (double size : SIZES) {
      if (size < largest) {
        list.add(size);
      }
    }
    return List.copyOf(list);
  }

  /**
   * Gives the curve's points for a drawing.
   *
   * @return the curve from 0.002 mm to D
   */
  public GradingCurve curve() {
    List<GradingCurve.Point> points = new ArrayList<>();
    for (double d = 0.002e-3; d < largest * 0.999; d *= 2) {
      points.add(new GradingCurve.Point(d, finer(d)));
    }
    points.add(new GradingCurve.Point(largest, 1));
    return new GradingCurve(points);
  }

  /**
   * Measures how far a grading is from the curve.
   *
   * @param grading the grading
   * @return root mean square of the differences at {@link #sizes()}, a share of the dry mass
   */
  public double misfit(DoubleUnaryOperator grading) {
    double sum = 0;
    List<Double> sizes = sizes();
    for (double size : sizes) {
      double off = grading.applyAsDouble(size) - finer(size);
      sum += off * off;
    }
    return Math.sqrt(sum / sizes.size());
  }
}
