package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.Optional;

/** How much of a search's terms is spent. Made for one worker of a search. */
final class Clock {

  private final Work terms;
  private final long workLimit;
  private final long start = System.nanoTime();
  private final long nanos;

  /**
   * Starts the clock.
   *
   * @param terms the terms of the whole search
   * @param workers among how many workers the work units are shared
   */
  Clock(Work terms, int workers) {
    this.terms = terms;
    long units = terms.budget().workUnits();
    workLimit = units == Long.MAX_VALUE ? units : units / workers;
    nanos = terms.budget().time().map(t -> t.toNanos()).orElse(Long.MAX_VALUE);
  }

  /** Part of the budget spent, 1 or more when it is used up or the search was cancelled. */
  double spent(long work) {
    if (terms.cancellation().isCancelled()) {
      return 1;
    }
    double byWork = workLimit == Long.MAX_VALUE ? 0 : (double) work / Math.max(1, workLimit);
    double byTime =
        nanos == Long.MAX_VALUE ? 0 : (double) (System.nanoTime() - start) / Math.max(1, nanos);
    return Math.max(byWork, byTime);
  }

  /** An equal share of what is left. */
  Budget share(long work, int parts) {
    long units = workLimit == Long.MAX_VALUE ? workLimit : Math.max(0, workLimit - work) / parts;
    Optional<Duration> time =
        terms
            .budget()
            .time()
            .map(t -> Duration.ofNanos(Math.max(0, start + nanos - System.nanoTime()) / parts));
    return new Budget(units, time);
  }
}
