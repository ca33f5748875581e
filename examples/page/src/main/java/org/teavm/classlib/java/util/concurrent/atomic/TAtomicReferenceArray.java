package org.teavm.classlib.java.util.concurrent.atomic;

import org.jspecify.annotations.Nullable;

/**
 * Stands in for {@code java.util.concurrent.atomic.AtomicReferenceArray} in the page.
 *
 * @param <E> what it holds
 */
public class TAtomicReferenceArray<E> {

  private final @Nullable Object[] items;

  /**
   * An array of nothing.
   *
   * @param length how many places
   */
  public TAtomicReferenceArray(int length) {
    items = new @Nullable Object[length];
  }

  /**
   * Reads a place.
   *
   * @param i its index
   * @return what it holds
   */
  @SuppressWarnings("unchecked") // only such were put there
  public @Nullable E get(int i) {
    return (E) items[i];
  }

  /**
   * Writes a place.
   *
   * @param i its index
   * @param value what it shall hold
   */
  public void set(int i, @Nullable E value) {
    items[i] = value;
  }

  /**
   * Writes a place and gives what it held.
   *
   * @param i its index
   * @param value what it shall hold
   * @return what it held
   */
  public @Nullable E getAndSet(int i, @Nullable E value) {
    E before = get(i);
    items[i] = value;
    return before;
  }
}
