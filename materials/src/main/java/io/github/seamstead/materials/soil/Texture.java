package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * Clay, silt and sand as shares of the dry mass below 2 mm, by the USDA limits 0.002 and 0.05 mm.
 *
 * <p>Invariant: each share is from 0 to 1 and the three add to 1 within 1e-9.
 *
 * @param clayRatio share of clay (below 0.002 mm), 0 to 1
 * @param siltRatio share of silt (0.002 to 0.05 mm), 0 to 1
 * @param sandRatio share of sand (0.05 to 2 mm), 0 to 1
 */
public record Texture(double clayRatio, double siltRatio, double sandRatio) {

  private static final double SUM_TOLERANCE = 1e-9;
  private static final double PERCENT_TOLERANCE = 1.5;

  public Texture {
    Args.within("clay ratio", clayRatio, 0, 1, "");
    Args.within("silt ratio", siltRatio, 0, 1, "");
    Args.within("sand ratio", sandRatio, 0, 1, "");
    double sum = clayRatio + siltRatio + sandRatio;
    Args.require(
        Math.abs(sum - 1) <= SUM_TOLERANCE,
        "texture",
        "clay "
            + Numbers.plain(clayRatio)
            + ", silt "
            + Numbers.plain(siltRatio)
            + ", sand "
            + Numbers.plain(sandRatio)
            + ", which add to "
            + Numbers.significant(sum, 6),
        "must add to 1 (they share out the dry mass below 2 mm)");
  }

  /**
   * Makes a texture from whole or rounded percentages as a report prints them.
   *
   * @param clay clay in per cent of the dry mass below 2 mm, 0 to 100
   * @param silt silt in per cent, 0 to 100
   * @param sand sand in per cent, 0 to 100
   * @return the shares, scaled so that they add to exactly 1
   * @throws IllegalArgumentException if they do not add to 100 within 1.5, which is what rounding
   *     three numbers can lose
   */
  public static Texture ofPercent(double clay, double silt, double sand) {
    Args.within("clay", clay, 0, 100, "%");
    Args.within("silt", silt, 0, 100, "%");
    Args.within("sand", sand, 0, 100, "%");
    double sum = clay + silt + sand;
    Args.require(
        Math.abs(sum - 100) <= PERCENT_TOLERANCE,
        "texture",
        "clay "
            + Numbers.plain(clay)
            + " %, silt "
            + Numbers.plain(silt)
            + " %, sand "
            + Numbers.plain(sand)
            + " %, which add to "
            + Numbers.significant(sum, 6)
            + " %",
        "must add to 100 % within 1.5 % (rounding)",
        "is a fraction such as gravel missing?");
    return ofClayAndSand(clay / sum, sand / sum);
  }

  /**
   * Makes a texture from two shares; silt is the rest.
   *
   * @param clayRatio share of clay, 0 to 1
   * @param sandRatio share of sand, 0 to 1 less the clay
   * @return the texture
   * @throws IllegalArgumentException if the two exceed 1
   */
  public static Texture ofClayAndSand(double clayRatio, double sandRatio) {
    double silt = 1 - clayRatio - sandRatio;
    // A rest of a few ulps below zero is the rounding of an exact zero.
    return new Texture(clayRatio, silt < 0 && silt > -SUM_TOLERANCE ? 0 : silt, sandRatio);
  }

  /**
   * Names the class in the USDA system.
   *
   * @return the one class whose rule holds
   */
  public TextureClass usdaClass() {
    return TextureClass.of(clayRatio, siltRatio, sandRatio);
  }
}
