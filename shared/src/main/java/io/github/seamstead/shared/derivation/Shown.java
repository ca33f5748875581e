package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.check.Args;

/**
 * How steps are shown: to how many digits, and whether angles stand in degrees.
 *
 * @param digits significant digits, 1 to 17
 * @param degrees true if an angle is shown in degrees alone, also where it goes into a formula and
 *     where π stands in the formula of an angle; false for radians followed by degrees
 */
public record Shown(int digits, boolean degrees) {

  /** As many digits as {@link Typeset#SHOWN_DIGITS}, angles in radians and degrees. */
  public static final Shown IN_FULL = new Shown(Typeset.SHOWN_DIGITS, false);

  /** Four digits and degrees: as a pupil writes with a pocket calculator. */
  public static final Shown FOR_CLASS = new Shown(4, true);

  public Shown {
    Args.within("digits", digits, 1, 17);
  }
}
