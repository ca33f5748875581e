package io.github.seamstead.assembly.merge;

/** What the plan shall keep small. Ties are broken by handled mass. */
public enum Objective {
  /** The sum over all merges of the mass in hand, in kilogram-lifts. */
  HANDLED_MASS("handled mass"),
  /** The time of all joints added up, as one team would need. */
  WORK_TIME("work time"),
  /** The time from the first joint to the last with the teams there are. */
  ELAPSED_TIME("elapsed time"),
  /** The heaviest single carry. */
  HEAVIEST_CARRY("heaviest carry");

  private final String label;

  Objective(String label) {
    this.label = label;
  }

  /**
   * Names the objective as the book prints it.
   *
   * @return for example {@code handled mass}
   */
  public String label() {
    return label;
  }
}
