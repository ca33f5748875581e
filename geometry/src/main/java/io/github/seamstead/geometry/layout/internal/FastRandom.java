package io.github.seamstead.geometry.layout.internal;

/** SplitMix64 without an object for each draw; one instance belongs to one thread. */
public final class FastRandom {

  private long state;

  public FastRandom(long seed) {
    state = seed;
  }

  long nextLong() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** From 0 up to less than 1. */
  public double next() {
    return (nextLong() >>> 11) * 0x1.0p-53;
  }

  /** From 0 up to less than {@code bound}. */
  public int below(int bound) {
    return (int) (((nextLong() >>> 33) * bound) >>> 31);
  }
}
