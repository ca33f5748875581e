package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.concurrent.RejectedExecutionException;

/**
 * Runs the workers of a search for an epoch each: the first on the caller's own thread, the others
 * where the executor puts them. What the executor has not begun by then the caller's thread does
 * itself, so that an executor without a free thread, or one that runs all at once on the caller's,
 * does as well.
 */
final class Epochs {

  private final Executor executor;
  private final Clock clock;

  Epochs(Executor executor, Clock clock) {
    this.executor = executor;
    this.clock = clock;
  }

  /** Lets every worker go on for an epoch and drops from the list those that have ended. */
  void run(List<StripWorker> working) {
    List<FutureTask<Boolean>> tasks = new ArrayList<>();
    for (StripWorker worker : working) {
      tasks.add(new FutureTask<>(worker::goOn));
    }
    for (FutureTask<Boolean> task : tasks.subList(1, tasks.size())) {
      offer(task);
    }
    tasks.forEach(FutureTask::run);
    boolean interrupted = false;
    for (int i = tasks.size() - 1; i >= 0; i--) {
      boolean known = false;
      while (!known) {
        try {
          if (!tasks.get(i).get()) {
            working.remove(i);
          }
          known = true;
        } catch (InterruptedException e) {
          interrupted = true;
          clock.interrupt();
        } catch (ExecutionException e) {
          throw restored(e, interrupted);
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private void offer(Runnable task) {
    try {
      executor.execute(task);
    } catch (RejectedExecutionException busy) {
      // A busy executor's task is run by the caller's own thread like one that it has not begun.
      task.run();
    }
  }

  private static RuntimeException restored(ExecutionException fault, boolean interrupted) {
    Throwable cause = fault.getCause();
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException known ? known : new IllegalStateException(fault);
  }
}
