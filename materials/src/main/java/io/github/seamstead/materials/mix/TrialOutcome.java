package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * What one dried trial sample showed.
 *
 * @param sandParts parts of sand per part of soil, on the ladder's basis, 0 to 20
 * @param crackWidth widths of all cracks and gaps along the mould added up, in metres; 0 to a fifth
 *     of the mould
 * @param mould length of the mould, in metres, 0.05 to 2; 0.05 to 2 m
 * @param dusting what rubbing the surface brings off
 * @param scratch what a fingernail does
 * @param drop what a drop of 1 m on a hard floor does
 * @param sticky whether the wet mix stuck to the trowel
 */
public record TrialOutcome(
    double sandParts,
    double crackWidth,
    double mould,
    Dusting dusting,
    Scratch scratch,
    Drop drop,
    boolean sticky) {

  /** Samples of this difference in straw over dry mass crack alike (common practice). */
  public static final double SAME_STRAW = 0.003;

  /** What rubbing with the palm brings off. */
  public enum Dusting {
    /** Nothing. */
    NONE,
    /** A little; the palm is marked. */
    SLIGHT,
    /** Grains come off freely. */
    HEAVY
  }

  /** What a fingernail does. */
  public enum Scratch {
    /** Hardly a mark. */
    HARD,
    /** A clear mark. */
    MARKED,
    /** It digs in and the surface crumbles. */
    CRUMBLES
  }

  /** What a drop does. */
  public enum Drop {
    /** Whole. */
    WHOLE,
    /** Corners chip. */
    CHIPS,
    /** It breaks up. */
    BREAKS
  }

  public TrialOutcome {
    Args.within("parts of sand", sandParts, 0, 20, "");
    Args.within("mould length", mould, 0.05, 2, "m");
    Args.require(
        crackWidth >= 0 && crackWidth <= mould / 5,
        "cracks",
        Numbers.plain(crackWidth) + " m in a mould of " + Numbers.plain(mould) + " m",
        "must be from 0 to a fifth of it (is it in mm?)");
  }

  /**
   * Makes an outcome from cracks and dusting alone; the rest as a good sample shows it.
   *
   * @param sandParts parts of sand per part of soil
   * @param crackWidth widths of all cracks added up, m
   * @param mould length of the mould, m
   * @param dusting what rubbing brings off
   * @return the outcome
   */
  public static TrialOutcome of(
      double sandParts, double crackWidth, double mould, Dusting dusting) {
    return new TrialOutcome(
        sandParts, crackWidth, mould, dusting, Scratch.MARKED, Drop.CHIPS, false);
  }

  /**
   * Gives the total crack width over the mould length.
   *
   * @return a ratio
   */
  public double crackRatio() {
    return crackWidth / mould;
  }

  /** How weak the sample is: 0 sound, 1 too sandy, in between doubtful. */
  double weakness() {
    double rubbed =
        switch (dusting) {
          case NONE -> 0;
          case SLIGHT -> 0.35;
          case HEAVY -> 1;
        };
    double broken = scratch == Scratch.CRUMBLES || drop == Drop.BREAKS ? 1 : 0;
    return Math.max(rubbed, broken);
  }
}
