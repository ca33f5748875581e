package io.github.seamstead.geometry.layout;

/**
 * What counts as less stock once all pieces are placed. Ties go on to the builder's order of
 * preference, then to the larger remnant.
 */
public enum Objective {
  /** The fewest sheets and rolls, then the least length used. */
  FEWEST_ITEMS,
  /** The least cost, then the fewest items. */
  LEAST_COST,
  /** The least sum of lengths used, then the fewest items. */
  LEAST_LENGTH
}
