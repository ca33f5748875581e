package io.github.seamstead.materials.soil;

/**
 * The grain size curve that goes with a texture where only its three shares are known: straight on
 * a logarithmic axis within each share, clay from 0.0002 mm (an assumption; it only matters for
 * shares below 0.002 mm). Package-private.
 */
final class GrainSizes {

  static final double CLAY_FROM = 0.0002 / 1000;
  static final double CLAY_TO = 0.002 / 1000;
  static final double SILT_TO = 0.05 / 1000;
  static final double SAND_TO = 2.0 / 1000;

  private static final double LN_CLAY = StrictMath.log(CLAY_TO / CLAY_FROM);
  private static final double LN_SILT = StrictMath.log(SILT_TO / CLAY_TO);
  private static final double LN_SAND = StrictMath.log(SAND_TO / SILT_TO);

  private GrainSizes() {}

  /**
   * What part of the clay, the silt and the sand is finer than a diameter in metres: the share
   * finer is linear in the three shares.
   */
  static double[] partsFiner(double diameter) {
    return new double[] {
      part(diameter, CLAY_FROM, CLAY_TO, LN_CLAY),
      part(diameter, CLAY_TO, SILT_TO, LN_SILT),
      part(diameter, SILT_TO, SAND_TO, LN_SAND)
    };
  }

  /** Share of the dry mass below 2 mm that is finer, from {@link #partsFiner}. */
  static double finer(double[] parts, double clay, double silt) {
    return parts[0] * clay + parts[1] * silt + parts[2] * (1 - clay - silt);
  }

  private static double part(double diameter, double from, double to, double lnWidth) {
    if (diameter >= to) {
      return 1;
    }
    return diameter <= from ? 0 : StrictMath.log(diameter / from) / lnWidth;
  }

  /**
   * Share of grains, spread evenly over the logarithm of the diameter between two limits, that lie
   * on the bottom when grains of a diameter have just fallen the whole depth: of a smaller grain
   * the part (s/d)^2 began low enough to arrive, and of these the share early is counted.
   */
  static double settled(double from, double to, double justFallen, double early) {
    double split = Math.min(to, Math.max(from, justFallen));
    double smaller = (split * split - from * from) / (2 * justFallen * justFallen);
    return (early * smaller + StrictMath.log(to / split)) / StrictMath.log(to / from);
  }
}
