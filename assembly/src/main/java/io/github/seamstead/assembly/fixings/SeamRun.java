package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;

/**
 * Seams of one kind and length.
 *
 * @param kind what they join
 * @param name which they are, such as {@code 1-1 to 1-2} or {@code joint 3}; not blank
 * @param length length of one, in metres, greater than 0
 * @param count how many alike, 1 or more; 1 to 100 000
 */
public record SeamRun(SeamKind kind, String name, double length, int count) {

  public SeamRun {
    Args.notBlank("name of the seam", name);
    Args.positive("length of the seam", length, "m");
    Args.within("seams alike", count, 1, 100_000);
  }

  /**
   * Gives the length of all of them.
   *
   * @return in metres
   */
  public double wholeLength() {
    return count * length;
  }
}
