package io.github.seamstead.geometry.bars;

import io.github.seamstead.shared.work.Work;

/** Counts work units against a budget, its time and its cancellation. */
final class WorkMeter {

  private static final int CLOCK_EVERY = 256;

  private final Work work;
  private final long start = System.nanoTime();
  private final long most;
  private long used;
  private boolean stopped;

  WorkMeter(Work work) {
    this.work = work;
    this.most = work.budget().workUnits();
  }

  /** Counts one unit and tells whether there is more. */
  boolean tick() {
    used++;
    if (used > most) {
      stopped = true;
    } else if (used % CLOCK_EVERY == 0) {
      stopped |= work.cancellation().endsSearches() || timeIsUp();
    }
    return !stopped;
  }

  private boolean timeIsUp() {
    return work.budget().time().isPresent()
        && System.nanoTime() - start > work.budget().time().get().toNanos();
  }

  boolean isSpent() {
    return stopped || used >= most || work.cancellation().endsSearches() || timeIsUp();
  }

  long used() {
    return used;
  }

  void report(double done, String message) {
    work.progress().report(done, message);
  }
}
