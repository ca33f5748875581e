package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * How much of a search's terms is spent.
 *
 * <p>An interrupt of the thread that made it ends the search as a cancellation does; the thread
 * stays interrupted and the caller's switch is left as it is. Safe for use by several threads.
 */
public final class Clock {

  /** What ends a search before its count of work does. */
  public enum Ending {
    CANCELLED,
    FINISHED_EARLY,
    INTERRUPTED,
    TIME_LIMIT
  }

  private final Work terms;
  private final long workLimit;
  private final long start = System.nanoTime();
  private final long nanos;
  private final Thread owner = Thread.currentThread();
  private volatile boolean interrupted;

  /**
   * Starts the clock.
   *
   * @param terms the terms of the whole search
   * @param workers among how many workers the work units are shared
   */
  public Clock(Work terms, int workers) {
    this.terms = terms;
    long units = terms.budget().workUnits();
    workLimit = units == Long.MAX_VALUE ? units : units / workers;
    nanos = terms.budget().time().map(t -> t.toNanos()).orElse(Long.MAX_VALUE);
  }

  /** Part of the budget spent, 1 or more when it is used up or the search is to end. */
  public double spent(long work) {
    if (isHalted()) {
      return 1;
    }
    double byWork = workLimit == Long.MAX_VALUE ? 0 : (double) work / Math.max(1, workLimit);
    return Math.max(byWork, timeSpent());
  }

  private double timeSpent() {
    return nanos == Long.MAX_VALUE ? 0 : (double) (System.nanoTime() - start) / Math.max(1, nanos);
  }

  /** Whether the caller cancelled the search or interrupted the thread that runs it. */
  boolean isHalted() {
    return terms.cancellation().endsSearches() || isInterrupted();
  }

  private boolean isInterrupted() {
    // Looking does not clear the mark, so that every clock of this thread sees it.
    if (!interrupted && owner.isInterrupted()) {
      interrupted = true;
    }
    return interrupted;
  }

  /** Takes note of an interrupt whose mark the thread has lost by being told of it. */
  void interrupt() {
    interrupted = true;
  }

  /** What ends the search whatever its count of work: a halt, or the time running out. */
  public BooleanSupplier ended() {
    return () -> isHalted() || timeSpent() >= 1;
  }

  /** Why the search has to end or ended early, whatever its count of work; empty if nothing did. */
  public Optional<Ending> ending() {
    if (terms.cancellation().endsSearches()) {
      return Optional.of(
          terms.cancellation().isCancelled() ? Ending.CANCELLED : Ending.FINISHED_EARLY);
    }
    if (isInterrupted()) {
      return Optional.of(Ending.INTERRUPTED);
    }
    return timeSpent() >= 1 ? Optional.of(Ending.TIME_LIMIT) : Optional.empty();
  }

  /** An equal share of what is left. */
  public Budget share(long work, int parts) {
    long units = workLimit == Long.MAX_VALUE ? workLimit : Math.max(0, workLimit - work) / parts;
    Optional<Duration> time =
        terms
            .budget()
            .time()
            .map(t -> Duration.ofNanos(Math.max(0, start + nanos - System.nanoTime()) / parts));
    return new Budget(units, time);
  }
}
