package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Cancellation;
import java.util.List;

/**
 * What the search for blunders found.
 *
 * @param first the adjustment of all readings
 * @param blunders the readings taken out, in the order in which they were found
 * @param accepted the adjustment without them; the same as {@code first} if there are none. A rival
 *     of a blunder that may be the wrong one instead stays in it with an uncertainty that covers
 *     its error too; a blunder that nothing controls is stood in for by the regular frame's value,
 *     as uncertain as frames like this one are bent
 * @param undecided true if a blunder may be another reading's, if nothing controls it, or if
 *     readings are still suspect but no more could be taken out
 */
public record BlunderReport(
    Adjustment first, List<Blunder> blunders, Adjustment accepted, boolean undecided) {

  /**
   * Says what the accepted readings check among themselves, and what to read before cloth is cut.
   * Readings that were taken out count as not read.
   *
   * @return the control of the accepted adjustment
   */
  public SurveyControl control() {
    return accepted.control();
  }

  /**
   * As {@link #control()}, with a switch that ends it.
   *
   * @param cancellation ends the search for readings to take
   * @return the control of the accepted adjustment
   * @throws java.util.concurrent.CancellationException if it is cancelled
   */
  public SurveyControl control(Cancellation cancellation) {
    return accepted.control(cancellation);
  }

  public BlunderReport {
    blunders = List.copyOf(blunders);
  }
}
