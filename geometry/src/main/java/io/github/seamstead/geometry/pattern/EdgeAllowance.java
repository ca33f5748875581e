package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * The cloth that an edge needs beyond its stitch line, and what for.
 *
 * @param role what becomes of the edge
 * @param width cloth beyond the stitch line, square to it, in metres, 0 or more; 0 for a reinforced
 *     or raw edge
 */
public record EdgeAllowance(EdgeRole role, double width) {

  /** Usual cloth of a turned hem, in metres: two turns of a peg's loop (common practice). */
  public static final double USUAL_HEM = 0.05;

  public EdgeAllowance {
    Args.notNegative(role.label() + " allowance", width, "m");
    Args.require(
        width == 0 || (role != EdgeRole.REINFORCED && role != EdgeRole.RAW),
        role.label() + " allowance",
        Numbers.plain(width) + " m",
        "must be 0 m: the edge is not turned");
  }

  /**
   * Allows for a fin seam.
   *
   * @param width stitch line to cut edge, in metres, 0 or more
   * @return the allowance
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public static EdgeAllowance finSeam(double width) {
    return new EdgeAllowance(EdgeRole.FIN_SEAM, width);
  }

  /**
   * Allows for the upper, outer side of a lap.
   *
   * @param width beyond the stitch line, in metres, 0 or more
   * @return the allowance
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public static EdgeAllowance lapOver(double width) {
    return new EdgeAllowance(EdgeRole.LAP_OVER, width);
  }

  /**
   * Allows for the lower, inner side of a lap.
   *
   * @param width beyond the stitch line, in metres, 0 or more
   * @return the allowance
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public static EdgeAllowance lapUnder(double width) {
    return new EdgeAllowance(EdgeRole.LAP_UNDER, width);
  }

  /**
   * Allows for a hem.
   *
   * @param width all cloth beyond the fold, the turn-under included, in metres, 0 or more
   * @return the allowance
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public static EdgeAllowance hem(double width) {
    return new EdgeAllowance(EdgeRole.HEM, width);
  }

  /**
   * Allows for a turn-in at the top or round an opening.
   *
   * @param width beyond the fold, in metres, 0 or more
   * @return the allowance
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public static EdgeAllowance turnIn(double width) {
    return new EdgeAllowance(EdgeRole.TURN_IN, width);
  }

  /**
   * Puts the edge on the reinforced edge of the stock.
   *
   * @return no allowance
   */
  public static EdgeAllowance reinforced() {
    return new EdgeAllowance(EdgeRole.REINFORCED, 0);
  }

  /**
   * Leaves the edge as cut.
   *
   * @return no allowance
   */
  public static EdgeAllowance raw() {
    return new EdgeAllowance(EdgeRole.RAW, 0);
  }

  /** Tells whether cloth is folded back here. */
  boolean folds() {
    return role.isFolded() && width > 0;
  }
}
