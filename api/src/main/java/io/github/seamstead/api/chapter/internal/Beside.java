package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.shared.work.internal.Later;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * Work beside the chapters of a run, on threads that the caller lends or on threads of its own. Not
 * thread-safe; what is worked out may ask the run for nothing but whether to go on.
 */
public final class Beside {

  private final Optional<Executor> threads;

  /** By the very object, since a record takes longer to hash the first time than this saves. */
  private final IdentityHashMap<Object, Later<?>> begun = new IdentityHashMap<>();

  Beside(Optional<Executor> threads) {
    this.threads = threads;
  }

  /** Offers work to a thread; whoever asks for the result first works it out instead. */
  public <T> Later<T> start(String name, Supplier<T> work) {
    return threads
        .map(lent -> Later.offered(work, lent))
        .orElseGet(() -> Later.offered(name, work));
  }

  /**
   * Begins what a chapter that comes later asks for.
   *
   * @param about what it is about: an object that the chapter has too
   */
  public <T> void begin(Object about, Supplier<T> work) {
    begun.computeIfAbsent(about, a -> start("a calculation ahead", work));
  }

  /** Gives what was begun about the very same object; empty if nothing was. */
  public <T> Optional<T> begun(Object about, Class<T> type) {
    return Optional.ofNullable(begun.get(about)).map(Later::get).map(type::cast);
  }
}
