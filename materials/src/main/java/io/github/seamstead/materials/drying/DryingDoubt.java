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

  /**
   * Supposes that the two unknowns lie elsewhere: as far off in this doubt as a draw of the
   * published one lies off in that. What was calibrated on a tile so keeps what is left of its
   * doubt.
   *
   * @param draw factors drawn from {@link #published()}, each a range of one value; or the
   *     published doubt itself, which supposes nothing
   * @return ranges of one value; or this doubt, if nothing is supposed
   */
  public DryingDoubt supposing(DryingDoubt draw) {
    if (draw.equals(published())) {
      return this;
    }
    return new DryingDoubt(
        Range.exactly(
            held(diffusivity, draw.diffusivity().likely(), EarthMoisture.SCATTER, 0.01, 100)),
        Range.exactly(held(exchange, draw.exchange().likely(), Evaporation.SCATTER, 0.1, 10)));
  }

  /** In equal ratios, as far from the likely value as the draw is, counted in its own reach. */
  private static double held(
      Range range, double draw, double scatter, double least, double greatest) {
    double position = StrictMath.log(draw) / StrictMath.log(scatter);
    double reach = position < 0 ? range.likely() / range.low() : range.high() / range.likely();
    double value = range.likely() * StrictMath.pow(reach, position);
    return Math.max(least, Math.min(greatest, value));
  }

  private static Range around(double factor) {
    return new Range(1 / factor, 1, factor);
  }
}
