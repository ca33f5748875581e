package io.github.seamstead.examples.cli;

import io.github.seamstead.shared.work.Progress;
import java.io.PrintWriter;

/** Shows progress on one line of a terminal once the work takes more than a second. */
final class TerminalProgress implements Progress, AutoCloseable {

  private static final long PATIENCE_NANOS = 1_000_000_000L;
  private static final long BETWEEN_NANOS = 100_000_000L;
  private static final String CLEAR_LINE = "\r\u001b[K";

  private final PrintWriter err;
  private final boolean terminal;
  private final long begun = System.nanoTime();
  private long last = begun;
  private boolean shown;

  private TerminalProgress(PrintWriter err, boolean terminal) {
    this.err = err;
    this.terminal = terminal;
  }

  /**
   * Shows nothing unless the launcher has seen a terminal: Java 17 cannot tell alone whether the
   * error stream is one.
   */
  static TerminalProgress open(PrintWriter err) {
    return new TerminalProgress(err, Boolean.getBoolean("seamstead.terminal"));
  }

  @Override
  public synchronized void report(double doneRatio, String message) {
    long now = System.nanoTime();
    if (!terminal || now - begun < PATIENCE_NANOS || now - last < BETWEEN_NANOS) {
      return;
    }
    last = now;
    shown = true;
    err.print(CLEAR_LINE + Math.round(doneRatio * 100) + " %  " + message);
    err.flush();
  }

  @Override
  public synchronized void close() {
    if (shown) {
      err.print(CLEAR_LINE);
      err.flush();
    }
  }
}
