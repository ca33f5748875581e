package io.github.seamstead.geometry.layout;

import java.util.concurrent.Phaser;

/**
 * Where the workers of one strip search meet at fixed counts of work and take over the shortest
 * layout found by any of them. What they learn depends on work counts alone, so the outcome is the
 * same however the threads are scheduled.
 */
final class Exchange {

  private final Phaser phaser;
  private final Poses[] posted;
  private final double[] length;

  Exchange(int workers, Poses start, double startLength) {
    phaser = new Phaser(workers);
    posted = new Poses[workers];
    length = new double[workers];
    for (int i = 0; i < workers; i++) {
      posted[i] = start.copy();
      length[i] = startLength;
    }
  }

  /** Posts a worker's best and waits for the others to do so. */
  void post(int worker, Poses poses, double itsLength) {
    posted[worker].set(poses);
    length[worker] = itsLength;
    phaser.arriveAndAwaitAdvance();
  }

  /** Lets the others post again; call once what was posted has been read. */
  void read() {
    phaser.arriveAndAwaitAdvance();
  }

  /** Index of the worker with the shortest layout posted. */
  int shortest() {
    int best = 0;
    for (int i = 1; i < length.length; i++) {
      if (length[i] < length[best]) {
        best = i;
      }
    }
    return best;
  }

  double length(int worker) {
    return length[worker];
  }

  Poses poses(int worker) {
    return posted[worker];
  }

  /** Posts a last time without waiting; the worker takes no further part. */
  void leave(int worker, Poses poses, double itsLength) {
    posted[worker].set(poses);
    length[worker] = itsLength;
    phaser.arriveAndDeregister();
  }
}
