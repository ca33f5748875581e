package io.github.seamstead.shared.work.internal;

import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A result that is worked out once, beside its reader or when it is first asked for. Thread-safe.
 *
 * <p>Built from the language's own monitors alone, so that it works wherever the language does.
 *
 * @param <T> what is worked out
 */
public final class Later<T> {

  private final Supplier<T> work;
  private boolean begun;
  private boolean done;
  private @Nullable T result;
  private @Nullable Throwable failure;

  private Later(Supplier<T> work, boolean begun) {
    this.work = work;
    this.begun = begun;
  }

  /**
   * Leaves the work to whoever asks first.
   *
   * @param <T> what is worked out
   * @param work gives the result
   * @return the result to come
   */
  public static <T> Later<T> whenAsked(Supplier<T> work) {
    return new Later<>(work, false);
  }

  /**
   * Starts the work.
   *
   * @param <T> what is worked out
   * @param work gives the result
   * @param executor where the work is done; {@code Runnable::run} for here and now
   * @return the result to come
   */
  public static <T> Later<T> started(Supplier<T> work, Executor executor) {
    Later<T> later = new Later<>(work, true);
    executor.execute(later::settle);
    return later;
  }

  /**
   * Offers the work to an executor. Whoever asks for the result before it was begun there works it
   * out instead, so that none waits for a thread that is busy.
   *
   * @param <T> what is worked out
   * @param work gives the result
   * @param executor where the work is done if nobody asks first
   * @return the result to come
   */
  public static <T> Later<T> offered(Supplier<T> work, Executor executor) {
    Later<T> later = whenAsked(work);
    executor.execute(later::settleIfMine);
    return later;
  }

  /**
   * Offers the work to a thread of its own that keeps no process alive.
   *
   * @param <T> what is worked out
   * @param name the thread's name
   * @param work gives the result
   * @return the result to come
   */
  public static <T> Later<T> offered(String name, Supplier<T> work) {
    return offered(
        work,
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          thread.start();
        });
  }

  /**
   * Waits for the result, or works it out if nobody has begun. An interrupt does not end the wait
   * and stays set.
   *
   * @return the result
   * @throws RuntimeException what the work threw
   */
  public T get() {
    settleIfMine();
    awaitDone();
    return outcome();
  }

  private void settleIfMine() {
    if (isMine()) {
      settle();
    }
  }

  private synchronized boolean isMine() {
    boolean mine = !begun;
    begun = true;
    return mine;
  }

  private void settle() {
    T given = null;
    Throwable thrown = null;
    try {
      given = work.get();
    } catch (RuntimeException | Error e) {
      thrown = e;
    }
    synchronized (this) {
      result = given;
      failure = thrown;
      done = true;
      notifyAll();
    }
  }

  private synchronized void awaitDone() {
    boolean interrupted = false;
    while (!done) {
      try {
        wait();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized T outcome() {
    if (failure instanceof RuntimeException own) {
      throw own;
    }
    if (failure instanceof Error own) {
      throw own;
    }
    T given = result;
    if (given == null) {
      throw new IllegalStateException("work gave no result");
    }
    return given;
  }
}
