package io.github.seamstead.api.chapter;

import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.shared.check.Args;

/**
 * What is supposed of numbers that no job document states and that the plan knows only with doubt.
 * Planning with other suppositions shows how much such a doubt moves the plan.
 *
 * @param clay how far the clay of each soil lies off what its tests say, in standard uncertainties,
 *     -6 to 6
 * @param looseSoil how far the loose density of each soil lies off, in standard uncertainties; -6
 *     to 6
 * @param looseSand how far the loose density of each aggregate lies off, in standard uncertainties;
 *     -6 to 6
 * @param pace where in its range each layer's working time lies: -1 the low end, 0 as likely, 1 the
 *     high end
 * @param drying how far the two unknowns of drying may stray
 * @param soundReadings whether the readings of the tape hold no blunder, so that none is looked for
 */
public record Supposed(
    double clay,
    double looseSoil,
    double looseSand,
    double pace,
    DryingDoubt drying,
    boolean soundReadings) {

  private static final double FARTHEST = 6;

  /** All as likely, with the published doubt of drying. */
  public static final Supposed NOTHING = new Supposed(0, 0, 0, 0, DryingDoubt.published(), false);

  public Supposed {
    Args.within("clay", clay, -FARTHEST, FARTHEST, "");
    Args.within("loose soil", looseSoil, -FARTHEST, FARTHEST, "");
    Args.within("loose sand", looseSand, -FARTHEST, FARTHEST, "");
    Args.within("pace", pace, -1, 1, "");
  }
}
