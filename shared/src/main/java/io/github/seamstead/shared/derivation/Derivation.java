package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * The worked steps of one calculation.
 *
 * @param id the calculation's id, as in {@link Calculation}
 * @param title what was calculated, for a heading
 * @param steps the steps in the order in which they were computed; the last one is the result
 */
public record Derivation(String id, String title, List<Step> steps) {

  /**
   * Checks the words and copies the steps.
   *
   * @param id not blank
   * @param title not blank
   * @param steps at least one
   * @throws IllegalArgumentException if a text is blank or there is no step
   */
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
