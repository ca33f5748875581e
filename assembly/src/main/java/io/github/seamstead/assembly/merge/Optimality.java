package io.github.seamstead.assembly.merge;

/**
 * How sure it is that a plan is the best.
 *
 * @param proved whether no permitted plan is better by the objective
 * @param value the plan's value by the objective, in its unit
 * @param lowerBound what no permitted plan can go below, in the same unit
 * @param method how it was found, one sentence
 */
public record Optimality(boolean proved, double value, double lowerBound, String method) {

  /**
   * Gives the gap.
   *
   * @return the part of the value that a better plan could save at most, 0 if proved
   */
  public double gapRatio() {
    return proved || value <= 0 ? 0 : Math.max(0, (value - lowerBound) / value);
  }
}
