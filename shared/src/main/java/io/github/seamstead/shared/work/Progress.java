package io.github.seamstead.shared.work;

/** Hears how far a long piece of work has come. Called from any thread; must be quick. */
@FunctionalInterface
public interface Progress {

  /** Hears nothing. */
  Progress NONE = (doneRatio, message) -> {};

  /**
   * Tells how far the work is.
   *
   * @param doneRatio the part done, 0 to 1; it need not rise evenly
   * @param message what is going on, for a person to read
   */
  void report(double doneRatio, String message);
}
