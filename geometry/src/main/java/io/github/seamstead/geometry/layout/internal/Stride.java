package io.github.seamstead.geometry.layout.internal;

/**
 * By what part of its length the strip is shortened next: one step up a ladder after a success, one
 * down after a failure. The steps then gather where about every second try succeeds, whatever the
 * pieces (the up-and-down method of Dixon and Mood 1948: from memory).
 */
final class Stride {

  private final double least;
  private final int rungs;
  private int rung;

  /** Begins at the highest step, since a start is loose. */
  Stride(Tuning tuning) {
    least = tuning.leastStride();
    rungs = tuning.rungs();
    rung = rungs - 1;
  }

  double part() {
    return least * (1 << rung);
  }

  void succeeded() {
    rung = Math.min(rungs - 1, rung + 1);
  }

  void failed() {
    rung = Math.max(0, rung - 1);
  }

  /** Whether there is no smaller step. */
  boolean isLeast() {
    return rung == 0;
  }
}
