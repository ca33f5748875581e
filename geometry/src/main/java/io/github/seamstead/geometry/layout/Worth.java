package io.github.seamstead.geometry.layout;

import java.util.Arrays;

/**
 * What a heap of placed pieces comes to, in falling weight: pieces without a place, their area, the
 * rank of the way in which the cover is divided, then what the objective counts. Less is better.
 *
 * @param terms the terms, areas and lengths in whole steps so that order is transitive
 */
record Worth(long[] terms) implements Comparable<Worth> {

  private static final double STEPS = 1e8;

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
    return Arrays.compare(terms, other.terms);
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
