package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * The clay share that a mix should have.
 *
 * @param use what the mix is for; not blank
 * @param least least clay share of the whole dry mass, 0 to 1
 * @param greatest greatest clay share, above the least, to 1
 * @param source where the band stands
 */
public record ClayBand(String use, double least, double greatest, Source source) {

  /** Wet earth layer of a floor: a soil of 50 to 70 % clay at 1 part to 2½ parts clean sand. */
  public static final ClayBand FLOOR = of(SoilUse.FLOOR);

  /** Cob walls. */
  public static final ClayBand COB = of(SoilUse.COB);

  /** Pressed blocks, the band called good. */
  public static final ClayBand PRESSED_BLOCK = of(SoilUse.PRESSED_BLOCK);

  /** Rammed earth. */
  public static final ClayBand RAMMED_EARTH = of(SoilUse.RAMMED_EARTH);

  /** Clay plaster. */
  public static final ClayBand PLASTER = of(SoilUse.PLASTER);

  public ClayBand {
    Args.notBlank("use", use);
    Args.within("least clay ratio", least, 0, 1, "");
    Args.require(
        greatest > least && greatest <= 1,
        "clay band",
        Numbers.plain(least) + " to " + Numbers.plain(greatest),
        "must rise and end at 1 or less");
  }

  /**
   * Takes the band of a use.
   *
   * @param use the use
   * @return its band
   */
  public static ClayBand of(SoilUse use) {
    return new ClayBand(use.label(), use.leastClay(), use.greatestClay(), use.source());
  }

  /**
   * Makes one's own band.
   *
   * @param least least clay share of the dry mass, 0 to 1
   * @param greatest greatest clay share, above the least, to 1
   * @return the band
   */
  public static ClayBand of(double least, double greatest) {
    return new ClayBand("chosen use", least, greatest, Source.commonPractice("chosen by the user"));
  }

  /**
   * Gives the middle of the band.
   *
   * @return clay share, 0 to 1
   */
  public double middle() {
    return (least + greatest) / 2;
  }

  /**
   * Tells whether a clay share lies in the band, its ends included.
   *
   * @param clayRatio clay share of the dry mass
   * @return true if it does
   */
  public boolean holds(double clayRatio) {
    return clayRatio >= least - 1e-12 && clayRatio <= greatest + 1e-12;
  }
}
