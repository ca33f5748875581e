package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.Optional;

/**
 * When a coat reaches a state, with the range of the doubt.
 *
 * @param name firm, walkable or dry to coat
 * @param moisture mean moisture of the coat that counts as reached
 * @param soonest in days; empty if not within the horizon
 * @param likely in days; empty if not within the horizon
 * @param latest in days; empty if not within the horizon
 * @param horizon how far the forecast looked, in days
 */
public record Milestone(
    String name,
    double moisture,
    Optional<Double> soonest,
    Optional<Double> likely,
    Optional<Double> latest,
    double horizon) {

  /** In days; a shorter wait is over before the next morning (common practice). */
  public static final double OVERNIGHT = 0.5;

  /**
   * Tells whether the work has to wait longer than a night for it.
   *
   * @return true if it is likely reached later than {@value #OVERNIGHT} days, or not in the horizon
   */
  public boolean isWaitedFor() {
    return likely.orElse(horizon) > OVERNIGHT;
  }

  /**
   * Writes the milestone for people.
   *
   * @return for example {@code firm: likely 3 days (2 to 5)}
   */
  public String text() {
    return name
        + ": likely "
        + days(likely)
        + " days ("
        + days(soonest)
        + " to "
        + days(latest)
        + ")";
  }

  private String days(Optional<Double> value) {
    return value.isPresent()
        ? Numbers.significant(value.get(), 2)
        : "more than " + Numbers.significant(horizon, 3);
  }
}
