package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.function.Supplier;

/**
 * A finished strip search.
 *
 * @param poses where every copy lies
 * @param length how far the pieces reach, margin at the far end aside, in the search's unit
 * @param work placements evaluated by all workers
 */
record StripRun(Poses poses, double length, long work) {

  private static final int WORKERS = 2;

  /** Beyond so many pieces the table of pairs would not fit a small machine's memory. */
  static final int MOST_SEARCHED = 2000;

  /**
   * Runs the workers from a valid start and gives the best layout of any of them.
   *
   * @param nests makes a nest for each worker
   * @param start where every copy lies
   * @param origin where the strip begins on the common axis
   * @param floor no layout can reach less far; the search ends there
   */
  static StripRun from(Supplier<Nest> nests, Poses start, double origin, double floor, Work terms) {
    int workers = WORKERS;
    if (start.x.length > MOST_SEARCHED) {
      return new StripRun(start, reach(nests.get(), start), 0);
    }
    Nest[] all = new Nest[workers];
    for (int i = 0; i < workers; i++) {
      all[i] = nests.get();
    }
    double reach = reach(all[0], start);
    Exchange exchange = new Exchange(workers, start, reach);
    StripWorker[] crew = new StripWorker[workers];
    Thread[] threads = new Thread[workers];
    Clock clock = new Clock(terms, workers);
    for (int i = 0; i < workers; i++) {
      FastRandom random = new FastRandom(Seeds.stream(terms.seed(), "layout", i).nextLong());
      crew[i] =
          new StripWorker(
              i, all[i], random, clock, exchange, start, reach, origin, floor, terms.progress());
      threads[i] = new Thread(crew[i], "layout-" + i);
      threads[i].setDaemon(true);
    }
    for (int i = 1; i < workers; i++) {
      threads[i].start();
    }
    crew[0].run();
    boolean interrupted = false;
    for (int i = 1; i < workers; i++) {
      while (threads[i].isAlive()) {
        try {
          threads[i].join();
        } catch (InterruptedException e) {
          interrupted = true;
          terms.cancellation().cancel();
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    int best = exchange.shortest();
    long work = 0;
    for (StripWorker w : crew) {
      w.rethrow();
      work += w.work();
    }
    return new StripRun(exchange.poses(best), exchange.length(best), work);
  }

  /** How far all pieces reach when they lie so; the nest holds them then. */
  static double reach(Nest nest, Poses poses) {
    nest.load(poses);
    return nest.reach();
  }
}
