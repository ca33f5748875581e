package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.quantity.Numbers;

/**
 * A question for the class with the answer that the library gives.
 *
 * @param question the question, with every number that it needs
 * @param answer the answer at full precision, in {@code unit}
 * @param unit the unit's symbol, empty for a pure number
 * @param digits significant digits that a pupil should give
 */
public record Exercise(String question, double answer, String unit, int digits) {

  /**
   * Writes the answer as a pupil should.
   *
   * @return for example {@code 3.91 m}
   */
  public String shownAnswer() {
    String number = Numbers.significant(answer, digits);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
