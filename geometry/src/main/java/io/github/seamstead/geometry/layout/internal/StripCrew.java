package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The workers of a strip search between their epochs.
 *
 * <p>They take over the shortest layout found by any of them. Where that has stood still for as
 * long again as it took to come to it, the last worker begins anew and by itself, and again
 * whenever that stands still likewise, until it finds a shorter layout than the others: runs of one
 * strip that differ in their random numbers alone end a percent apart, some of them early. Restarts
 * after a run that has stood still: Luby, Sinclair and Zuckerman 1993 (from memory).
 */
final class StripCrew {

  /** A gain that counts, as a part of the length. */
  private static final double GAIN = 1e-4;

  private final IntFunction<StripWorker> made;
  private final long patience;
  private final List<StripWorker> crew = new ArrayList<>();
  private final List<StripWorker> working;
  private int next;
  private Poses best;
  private double bestLength;

  /** Of the run in which the last worker takes part: where it began, and its last gain. */
  private long began;

  private long gained;
  private double length = Double.POSITIVE_INFINITY;
  private boolean apart;

  /**
   * Makes the workers.
   *
   * @param made makes a worker, by how many were made before
   * @param workers how many work at a time
   * @param patience work of one of them before which nothing is said to stand still
   */
  StripCrew(IntFunction<StripWorker> made, int workers, long patience) {
    this.made = made;
    this.patience = patience;
    while (next < workers) {
      crew.add(made.apply(next++));
    }
    working = new ArrayList<>(crew);
    best = crew.get(0).best().copy();
    bestLength = crew.get(0).bestLength();
  }

  boolean isWorking() {
    return !working.isEmpty();
  }

  /** Lets every worker go on for an epoch, and tells them what the others found. */
  void goOn(Epochs epochs) {
    epochs.run(working);
    for (StripWorker worker : crew) {
      if (worker.bestLength() < bestLength) {
        // Copied, as a worker's best changes when it takes over.
        best = worker.best().copy();
        bestLength = worker.bestLength();
        apart &= worker != last();
      }
    }
    beginAnew();
    for (StripWorker worker : working) {
      if (!apart || worker != last()) {
        worker.takeOver(best, bestLength);
      }
    }
  }

  private void beginAnew() {
    long work = last().work();
    double now = apart ? last().bestLength() : bestLength;
    if (now < length * (1 - GAIN)) {
      length = now;
      gained = work;
    }
    boolean stands = work - gained >= Math.max(patience, gained - began);
    if (stands && working.remove(last())) {
      StripWorker fresh = made.apply(next++);
      fresh.countFrom(work);
      crew.set(crew.size() - 1, fresh);
      working.add(fresh);
      began = work;
      gained = work;
      length = fresh.bestLength();
      apart = true;
    }
  }

  private StripWorker last() {
    return crew.get(crew.size() - 1);
  }

  Poses best() {
    return best;
  }

  double bestLength() {
    return bestLength;
  }

  /** The part of the budget that is spent. */
  double spent() {
    return crew.get(0).spent();
  }

  /** Placements evaluated by all. */
  long work() {
    return crew.stream().mapToLong(StripWorker::work).sum();
  }
}
