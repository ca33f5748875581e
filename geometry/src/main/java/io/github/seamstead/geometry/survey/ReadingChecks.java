package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;

/** Checks that all sorts of reading share. */
final class ReadingChecks {

  /** A reading less certain than this tells nothing of a frame that people can tape. */
  static final double MOST_UNCERTAINTY = 10;

  /** No tape is read closer; it also keeps the sums within the digits of a double. */
  private static final double LEAST_UNCERTAINTY = 1e-6;

  /** Far beyond any frame, in any unit that might be mistaken for metres. */
  private static final double MOST_LENGTH = 100_000;

  private ReadingChecks() {}

  static void length(String name, double metres) {
    Args.positive(name, metres, "m");
    Args.within(name, metres, 0, MOST_LENGTH, "m");
  }

  static void offset(String name, double metres) {
    Args.within(name, metres, -MOST_LENGTH, MOST_LENGTH, "m");
  }

  static void twoNodes(String what, Node a, Node b) {
    Args.require(!a.equals(b), what, a + " and " + b, "must be two different nodes");
  }

  static void uncertainty(String name, double standardUncertainty) {
    Args.within(
        "standard uncertainty of " + name,
        standardUncertainty,
        LEAST_UNCERTAINTY,
        MOST_UNCERTAINTY,
        "m");
  }
}
