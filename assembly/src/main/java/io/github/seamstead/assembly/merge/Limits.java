package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * What no merge may exceed. An empty limit is none.
 *
 * @param rule which mass and bulk count
 * @param carriedMass the most mass that the people at hand may carry, in kilograms; greater than 0
 *     if given
 * @param carriedBulk the most bulk that they can get hold of, in cubic metres; greater than 0 if
 *     given
 * @param reach the throat of the tool: the bunch on one side of the seam must pass through it, in
 *     metres; the smaller group goes through, at the closing joint half of the cover; greater than
 *     0 if given
 * @param floorArea floor on which both groups are laid for a merge, in square metres; greater than
 *     0 if given
 */
public record Limits(
    CarryRule rule,
    Optional<Double> carriedMass,
    Optional<Double> carriedBulk,
    Optional<Double> reach,
    Optional<Double> floorArea) {

  /** No limits; the lighter group is carried. */
  public static final Limits NONE =
      new Limits(
          CarryRule.LIGHTER_IS_CARRIED,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static final double ROUNDING = 1 + 1e-9;

  public Limits {
    carriedMass.ifPresent(v -> Args.positive("carried mass limit", v, "kg"));
    carriedBulk.ifPresent(v -> Args.positive("carried bulk limit", v, "m3"));
    reach.ifPresent(v -> Args.positive("reach of the tool", v, "m"));
    floorArea.ifPresent(v -> Args.positive("floor", v, "m2"));
  }

  /**
   * Sets the mass that may be carried.
   *
   * @param kg in kilograms, greater than 0
   * @return the new limits
   */
  public Limits withCarriedMass(double kg) {
    return new Limits(rule, Optional.of(kg), carriedBulk, reach, floorArea);
  }

  /**
   * Sets the bulk that may be carried.
   *
   * @param cubicMetres in cubic metres, greater than 0
   * @return the new limits
   */
  public Limits withCarriedBulk(double cubicMetres) {
    return new Limits(rule, carriedMass, Optional.of(cubicMetres), reach, floorArea);
  }

  /**
   * Sets the throat of the tool.
   *
   * @param metres in metres, greater than 0
   * @return the new limits
   */
  public Limits withReach(double metres) {
    return new Limits(rule, carriedMass, carriedBulk, Optional.of(metres), floorArea);
  }

  /**
   * Sets the floor.
   *
   * @param area in square metres, greater than 0
   * @return the new limits
   */
  public Limits withFloor(double area) {
    return new Limits(rule, carriedMass, carriedBulk, reach, Optional.of(area));
  }

  /**
   * Sets which mass counts.
   *
   * @param newRule the rule
   * @return the new limits
   */
  public Limits withRule(CarryRule newRule) {
    return new Limits(newRule, carriedMass, carriedBulk, reach, floorArea);
  }

  /**
   * Tells whether there is no limit at all.
   *
   * @return true if every limit is empty
   */
  public boolean isEmpty() {
    return carriedMass.isEmpty() && carriedBulk.isEmpty() && reach.isEmpty() && floorArea.isEmpty();
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
        carried(left.mass(), right.mass()),
        carried(left.bulkVolume(), right.bulkVolume()),
        Math.min(left.bunch(), right.bunch()),
        left.laidArea() + right.laidArea());
  }

  /** Tells whether the whole may be closed. */
  boolean permitClosing(Load whole) {
    return permit(
        carriedAtClosing(whole.mass()),
        carriedAtClosing(whole.bulkVolume()),
        whole.bunch() / 2,
        whole.laidArea());
  }

  private boolean permit(double mass, double bulk, double bunch, double floor) {
    // Sums of the same masses in another order may differ in the last digits.
    return mass <= carriedMass.orElse(Double.MAX_VALUE) * ROUNDING
        && bulk <= carriedBulk.orElse(Double.MAX_VALUE) * ROUNDING
        && bunch <= reach.orElse(Double.MAX_VALUE) * ROUNDING
        && floor <= floorArea.orElse(Double.MAX_VALUE) * ROUNDING;
  }
}
