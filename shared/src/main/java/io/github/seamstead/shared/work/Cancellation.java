package io.github.seamstead.shared.work;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A switch that asks a long piece of work to stop and return its best so far, or its searches alone
 * to do so and the rest to be done in full. Thread-safe.
 */
public final class Cancellation {

  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final AtomicBoolean finishing = new AtomicBoolean();

  /** Creates a switch that is off. */
  public Cancellation() {}

  /** Asks the work to stop. Calling it again changes nothing. */
  public void cancel() {
    cancelled.set(true);
  }

  /**
   * Tells whether the work was asked to stop.
   *
   * @return true once {@link #cancel()} was called
   */
  public boolean isCancelled() {
    return cancelled.get();
  }

  /**
   * Asks searches to end with their best so far, and the work that has none to be done in full: the
   * whole is then there soon, with nothing left out. Calling it again changes nothing.
   */
  public void finish() {
    finishing.set(true);
  }

  /**
   * Tells whether searches are to end with their best so far.
   *
   * @return true once {@link #cancel()} or {@link #finish()} was called
   */
  public boolean endsSearches() {
    return finishing.get() || cancelled.get();
  }

  /**
   * Ends work that has no best so far: half a panel is of no use to anybody. Costs one read, so
   * that a loop may ask in every round.
   *
   * @param doing what is under way, such as {@code a panel was cut into parts}
   * @throws CancellationException once {@link #cancel()} was called
   */
  public void goOn(String doing) {
    if (cancelled.get()) {
      throw new CancellationException("cancelled while " + doing);
    }
  }
}
