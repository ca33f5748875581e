package io.github.seamstead.assembly.merge;

/**
 * What a plan costs, by every measure.
 *
 * @param mergedMass sum over the merges of the mass in hand, in kilogram-lifts
 * @param closingMass mass in hand at the closing joint: the whole cover of a ring, 0 for a line
 * @param workTime time of all joints, in seconds
 * @param elapsedTime time from first to last with the teams, in seconds
 * @param heaviestInHand the most mass in hand at one step, in kilograms
 * @param heaviestCarried the heaviest carry, in kilograms
 * @param withinLimits whether every step keeps the limits
 */
public record PlanCost(
    double mergedMass,
    double closingMass,
    double workTime,
    double elapsedTime,
    double heaviestInHand,
    double heaviestCarried,
    boolean withinLimits) {

  /**
   * Adds the closing joint to the merges.
   *
   * @return handled mass, in kilogram-lifts
   */
  public double handledMass() {
    return mergedMass + closingMass;
  }
}
