package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * A finished strip search.
 *
 * <p>Its workers search apart for an epoch of work each and meet then ({@link StripCrew}). What
 * they learn depends on work counts alone, so that the outcome is the same whatever threads they
 * run on.
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
    StripCrew crew =
        new StripCrew(
            i -> {
              FastRandom random =
                  new FastRandom(Seeds.stream(terms.seed(), "layout", i).nextLong());
              Nest nest = i == 0 ? first : nests.get();
              return new StripWorker(nest, random, clock, start, reach, origin, floor, tuning);
            },
            WORKERS,
            tuning.patience());
    Epochs epochs = new Epochs(terms.executor().orElse(OWN_THREADS), clock);
    while (crew.isWorking()) {
      crew.goOn(epochs);
      terms.progress().report(Math.min(1, crew.spent()), "pressing the layout together");
    }
    return new StripRun(crew.best(), crew.bestLength(), crew.work());
  }

  /** How far all pieces reach when they lie so; the nest holds them then. */
  public static double reach(Nest nest, Poses poses) {
    nest.load(poses);
    return nest.reach();
  }
}
