package io.github.seamstead.materials.floor;

import java.util.Optional;

/** How much thinner a layer may be laid to save on it (all common practice). */
public final class ThinnerLayer {

  /** By what a dry pack is made thinner at a time, and the thinnest that is rammed, in metres. */
  private static final double PACK_STEP = 0.01;

  private static final double LEAST_PACK = 0.03;

  /** The same of a coat. */
  private static final double COAT_STEP = 0.005;

  private static final double LEAST_COAT = 0.01;

  /** Grains that must still lie on each other in a coat, so that it closes under the trowel. */
  private static final double COAT_GRAINS = 3;

  private ThinnerLayer() {}

  /**
   * Gives a thinner dry pack: 10 mm less, but no less than 30 mm.
   *
   * @param thickness the thickness as planned, in metres
   * @return the thickness, in metres; empty if it may not be thinner
   */
  public static Optional<Double> pack(double thickness) {
    return Optional.of(thickness - PACK_STEP).filter(thinner -> thinner >= LEAST_PACK);
  }

  /**
   * Gives a thinner coat: 5 mm less, but no less than 10 mm nor than three of its largest grains.
   *
   * @param thickness the thickness as planned, in metres
   * @param largestGrain the largest grain of its mix, in metres
   * @return the thickness, in metres; empty if it may not be thinner
   */
  public static Optional<Double> coat(double thickness, double largestGrain) {
    return Optional.of(thickness - COAT_STEP)
        .filter(thinner -> thinner >= COAT_GRAINS * largestGrain && thinner >= LEAST_COAT);
  }
}
