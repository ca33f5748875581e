package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * How far the two unknowns of drying may stray, as factors on the model's numbers.
 *
 * @param diffusivity factor on the diffusivity of the earth: low, likely, high; 0.01 to 100
 * @param exchange factor on the evaporation from a wet surface: low, likely, high; 0.1 to 10
 */
public record DryingDoubt(Range diffusivity, Range exchange) {

  public DryingDoubt {
    Args.within("diffusivity factor (low)", diffusivity.low(), 0.01, 100, "");
    Args.within("diffusivity factor (high)", diffusivity.high(), 0.01, 100, "");
    Args.within("exchange factor (low)", exchange.low(), 0.1, 10, "");
    Args.within("exchange factor (high)", exchange.high(), 0.1, 10, "");
  }

  /**
   * Makes the doubt of someone who has weighed nothing: published diffusivities scatter tenfold
   * from end to end, evaporation formulas by ± 40 %.
   *
   * @return factors from 1/√10 to √10 and from 1/1.4 to 1.4
   */
  public static DryingDoubt published() {
    return new DryingDoubt(around(EarthMoisture.SCATTER), around(Evaporation.SCATTER));
  }

  private static Range around(double factor) {
    return new Range(1 / factor, 1, factor);
  }
}
