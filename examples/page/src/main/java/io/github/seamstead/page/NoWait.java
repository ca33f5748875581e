package io.github.seamstead.page;

/** Stands where a thread would wait for another: in the page nothing runs beside. */
public final class NoWait {

  private NoWait() {}

  /**
   * Refuses to wait.
   *
   * @param monitor what would be waited for
   */
  // Only the compiler of the page calls it.
  @SuppressWarnings("DoNotCallSuggester")
  public static void waited(Object monitor) {
    throw new IllegalStateException("nothing in a page runs beside its reader");
  }
}
