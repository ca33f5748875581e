package io.github.seamstead.shared.work.internal;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.concurrent.Executor;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/**
 * Numbered pieces of work done on an executor as their results are asked for, given in order. No
 * more than a stated number is under way at once, so that memory does not grow with the count.
 *
 * @param <T> what a piece of work gives
 */
public final class OrderedWork<T> implements Iterator<T> {

  private final int count;
  private final IntFunction<T> work;
  private final Executor executor;
  private final int ahead;
  private final Cancellation cancellation;
  private final Deque<Later<T>> underWay = new ArrayDeque<>();
  private int begun;
  private @Nullable T next;

  private OrderedWork(
      int count, IntFunction<T> work, Executor executor, int ahead, Cancellation cancellation) {
    this.count = count;
    this.work = work;
    this.executor = executor;
    this.ahead = ahead;
    this.cancellation = cancellation;
  }

  /**
   * Starts pieces of work lazily, as the stream is read.
   *
   * @param <T> what a piece of work gives
   * @param count how many pieces, 0 or more
   * @param work does the piece of a number, from 0; called on the executor's threads
   * @param executor where pieces are done; {@code Runnable::run} for no thread but the reader's
   * @param ahead how many pieces may be under way at once, 1 or more
   * @param cancellation once it is on, the stream ends with what was read before
   * @return the results in the order of their numbers, the same for any executor; for one reader.
   *     What a piece throws is thrown to the reader
   * @throws IllegalArgumentException if a number is out of range
   */
  public static <T> Stream<T> of(
      int count, IntFunction<T> work, Executor executor, int ahead, Cancellation cancellation) {
    Args.within("pieces of work", count, 0, Integer.MAX_VALUE);
    Args.within("pieces under way", ahead, 1, Integer.MAX_VALUE);
    OrderedWork<T> ordered = new OrderedWork<>(count, work, executor, ahead, cancellation);
    return StreamSupport.stream(
        Spliterators.spliteratorUnknownSize(ordered, Spliterator.ORDERED | Spliterator.NONNULL),
        false);
  }

  @Override
  public boolean hasNext() {
    if (next != null) {
      return true;
    }
    while (begun < count && underWay.size() < ahead && !cancellation.isCancelled()) {
      int number = begun++;
      underWay.add(Later.started(() -> work.apply(number), executor));
    }
    Later<T> first = underWay.poll();
    T result = first == null || cancellation.isCancelled() ? null : first.get();
    // What was under way when the switch was turned may have been cut short: it is not given.
    next = cancellation.isCancelled() ? null : result;
    return next != null;
  }

  @Override
  public T next() {
    if (!hasNext() || next == null) {
      throw new NoSuchElementException("no more rows");
    }
    T given = next;
    next = null;
    return given;
  }
}
