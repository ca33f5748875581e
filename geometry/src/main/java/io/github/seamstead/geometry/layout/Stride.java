package io.github.seamstead.geometry.layout;

/**
 * By what part of its length the strip is shortened next: one step up a ladder after a success, one
 * down after a failure. The steps then gather where about every second try succeeds, whatever the
 * pieces (the up-and-down method of Dixon and Mood 1948: from memory).
 */
final class Stride {

  /** The lowest step is small beside what a joint press gains, the highest opens a loose start. */
  private static final double LEAST = Double.parseDouble(System.getProperty("SLEAST", "0.001"));

  private static final int RUNGS = Integer.getInteger("SRUNGS", 6);

  private int rung = RUNGS - 1;

  double part() {
    return LEAST * (1 << rung);
  }

  void succeeded() {
    rung = Math.min(RUNGS - 1, rung + 1);
  }

  void failed() {
    rung = Math.max(0, rung - 1);
  }

  /** Whether there is no smaller step. */
  boolean isLeast() {
    return rung == 0;
  }
}
