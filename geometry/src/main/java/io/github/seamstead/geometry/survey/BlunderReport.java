package io.github.seamstead.geometry.survey;

import java.util.List;

/**
 * What the search for blunders found.
 *
 * @param first the adjustment of all readings
 * @param blunders the readings taken out, in the order in which they were found
 * @param accepted the adjustment without them; the same as {@code first} if there are none
 * @param undecided true if readings are still suspect but no more could be taken out
 */
public record BlunderReport(
    Adjustment first, List<Blunder> blunders, Adjustment accepted, boolean undecided) {

  /**
   * Copies the list.
   *
   * @param first the adjustment of all readings
   * @param blunders the readings taken out
   * @param accepted the adjustment without them
   * @param undecided whether suspects are left
   */
  public BlunderReport {
    blunders = List.copyOf(blunders);
  }
}
