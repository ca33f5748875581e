package io.github.seamstead.geometry.layout;

import java.util.Arrays;

/**
 * What a heap of placed pieces comes to, in falling weight: pieces without a place, their area, the
 * rank of the way in which the cover is divided, then what the objective counts. Less is better.
 */
final class Worth implements Comparable<Worth> {

  private static final double STEPS = 1e8;

  /** Areas and lengths in whole steps, so that the order is transitive. */
  private final long[] terms;

  private Worth(long[] terms) {
    this.terms = terms;
  }

  /** Whether the first so many terms are less than another's. */
  boolean isLess(Worth than, int first) {
    return compared(than, first) < 0;
  }

  long rank() {
    return terms[2];
  }

  static Worth of(long missing, double missingArea, int rank, double... objective) {
    long[] terms = new long[3 + objective.length];
    terms[0] = missing;
    terms[1] = Math.round(missingArea * STEPS);
    terms[2] = rank;
    for (int i = 0; i < objective.length; i++) {
      terms[3 + i] = Math.round(objective[i] * STEPS);
    }
    return new Worth(terms);
  }

  boolean isComplete() {
    return terms[0] == 0;
  }

  @Override
  public int compareTo(Worth other) {
    int shared = compared(other, Math.min(terms.length, other.terms.length));
    return shared != 0 ? shared : Integer.compare(terms.length, other.terms.length);
  }

  /** Compares so many terms, the weightiest first. */
  private int compared(Worth other, int first) {
    for (int i = 0; i < first; i++) {
      if (terms[i] != other.terms[i]) {
        return Long.compare(terms[i], other.terms[i]);
      }
    }
    return 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Worth worth && Arrays.equals(terms, worth.terms);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(terms);
  }

  @Override
  public String toString() {
    return Arrays.toString(terms);
  }
}
