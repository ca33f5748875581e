package io.github.seamstead.examples.cli;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** As many threads as the machine has processors, which end with the command. */
final class Workers implements AutoCloseable {

  private final int count = Runtime.getRuntime().availableProcessors();
  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          count,
          work -> {
            Thread thread = new Thread(work, "plan");
            thread.setDaemon(true);
            return thread;
          });

  private Workers() {}

  static Workers start() {
    return new Workers();
  }

  Executor executor() {
    return threads;
  }

  /** How many plans are worth having under way: none of the threads waits for the reader. */
  int ahead() {
    return 2 * count;
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
