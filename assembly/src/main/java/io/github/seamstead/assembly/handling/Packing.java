package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * How much of a bundle's bulk is cloth: a part of one, low (loose) to high (tight). The named ones
 * are common practice and wide on purpose; a measured one is far better.
 *
 * @param name how it is packed; not blank
 * @param clothRatio cloth volume over bulk, low to high, 0.001 to 1
 */
public record Packing(String name, Range clothRatio) {

  /** Length of a roll of cloth that two people carry between them, in metres (common practice). */
  public static final double ROLL_LENGTH = 2;

  /** The least part of cloth in any bulk. */
  private static final double LEAST = 0.001;

  /** Rolled on the ground by two or more people: 0.5 to 0.85. */
  public static final Packing ROLLED = new Packing("rolled", new Range(0.5, 0.7, 0.85));

  /** Folded flat and pressed down: 0.4 to 0.8. */
  public static final Packing FOLDED = new Packing("folded", new Range(0.4, 0.6, 0.8));

  /** Gathered by hand: 0.1 to 0.35. */
  public static final Packing BUNCHED = new Packing("bunched", new Range(0.1, 0.2, 0.35));

  public Packing {
    Args.notBlank("how it is packed", name);
    Args.within("cloth in the bulk", clothRatio.low(), LEAST, 1, "");
    Args.within("cloth in the bulk", clothRatio.high(), 0, 1, "");
  }

  /**
   * Reads a trial: a piece of the cloth packed into a measured space, such as a bucket or a strap.
   *
   * @param clothArea area of the piece, in square metres, greater than 0
   * @param thickness thickness of the cloth, in metres, greater than 0
   * @param bulkVolume the space that it fills, in cubic metres, at least the cloth's volume
   * @param doubt relative doubt of the trial, 0 or more and less than 1
   * @return the packing with its range
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Packing measured(
      double clothArea, double thickness, double bulkVolume, double doubt) {
    double cloth =
        Args.positive("area of the piece", clothArea, "m2")
            * Args.positive("thickness of the cloth", thickness, "m");
    Args.positive("bulk of the piece", bulkVolume, "m3");
    Args.require(
        bulkVolume >= cloth,
        "bulk of the piece",
        Numbers.plain(bulkVolume) + " m3",
        "must be at least the cloth's own " + Numbers.plain(cloth) + " m3");
    Args.require(
        doubt >= 0 && doubt < 1, "doubt", Numbers.plain(doubt), "must be 0 or more, below 1");
    double ratio = cloth / bulkVolume;
    return new Packing(
        "measured", new Range(ratio * (1 - doubt), ratio, Math.min(1, ratio * (1 + doubt))));
  }
}
