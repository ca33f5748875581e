package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * A finish that soaks in or is rubbed on, such as linseed oil or wax, coat by coat. Published oil
 * rates mix litres for the first coat with litres for all coats, so each coat has its own rate.
 *
 * @param name the name on the section drawing; not blank
 * @param rates the rate of each coat in the order of work: low, likely, high; each 0 to 5 L/m²
 */
public record FinishLayer(String name, List<Range> rates) implements Layer {

  /** In degrees Celsius; on a colder floor oil stays liquid and sticky (common practice). */
  public static final double LEAST_CELSIUS = 10;

  public FinishLayer {
    Args.notBlank("layer", name);
    rates = Args.notEmpty(name + ": coats", rates);
    for (Range rate : rates) {
      Args.within(name + ": rate", rate.low(), 0, 5, "L/m2");
      Args.within(name + ": rate", rate.high(), 0, 5, "L/m2");
    }
  }

  /**
   * Makes four coats of linseed oil, the first at 0.2 L/m² (found in a builder's guide), each later
   * one at half the one before, since the pores fill (common practice; ± 40 %).
   *
   * @return the finish
   */
  public static FinishLayer linseedOil() {
    return new FinishLayer(
        "linseed oil", List.of(around(0.2), around(0.1), around(0.05), around(0.025)));
  }

  /**
   * Makes one coat of paste wax at 0.02 L/m² (common practice; ± 40 %).
   *
   * @return the finish
   */
  public static FinishLayer wax() {
    return new FinishLayer("wax", List.of(around(0.02)));
  }

  /**
   * Gives the rate of all coats together.
   *
   * @return the sum, in L/m²
   */
  public Range allCoats() {
    return rates.stream().reduce(Range.exactly(0), Range::plus);
  }

  @Override
  public double thickness() {
    return 0;
  }

  private static Range around(double rate) {
    return new Range(rate * 0.6, rate, rate * 1.4);
  }
}
