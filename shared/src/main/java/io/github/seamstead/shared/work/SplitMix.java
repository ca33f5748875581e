package io.github.seamstead.shared.work;

import java.util.random.RandomGenerator;

/**
 * The generator SplitMix64: a counter that grows by an odd constant, each count mixed into a
 * number.
 *
 * <p>Written out here, as not every platform that the library is compiled for has one. The numbers
 * are those of {@link java.util.SplittableRandom} from the same seed. Source: G. L. Steele, D. Lea
 * and C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014, with the mixing
 * constants of D. Stafford's variants 13 (long) and 4 (int).
 */
final class SplitMix implements RandomGenerator {

  /** 2^64 divided by the golden ratio, made odd. */
  static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

  /** The distance of neighbouring doubles in [1/2, 1). */
  private static final double UNIT = 0x1.0p-53;

  private long count;

  SplitMix(long seed) {
    count = seed;
  }

  /** Mixes the bits of a number: each bit of the result depends on all of them. */
  static long mix(long number) {
    long a = (number ^ (number >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }

  private long next() {
    count += GOLDEN_GAMMA;
    return count;
  }

  @Override
  public long nextLong() {
    return mix(next());
  }

  @Override
  public int nextInt() {
    long number = next();
    long a = (number ^ (number >>> 33)) * 0x62A9D9ED799705F5L;
    return (int) (((a ^ (a >>> 28)) * 0xCB24D0A5C88C35B3L) >>> 32);
  }

  @Override
  public int nextInt(int bound) {
    if (bound <= 0) {
      throw new IllegalArgumentException("given a bound of " + bound + ", must be 1 or more");
    }
    int drawn = nextInt();
    if ((bound & (bound - 1)) == 0) {
      return drawn & (bound - 1);
    }
    int positive = drawn >>> 1;
    int rest = positive % bound;
    // The last, incomplete run of bound numbers would favour the small ones: drawn again.
    while (positive - rest > Integer.MAX_VALUE - (bound - 1)) {
      positive = nextInt() >>> 1;
      rest = positive % bound;
    }
    return rest;
  }

  @Override
  public boolean nextBoolean() {
    return nextInt() < 0;
  }

  @Override
  public double nextDouble() {
    return (nextLong() >>> 11) * UNIT;
  }
}
