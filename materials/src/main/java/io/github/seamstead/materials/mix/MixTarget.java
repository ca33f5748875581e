package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * What a mix should be.
 *
 * @param band clay share wanted
 * @param aim what decides among all mixes that meet the limits
 * @param grading grading to come close to; needed for {@link Aim#NEAREST_GRADING}
 * @param greatestShrinkage greatest linear shrinkage allowed, a ratio, 0 to 0.3; empty for no limit
 */
public record MixTarget(
    ClayBand band, Aim aim, Optional<GradingTarget> grading, Optional<Double> greatestShrinkage) {

  /** What decides among mixes that meet all limits. */
  public enum Aim {
    /** Clay nearest the middle of its band; the other shares as even as may be. */
    MIDDLE_OF_BAND,
    /** Least squares of the distance to the grading target. */
    NEAREST_GRADING,
    /** Least price of a dry tonne. */
    LEAST_COST
  }

  public MixTarget {
    Args.require(
        aim != Aim.NEAREST_GRADING || grading.isPresent(),
        "grading target: given none, needed when the nearest grading is aimed at");
    greatestShrinkage.ifPresent(s -> Args.within("greatest linear shrinkage", s, 0, 0.3, ""));
  }

  /**
   * Aims at the middle of a clay band.
   *
   * @param band clay share wanted
   * @return the target
   */
  public static MixTarget of(ClayBand band) {
    return new MixTarget(band, Aim.MIDDLE_OF_BAND, Optional.empty(), Optional.empty());
  }

  /**
   * Aims at a grading within a clay band.
   *
   * @param band clay share wanted
   * @param grading grading to come close to
   * @return the target
   */
  public static MixTarget near(ClayBand band, GradingTarget grading) {
    return new MixTarget(band, Aim.NEAREST_GRADING, Optional.of(grading), Optional.empty());
  }

  /**
   * Aims at the least price within a clay band.
   *
   * @param band clay share wanted
   * @return the target
   */
  public static MixTarget cheapest(ClayBand band) {
    return new MixTarget(band, Aim.LEAST_COST, Optional.empty(), Optional.empty());
  }

  /**
   * The same with a limit of shrinkage.
   *
   * @param greatest greatest linear shrinkage, a ratio, 0 to 0.3
   * @return the target
   */
  public MixTarget withShrinkageLimit(double greatest) {
    return new MixTarget(band, aim, grading, Optional.of(greatest));
  }
}
