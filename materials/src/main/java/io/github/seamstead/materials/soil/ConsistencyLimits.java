package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Liquid and plastic limits of the part below 0.425 mm.
 *
 * <p>Likelihood: the plasticity index is log-normal about {@code 0.8 (clay - 0.03) + 0.005}, clay
 * as a share of the part below 0.425 mm, with a log deviation of 0.45: the spread of activity
 * between kaolinite (0.4) and active clays (1.25 and more), which hand tests and shrinkage of the
 * same soil share. A soil that is not plastic at all
 * (equal limits) has little clay: a logistic fall at 8 % of clay. With probability 0.04 it
 * misleads.
 *
 * @param liquidLimit water over dry mass at the liquid limit, 0.05 to 5
 * @param plasticLimit water over dry mass at the plastic limit, at most the liquid limit; 0.02 to
 *     the liquid limit
 */
public record ConsistencyLimits(double liquidLimit, double plasticLimit) implements SoilEvidence {

  /** Activity, the plasticity index over the clay share. */
  public static final Source SOURCE =
      Source.fromMemory("Skempton", "The Colloidal Activity of Clays", "1953", "");

  private static final double MISLEADS = 0.04;
  private static final double LOG_DEVIATION = 0.45;
  private static final double NOT_PLASTIC = 0.005;

  /** Parts of clay, silt and sand that pass the 0.425 mm sieve of the limit tests. */
  private static final double[] PARTS_FINER = GrainSizes.partsFiner(0.425e-3);

  public ConsistencyLimits {
    check(liquidLimit, plasticLimit);
  }

  static void check(double liquidLimit, double plasticLimit) {
    Args.within("liquid limit", liquidLimit, 0.05, 5, "");
    Args.require(
        plasticLimit >= 0.02 && plasticLimit <= liquidLimit,
        "plastic limit",
        Numbers.plain(plasticLimit),
        "must be from 0.02 to the liquid limit "
            + Numbers.plain(liquidLimit)
            + " (a soil takes more water to flow than to roll",
        "were the two swapped?)");
  }

  /**
   * Places the soil in the plasticity chart.
   *
   * @return the point
   */
  public PlasticityChart chart() {
    return PlasticityChart.of(liquidLimit, plasticLimit);
  }

  @Override
  public String label() {
    return "limits: liquid "
        + Numbers.significant(liquidLimit * 100, 3)
        + " %, plastic "
        + Numbers.significant(plasticLimit * 100, 3)
        + " %";
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE, PlasticityChart.SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    IndexReading reading = reading();
    if (reading == IndexReading.NONE) {
      ClayLikelihood lean =
          clay -> (1 - MISLEADS) * Densities.logistic((0.08 - clay) / 0.02) + MISLEADS / 2;
      return lean;
    }
    return reading.likelihood();
  }

  /** What the limits tell of the index; none if the soil is not plastic. */
  IndexReading reading() {
    double index = liquidLimit - plasticLimit;
    return index <= NOT_PLASTIC
        ? IndexReading.NONE
        : new IndexReading(StrictMath.log(index), LOG_DEVIATION, MISLEADS, 1 / 4.0);
  }

  /** Plasticity index that goes with a texture at the usual activity. */
  static double expectedIndex(double clay, double silt) {
    double fine = GrainSizes.finer(PARTS_FINER, clay, silt);
    double share = fine > 0 ? clay / fine : 0;
    return 0.8 * Math.max(0, share - 0.03) + 0.005;
  }

  @Override
  public List<String> remarks() {
    PlasticityChart chart = chart();
    return chart.aboveUpperLine() ? List.of(chart.remark()) : List.of();
  }
}
