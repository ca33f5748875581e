package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * A point in the plasticity chart of fine soils.
 *
 * @param liquidLimit liquid limit, a ratio of water to dry mass
 * @param plasticityIndex liquid less plastic limit, a ratio
 * @param aLine plasticity index of the A-line at this liquid limit, {@code 0.73 (LL - 0.20)}
 * @param uLine plasticity index of the U-line, {@code 0.9 (LL - 0.08)}
 * @param symbol group symbol: CL, CH, ML, MH or CL-ML
 * @param aboveUpperLine whether the point lies above the U-line, where no natural soil was found:
 *     check the test
 */
public record PlasticityChart(
    double liquidLimit,
    double plasticityIndex,
    double aLine,
    double uLine,
    String symbol,
    boolean aboveUpperLine) {

  /** The chart. */
  public static final Source SOURCE = Source.found("ASTM", "D2487", "2017", "plasticity chart");

  /**
   * Places a soil in the chart.
   *
   * @param liquidLimit 0.05 to 5, a ratio of water to dry mass
   * @param plasticLimit at most the liquid limit
   * @return the point
   * @throws IllegalArgumentException if a limit is out of range or the plastic exceeds the liquid
   */
  public static PlasticityChart of(double liquidLimit, double plasticLimit) {
    return of(liquidLimit, plasticLimit, Steps.none());
  }

  /**
   * As {@link #of(double, double)}, with its worked steps; the last step is the height above the
   * A-line.
   *
   * @param liquidLimit 0.05 to 5, a ratio of water to dry mass
   * @param plasticLimit at most the liquid limit
   * @param steps receives the worked steps
   * @return the point
   * @throws IllegalArgumentException if a limit is out of range or the plastic exceeds the liquid
   */
  @Calculation("materials.soil.plasticity_chart")
  public static PlasticityChart of(double liquidLimit, double plasticLimit, Steps steps) {
    ConsistencyLimits.check(liquidLimit, plasticLimit);
    double index =
        steps
            .step("PI", "plasticity index")
            .formula("LL - PL")
            .with("LL", liquidLimit, "")
            .with("PL", plasticLimit, "")
            .gives(liquidLimit - plasticLimit, "");
    double upper =
        steps
            .step("U", "U-line")
            .formula("0.9 * (LL - 0.08)")
            .with("LL", liquidLimit, "")
            .from(SOURCE)
            .gives(0.9 * (liquidLimit - 0.08), "");
    double line =
        steps
            .step("A", "A-line")
            .formula("0.73 * (LL - 0.2)")
            .with("LL", liquidLimit, "")
            .from(SOURCE)
            .gives(0.73 * (liquidLimit - 0.20), "");
    steps
        .step("dA", "height above the A-line")
        .formula("PI - A")
        .with("PI", index, "")
        .with("A", line, "")
        .note("on or above it: clay, below: silt; LL from 0.50: high plasticity")
        .gives(index - line, "");
    return new PlasticityChart(
        liquidLimit, index, line, upper, symbol(liquidLimit, index, line), index > upper + 1e-12);
  }

  /**
   * Gives the height above the A-line.
   *
   * @return {@code PI - A}, below 0 for a silt
   */
  public double aboveALine() {
    return plasticityIndex - aLine;
  }

  private static String symbol(double liquidLimit, double index, double aLine) {
    // Printed limits are whole per cent; a rounding must not move a point across a line.
    boolean above = index >= aLine - 1e-9;
    if (liquidLimit >= 0.50 - 1e-9) {
      return above ? "CH" : "MH";
    }
    if (above && index > 0.07 + 1e-9) {
      return "CL";
    }
    return above && index >= 0.04 - 1e-9 ? "CL-ML" : "ML";
  }

  /** What a builder should know of this point. */
  String remark() {
    return aboveUpperLine
        ? "Limits plot above the U-line of the plasticity chart: check both tests."
        : "";
  }
}
