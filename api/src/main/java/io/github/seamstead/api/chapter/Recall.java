package io.github.seamstead.api.chapter;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.internal.Later;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What dear calculations gave, kept between plans of jobs that are alike: the same soil need not be
 * assessed again for each of a thousand variants. A result depends on its key alone, so that a plan
 * is the same with and without. The oldest results are forgotten first. Thread-safe; a result that
 * two plans want at once is calculated once.
 */
public final class Recall {

  private final int most;
  private final Map<Object, Later<?>> kept = new LinkedHashMap<>();

  private Recall(int most) {
    this.most = most;
  }

  /**
   * Keeps nothing.
   *
   * @return a recall for one plan alone
   */
  public static Recall none() {
    return new Recall(0);
  }

  /**
   * Keeps results.
   *
   * @param most how many are kept at most, 1 to 100000
   * @return a recall to share between plans
   * @throws IllegalArgumentException if the number is out of range
   */
  public static Recall of(int most) {
    return new Recall(Args.within("results kept", most, 1, 100_000));
  }

  /** Whether it is one for a plan alone. */
  boolean keepsNothing() {
    return most == 0;
  }

  /**
   * Gives what a calculation gave before, or calculates it.
   *
   * @param <T> the type of the result
   * @param key all that the result depends on; compared by its value
   * @param type the type of the result
   * @param calculation gives the result; what it throws is thrown to each caller and not kept
   * @return the result
   */
  public <T> T of(Object key, Class<T> type, Supplier<T> calculation) {
    if (most == 0) {
      return calculation.get();
    }
    Later<T> mine = Later.whenAsked(calculation);
    Later<?> before = put(key, mine);
    if (before != mine) {
      return type.cast(asked(before, calculation));
    }
    try {
      return mine.get();
    } catch (RuntimeException e) {
      forget(key, mine);
      throw e;
    }
  }

  /** Waits for another plan's result; a failure was that plan's, this one meets it itself. */
  private static Object asked(Later<?> before, Supplier<?> calculation) {
    try {
      return before.get();
    } catch (RuntimeException e) {
      return calculation.get();
    }
  }

  private synchronized Later<?> put(Object key, Later<?> mine) {
    Later<?> before = kept.putIfAbsent(key, mine);
    if (before != null) {
      return before;
    }
    if (kept.size() > most) {
      kept.remove(kept.keySet().iterator().next());
    }
    return mine;
  }

  private synchronized void forget(Object key, Later<?> mine) {
    kept.remove(key, mine);
  }
}
