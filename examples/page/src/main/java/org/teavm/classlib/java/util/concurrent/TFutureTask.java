package org.teavm.classlib.java.util.concurrent;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for {@code java.util.concurrent.FutureTask} in the page, where nothing runs beside.
 *
 * @param <V> what the task gives
 */
public class TFutureTask<V> implements Runnable {

  private final Callable<V> task;
  private boolean begun;
  private boolean done;
  private @Nullable V result;
  private @Nullable Throwable failure;

  /**
   * A task that was not run.
   *
   * @param task gives the result
   */
  public TFutureTask(Callable<V> task) {
    this.task = task;
  }

  /** Runs the task, once. */
  @Override
  public void run() {
    if (begun) {
      return;
    }
    begun = true;
    try {
      result = task.call();
    } catch (Exception | Error e) {
      failure = e;
    }
    done = true;
  }

  /**
   * Gives the result.
   *
   * @return what the task gave
   * @throws InterruptedException never: nothing is waited for
   * @throws ExecutionException if the task threw
   */
  public @Nullable V get() throws InterruptedException, ExecutionException {
    if (!done) {
      throw new IllegalStateException("nothing in a page runs beside its reader");
    }
    if (failure != null) {
      throw new ExecutionException(failure);
    }
    return result;
  }
}
