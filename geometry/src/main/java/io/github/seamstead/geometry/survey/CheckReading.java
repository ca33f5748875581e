package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Deficiency.Quantity;

/**
 * A reading to take so that others are controlled.
 *
 * @param quantity what to read
 * @param from one end
 * @param to the other end
 * @param repeats true if this was read before and is to be read again, by another hand
 */
public record CheckReading(Quantity quantity, Node from, Node to, boolean repeats) {

  /**
   * Writes the reading.
   *
   * @return such as {@code distance B1-T3} or {@code height difference B1-B4}
   */
  public String text() {
    String what = quantity == Quantity.DISTANCE ? "distance " : "height difference ";
    return what + from + "-" + to + (repeats ? " again" : "");
  }
}
