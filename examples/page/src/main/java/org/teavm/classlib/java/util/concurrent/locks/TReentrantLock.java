package org.teavm.classlib.java.util.concurrent.locks;

/**
 * Stands in for {@code java.util.concurrent.locks.ReentrantLock} in the page, which has one thread.
 */
public class TReentrantLock {

  /** A lock that is always free. */
  public TReentrantLock() {}

  /** Takes the lock. */
  public void lock() {
    // One thread: nobody else can hold it.
  }

  /**
   * Takes the lock.
   *
   * @return true: it is always free
   */
  public boolean tryLock() {
    return true;
  }

  /** Gives the lock back. */
  public void unlock() {
    // One thread: nobody waits for it.
  }
}
