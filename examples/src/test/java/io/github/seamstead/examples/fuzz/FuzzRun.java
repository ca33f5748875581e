package io.github.seamstead.examples.fuzz;

import com.sun.management.OperatingSystemMXBean;
import io.github.seamstead.shared.work.Cancellation;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs cases one after the other, each under a watchdog that cancels it and shows where it is. The
 * limit is one of processor time, so that what else the machine does makes no case fail.
 */
final class FuzzRun {

  private static final OperatingSystemMXBean MACHINE =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
  private static final long LOOK_MILLIS = 500;
  private static final int DEAF_SECONDS = 120;

  private final long seed;
  private final long limitSeconds;
  private final List<String> failures = new ArrayList<>();
  private final FuzzOracle oracle = new FuzzOracle();
  private int accepted;
  private int refused;
  private double slowest;
  private int slowestCase;
  private Thread worker = Thread.currentThread();

  FuzzRun(long seed, long limitSeconds) {
    this.seed = seed;
    this.limitSeconds = limitSeconds;
  }

  /** Runs the cases from one number up to another, and writes every n-th book. */
  void cases(int from, int until, int everyBook) throws Exception {
    ExecutorService executor =
        Executors.newSingleThreadExecutor(
            task -> {
              worker = new Thread(null, task, "fuzz", 0);
              worker.setDaemon(true);
              return worker;
            });
    for (int number = from; number < until; number++) {
      FuzzCase one = FuzzCase.of(seed, number);
      Cancellation cancellation = new Cancellation();
      boolean withBook = number % everyBook == 0;
      long start = MACHINE.getProcessCpuTime();
      Future<FuzzOracle.Outcome> running =
          executor.submit(() -> oracle.run(one, withBook, cancellation));
      FuzzOracle.Outcome outcome = watched(running, one, cancellation);
      double seconds = (MACHINE.getProcessCpuTime() - start) / 1e9;
      if (seconds > slowest) {
        slowest = seconds;
        slowestCase = number;
      }
      accepted += outcome.accepted() ? 1 : 0;
      refused += outcome.accepted() ? 0 : 1;
      outcome.wrong().forEach(wrong -> failures.add(name(one) + ": " + wrong));
    }
    executor.shutdownNow();
  }

  private FuzzOracle.Outcome watched(
      Future<FuzzOracle.Outcome> running, FuzzCase one, Cancellation cancellation)
      throws Exception {
    long start = MACHINE.getProcessCpuTime();
    while ((MACHINE.getProcessCpuTime() - start) / 1e9 < limitSeconds) {
      try {
        return running.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        // Look at the processor time again.
        continue;
      }
    }
    failures.add(name(one) + ": more than " + limitSeconds + " s of processor time" + where());
    cancellation.cancel();
    try {
      return running.get(DEAF_SECONDS, TimeUnit.SECONDS);
    } catch (TimeoutException deaf) {
      throw new IllegalStateException(
          name(one) + " does not hear that it is cancelled" + where(), deaf);
    }
  }

  private String where() {
    StringBuilder where = new StringBuilder();
    for (StackTraceElement at : worker.getStackTrace()) {
      if (at.getClassName().startsWith("io.github.seamstead") && where.length() < 600) {
        where.append(" at ").append(at);
      }
    }
    return where.toString();
  }

  private String name(FuzzCase one) {
    return "seed " + seed + ", case " + one.number() + " (" + one.kind() + ")";
  }

  List<String> failures() {
    return failures;
  }

  /** Shows how many were run, so that a run of refusals alone is seen. */
  String summary() {
    return "seed "
        + seed
        + ": "
        + accepted
        + " accepted, "
        + refused
        + " refused, slowest "
        + Math.round(slowest * 10) / 10.0
        + " s (case "
        + slowestCase
        + ")";
  }

  int accepted() {
    return accepted;
  }

  int refused() {
    return refused;
  }
}
