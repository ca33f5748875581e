package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;

/**
 * One part of a floor mix, such as soil, sand, gravel or chopped straw.
 *
 * @param name the material in the crew's words, unique in its mix; say "clay soil", not "clay"; not
 *     blank
 * @param dryMassShare the part's share of the mix by dry mass, 0 to 1; more than 0, at most 1
 * @param looseDryDensity dry mass over loose volume as it lies in the bucket, damp and bulked, in
 *     kg/m³, 10 to 2500
 * @param moisture water over dry mass as it lies in the heap, 0 to 1
 * @param screenedOut share by mass of the raw material that the screen throws out, 0 to 0.95
 */
public record MixPart(
    String name, double dryMassShare, double looseDryDensity, double moisture, double screenedOut) {

  public MixPart {
    Args.notBlank("mix part", name);
    Args.positive(name + ": dry mass share", dryMassShare, "");
    Args.within(name + ": dry mass share", dryMassShare, 0, 1, "");
    Args.within(name + ": loose dry density", looseDryDensity, 10, 2500, "kg/m3");
    Args.within(name + ": moisture", moisture, 0, 1, "");
    Args.within(name + ": screened out", screenedOut, 0, 0.95, "");
  }

  /**
   * Makes a part of which nothing is screened out.
   *
   * @param name the material
   * @param dryMassShare share of the mix by dry mass, 0 to 1
   * @param looseDryDensity dry mass over loose volume, in kg/m³
   * @param moisture water over dry mass, 0 to 1
   * @return the part
   * @throws IllegalArgumentException as the constructor does
   */
  public static MixPart of(
      String name, double dryMassShare, double looseDryDensity, double moisture) {
    return new MixPart(name, dryMassShare, looseDryDensity, moisture, 0);
  }

  /** Lighter than this, poured loose, is fibre, in kg/m³ (common practice). */
  public static final double FIBRE_DENSITY = 400;

  /** Name of the straw in mixes and orders. */
  public static final String CHOPPED_STRAW = "chopped straw";

  /** Chopped straw over the dry mass of a fibred floor mix, 0.5 to 2 % (common practice). */
  public static final double USUAL_STRAW = 0.01;

  /**
   * Makes chopped straw: 55 kg/m³ loose and 12 % of moisture as it is kept dry (common practice).
   *
   * @param dryMassShare share of the mix by dry mass; 0.01 is common practice for a floor
   * @return the part
   * @throws IllegalArgumentException if the share is out of range
   */
  public static MixPart choppedStraw(double dryMassShare) {
    return of(CHOPPED_STRAW, dryMassShare, 55, 0.12);
  }

  /**
   * Tells whether the part is fibre, which is added by handfuls and is no part of the grain.
   *
   * @return true below {@link #FIBRE_DENSITY}
   */
  public boolean isFibre() {
    return looseDryDensity < FIBRE_DENSITY;
  }

  /**
   * Gives the mass of a loose cubic metre as it is carried, water included.
   *
   * @return dry density × (1 + moisture), in kg/m³
   */
  public double looseMoistDensity() {
    return looseDryDensity * (1 + moisture);
  }
}
