package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * The worked steps of one calculation.
 *
 * @param id the calculation's id, as in {@link Calculation}; not blank
 * @param title what was calculated, for a heading; not blank
 * @param steps the steps in the order in which they were computed; the last one is the result; at
 *     least one
 */
public record Derivation(String id, String title, List<Step> steps) {

  public Derivation {
    Args.notBlank("id", id);
    Args.notBlank("title", title);
    steps = Args.notEmpty("steps", steps);
  }

  /**
   * Gives the result.
   *
   * @return the last step
   */
  public Step result() {
    return steps.get(steps.size() - 1);
  }
}
