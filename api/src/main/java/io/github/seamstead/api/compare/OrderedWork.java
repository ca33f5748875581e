package io.github.seamstead.api.compare;

import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/**
 * Numbered pieces of work done on an executor as their results are asked for, given in order. No
 * more than a stated number is under way at once, so that memory does not grow with the count.
 */
final class OrderedWork<T> implements Iterator<T> {

  private final int count;
  private final IntFunction<T> work;
  private final Executor executor;
  private final int ahead;
  private final Cancellation cancellation;
  private final Deque<CompletableFuture<T>> underWay = new ArrayDeque<>();
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

  static <T> Stream<T> of(
      int count, IntFunction<T> work, Executor executor, int ahead, Cancellation cancellation) {
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
      underWay.add(CompletableFuture.supplyAsync(() -> work.apply(number), executor));
    }
    CompletableFuture<T> first = underWay.poll();
    T result = first == null || cancellation.isCancelled() ? null : joined(first);
    // What was under way when the switch was turned may have been cut short: it is not given.
    next = cancellation.isCancelled() ? null : result;
    return next != null;
  }

  private static <T> T joined(CompletableFuture<T> work) {
    try {
      return work.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException own) {
        throw own;
      }
      throw e;
    }
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
