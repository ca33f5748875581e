package io.github.seamstead.assembly.merge;

/**
 * What a plan costs, by every measure.
 *
 * @param mergedMassKg sum over the merges of the mass in hand, in kilogram-lifts
 * @param closingMassKg mass in hand at the closing joint: the whole cover of a ring, 0 for a line
 * @param workSeconds time of all joints, in seconds
 * @param elapsedSeconds time from first to last with the teams, in seconds
 * @param heaviestInHandKg the most mass in hand at one step, in kilograms
 * @param heaviestCarriedKg the heaviest carry, in kilograms
 * @param withinLimits whether every step keeps the limits
 */
public record PlanCost(
    double mergedMassKg,
    double closingMassKg,
    double workSeconds,
    double elapsedSeconds,
    double heaviestInHandKg,
    double heaviestCarriedKg,
    boolean withinLimits) {

  /**
   * Adds the closing joint to the merges.
   *
   * @return handled mass, in kilogram-lifts
   */
  public double handledMassKg() {
    return mergedMassKg + closingMassKg;
  }
}
