package io.github.seamstead.geometry.bars;

import java.util.Arrays;

/** How many pieces of each type one bar of a stock gives. */
final class BarPattern {

  final int stock;
  private final int[] counts;

  BarPattern(int stock, int[] counts) {
    this.stock = stock;
    this.counts = counts.clone();
  }

  int count(int type) {
    return counts[type];
  }

  /** What of this pattern is still wanted. */
  BarPattern within(int[] remaining) {
    int[] trimmed = new int[counts.length];
    Arrays.setAll(trimmed, i -> Math.min(counts[i], remaining[i]));
    return new BarPattern(stock, trimmed);
  }

  void take(int[] remaining, int sign) {
    for (int i = 0; i < counts.length; i++) {
      remaining[i] -= sign * counts[i];
    }
  }

  boolean isEmpty() {
    return Arrays.stream(counts).allMatch(c -> c == 0);
  }

  long filled(BarProblem problem) {
    return problem.filled(counts);
  }
}
