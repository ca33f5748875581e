package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.shared.check.Args;
import java.util.OptionalDouble;

/**
 * What no merge may exceed. An empty limit is none.
 *
 * @param rule which mass and bulk count
 * @param carriedMassKg the most mass that the people at hand may carry, in kilograms; greater than
 *     0 if given
 * @param carriedBulkCubicMetres the most bulk that they can get hold of, in cubic metres; greater
 *     than 0 if given
 * @param reachMetres the throat of the tool: the bunch on one side of the seam must pass through
 *     it, in metres; the smaller group goes through, at the closing joint half of the cover;
 *     greater than 0 if given
 * @param floorSquareMetres floor on which both groups are laid for a merge, in square metres;
 *     greater than 0 if given
 */
public record Limits(
    CarryRule rule,
    OptionalDouble carriedMassKg,
    OptionalDouble carriedBulkCubicMetres,
    OptionalDouble reachMetres,
    OptionalDouble floorSquareMetres) {

  /** No limits; the lighter group is carried. */
  public static final Limits NONE =
      new Limits(
          CarryRule.LIGHTER_IS_CARRIED,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());

  private static final double ROUNDING = 1 + 1e-9;

  public Limits {
    carriedMassKg.ifPresent(v -> Args.positive("carried mass limit", v, "kg"));
    carriedBulkCubicMetres.ifPresent(v -> Args.positive("carried bulk limit", v, "m3"));
    reachMetres.ifPresent(v -> Args.positive("reach of the tool", v, "m"));
    floorSquareMetres.ifPresent(v -> Args.positive("floor", v, "m2"));
  }

  /**
   * Sets the mass that may be carried.
   *
   * @param kg in kilograms, greater than 0
   * @return the new limits
   */
  public Limits withCarriedMass(double kg) {
    return new Limits(
        rule, OptionalDouble.of(kg), carriedBulkCubicMetres, reachMetres, floorSquareMetres);
  }

  /**
   * Sets the bulk that may be carried.
   *
   * @param cubicMetres in cubic metres, greater than 0
   * @return the new limits
   */
  public Limits withCarriedBulk(double cubicMetres) {
    return new Limits(
        rule, carriedMassKg, OptionalDouble.of(cubicMetres), reachMetres, floorSquareMetres);
  }

  /**
   * Sets the throat of the tool.
   *
   * @param metres in metres, greater than 0
   * @return the new limits
   */
  public Limits withReach(double metres) {
    return new Limits(
        rule, carriedMassKg, carriedBulkCubicMetres, OptionalDouble.of(metres), floorSquareMetres);
  }

  /**
   * Sets the floor.
   *
   * @param squareMetres in square metres, greater than 0
   * @return the new limits
   */
  public Limits withFloor(double squareMetres) {
    return new Limits(
        rule, carriedMassKg, carriedBulkCubicMetres, reachMetres, OptionalDouble.of(squareMetres));
  }

  /**
   * Sets which mass counts.
   *
   * @param newRule the rule
   * @return the new limits
   */
  public Limits withRule(CarryRule newRule) {
    return new Limits(
        newRule, carriedMassKg, carriedBulkCubicMetres, reachMetres, floorSquareMetres);
  }

  /**
   * Tells whether there is no limit at all.
   *
   * @return true if every limit is empty
   */
  public boolean isEmpty() {
    return carriedMassKg.isEmpty()
        && carriedBulkCubicMetres.isEmpty()
        && reachMetres.isEmpty()
        && floorSquareMetres.isEmpty();
  }

  /** Gives what is carried when two groups are joined. */
  double carried(double left, double right) {
    return rule == CarryRule.BOTH_ARE_LIFTED ? left + right : Math.min(left, right);
  }

  /** Gives what is carried when the whole is closed. */
  double carriedAtClosing(double whole) {
    return rule == CarryRule.BOTH_ARE_LIFTED ? whole : whole / 2;
  }

  /** Tells whether two groups may be joined. */
  boolean permitMerge(Load left, Load right) {
    return permit(
        carried(left.massKg(), right.massKg()),
        carried(left.bulkCubicMetres(), right.bulkCubicMetres()),
        Math.min(left.bunchMetres(), right.bunchMetres()),
        left.laidAreaSquareMetres() + right.laidAreaSquareMetres());
  }

  /** Tells whether the whole may be closed. */
  boolean permitClosing(Load whole) {
    return permit(
        carriedAtClosing(whole.massKg()),
        carriedAtClosing(whole.bulkCubicMetres()),
        whole.bunchMetres() / 2,
        whole.laidAreaSquareMetres());
  }

  private boolean permit(double mass, double bulk, double bunch, double floor) {
    // Sums of the same masses in another order may differ in the last digits.
    return mass <= carriedMassKg.orElse(Double.MAX_VALUE) * ROUNDING
        && bulk <= carriedBulkCubicMetres.orElse(Double.MAX_VALUE) * ROUNDING
        && bunch <= reachMetres.orElse(Double.MAX_VALUE) * ROUNDING
        && floor <= floorSquareMetres.orElse(Double.MAX_VALUE) * ROUNDING;
  }
}
