package io.github.seamstead.shared.work;

import io.github.seamstead.shared.check.Args;
import java.time.Duration;
import java.util.Optional;

/**
 * How much a search may spend: a count of work units, a time, or both (the first to run out stops
 * it). A work unit is what the search documents, such as one evaluated move; only a pure work
 * budget gives the same result on every machine.
 *
 * @param workUnits the most work units, 0 or more; {@link Long#MAX_VALUE} for no limit
 * @param time the most wall-clock time; empty for no limit; not negative
 */
public record Budget(long workUnits, Optional<Duration> time) {

  public Budget {
    Args.require(workUnits >= 0, "work units", String.valueOf(workUnits), "must be 0 or more");
    Args.require(
        time.isEmpty() || !time.get().isNegative(),
        "time",
        time.orElse(Duration.ZERO).toString(),
        "must not be negative");
    Args.require(
        workUnits != Long.MAX_VALUE || time.isPresent(),
        "budget",
        "no limit",
        "must have a work or a time limit");
  }

  /**
   * Limits the work and not the time, so that the result is the same on every machine.
   *
   * @param workUnits 0 or more
   * @return the budget
   */
  public static Budget ofWork(long workUnits) {
    return new Budget(workUnits, Optional.empty());
  }

  /**
   * Limits the time and not the work; the result then depends on the machine's speed.
   *
   * @param time not negative
   * @return the budget
   */
  public static Budget ofTime(Duration time) {
    return new Budget(Long.MAX_VALUE, Optional.of(time));
  }
}
