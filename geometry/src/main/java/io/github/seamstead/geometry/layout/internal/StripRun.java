package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * A finished strip search.
 *
 * <p>Its workers search apart for an epoch of work each and then take over the shortest layout
 * found by any of them. What they learn depends on work counts alone, so that the outcome is the
 * same whatever threads they run on.
 *
 * @param poses where every copy lies
 * @param length how far the pieces reach, margin at the far end aside, in the search's unit
 * @param work placements evaluated by all workers
 */
public record StripRun(Poses poses, double length, long work) {

  private static final int WORKERS = 2;

  /** Beyond so many pieces the table of pairs would not fit a small machine's memory. */
  static final int MOST_SEARCHED = 2000;

  /** Threads of the search's own, where the caller lends none. */
  private static final Executor OWN_THREADS =
      task -> {
        Thread thread = new Thread(task, "layout");
        thread.setDaemon(true);
        thread.start();
      };

  /**
   * Runs the workers from a valid start and gives the best layout of any of them.
   *
   * @param nests makes a nest for each worker
   * @param start where every copy lies
   * @param origin where the strip begins on the common axis
   * @param floor no layout can reach less far; the search ends there
   */
  public static StripRun from(
      Supplier<Nest> nests, Poses start, double origin, double floor, Work terms) {
    return from(nests, start, origin, floor, terms, Tuning.CHOSEN);
  }

  /** As the other, with other numbers than those chosen. */
  public static StripRun from(
      Supplier<Nest> nests, Poses start, double origin, double floor, Work terms, Tuning tuning) {
    Nest first = nests.get();
    double reach = reach(first, start);
    Clock clock = new Clock(terms, WORKERS);
    if (start.x.length > MOST_SEARCHED || clock.spent(0) >= 1) {
      return new StripRun(start, reach, 0);
    }
    List<StripWorker> crew = new ArrayList<>();
    for (int i = 0; i < WORKERS; i++) {
      FastRandom random = new FastRandom(Seeds.stream(terms.seed(), "layout", i).nextLong());
      Nest nest = i == 0 ? first : nests.get();
      crew.add(new StripWorker(nest, random, clock, start, reach, origin, floor, tuning));
    }
    Epochs epochs = new Epochs(terms.executor().orElse(OWN_THREADS), clock);
    List<StripWorker> working = new ArrayList<>(crew);
    while (!working.isEmpty()) {
      epochs.run(working);
      StripWorker shortest = shortest(crew);
      // Copied, as a worker's best changes when it takes over.
      Poses poses = shortest.best().copy();
      double length = shortest.bestLength();
      working.forEach(worker -> worker.takeOver(poses, length));
      terms.progress().report(Math.min(1, crew.get(0).spent()), "pressing the layout together");
    }
    StripWorker best = shortest(crew);
    long work = crew.stream().mapToLong(StripWorker::work).sum();
    return new StripRun(best.best(), best.bestLength(), work);
  }

  private static StripWorker shortest(List<StripWorker> crew) {
    StripWorker best = crew.get(0);
    for (StripWorker worker : crew) {
      best = worker.bestLength() < best.bestLength() ? worker : best;
    }
    return best;
  }

  /** How far all pieces reach when they lie so; the nest holds them then. */
  public static double reach(Nest nest, Poses poses) {
    nest.load(poses);
    return nest.reach();
  }
}
