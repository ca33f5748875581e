package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Work;
import java.util.function.Function;

/**
 * What a search found that gives its best so far when it is stopped.
 *
 * @param found its best
 * @param stopped whether it was stopped before its end: what it did not find may be there all the
 *     same, so no advice may follow from that
 * @param <T> what was searched for
 */
public record Searched<T>(T found, boolean stopped) {

  /**
   * Searches, and says among what the plan leaves out if the search was stopped.
   *
   * @param run the run, whose time limit and switch hold
   * @param chapter whose search it is
   * @param what is searched for, as in {@code the cutting of bars}
   * @param units work units that it may spend
   * @param search takes the terms
   * @param <T> what is searched for
   * @return the best found
   */
  public static <T> Searched<T> of(
      Run run, Chapter chapter, String what, long units, Function<Work, T> search) {
    long start = System.nanoTime();
    T found = search.apply(run.work(units));
    long spent = System.nanoTime() - start;
    Cancellation cancellation = run.options().cancellation();
    boolean ended = cancellation.endsSearches();
    boolean late = run.options().timeLimit().map(t -> spent > t.toNanos()).orElse(false);
    if (ended || late) {
      run.skip(
          chapter,
          "the search for "
              + what
              + " was stopped, since "
              + (cancellation.isCancelled()
                  ? "the run was cancelled"
                  : ended ? "it was asked to end" : "its time was up")
              + "; the best so far is given");
    }
    return new Searched<>(found, ended || late);
  }
}
