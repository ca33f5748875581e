package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Pegs round a hem: one at each corner, the sides divided evenly.
 *
 * <p>A closed hem of n sides has as many pegs as gaps: {@code n ceil(a / s)}.
 *
 * @param sides sides of the hem, 3 to {@link #MOST_SIDES}
 * @param side length of a side, in metres, greater than 0
 * @param greatestSpacing greatest distance between pegs, in metres, greater than 0; at least a
 *     ten-thousandth of a side
 */
public record HemPegs(int sides, double side, double greatestSpacing) {

  /** The most sides of a hem. */
  public static final int MOST_SIDES = 64;

  /** Greatest distance of pegs round a hem if nothing else is stated: 0.6 m, common practice. */
  public static final double USUAL_SPACING = 0.6;

  private static final Source DERIVED = Source.derived("closed ring: as many pegs as gaps");

  public HemPegs {
    Args.within("sides of the hem", sides, 3, MOST_SIDES);
    Args.positive("side of the hem", side, "m");
    Args.positive("spacing of pegs", greatestSpacing, "m");
    Args.require(
        side / greatestSpacing <= 1e4,
        "pegs of one side",
        Numbers.plain(greatestSpacing) + " m on " + Numbers.plain(side) + " m",
        "must be at most ten thousand");
  }

  /**
   * Computes the gaps of one side.
   *
   * @return 1 or more
   */
  public int gapsPerSide() {
    return (int) Math.max(1, Math.ceil(side / greatestSpacing - 0.000001));
  }

  /**
   * Computes the distance from peg to peg.
   *
   * @return in metres, at most {@link #greatestSpacing()}
   */
  public double spacing() {
    return side / gapsPerSide();
  }

  /**
   * Counts the pegs.
   *
   * @return pegs round the hem
   */
  public int pegs() {
    return (int) pegs(Steps.none());
  }

  /**
   * Counts the pegs with the steps.
   *
   * @param steps where the steps go
   * @return pegs round the hem, a whole number
   */
  @Calculation("assembly.fixings.hempegs")
  public double pegs(Steps steps) {
    return steps
        .step("N", "pegs round the hem")
        .formula("n * max(1, ceil(a / s - 0.000001))")
        .with("n", sides, "")
        .with("a", side, "m")
        .with("s", greatestSpacing, "m")
        .from(DERIVED)
        .gives(sides * (double) gapsPerSide(), "");
  }

  /**
   * Gives the line of the shopping list.
   *
   * @param spare spare as a part of the need, 0 to 1
   * @param packSize pegs in a pack, 1 or more
   * @return pegs
   * @throws IllegalArgumentException if a number is out of range
   */
  public ShoppingItem item(double spare, int packSize) {
    return ShoppingItem.of("pegs", "piece", pegs(), spare, packSize);
  }
}
