package io.github.seamstead.shared.work;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * Random streams that depend on a seed and a purpose alone.
 *
 * <p>Streams of one seed with different purposes or indices are independent for all practical use,
 * so adding a new user of randomness never shifts the numbers of another, and parallel parts may
 * each take their own. The generator is SplitMix64, whose sequence the Java platform fixes.
 */
public final class Seeds {

  private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

  private Seeds() {}

  /**
   * Opens a stream.
   *
   * @param seed the caller's seed
   * @param purpose what the numbers are for, such as {@code layout}
   * @param index which of several streams of this purpose, such as the start's number
   * @return a generator at its beginning; not thread-safe
   */
  public static RandomGenerator stream(long seed, String purpose, long index) {
    long mixed = mix(seed + GOLDEN_GAMMA);
    // String.hashCode is fixed by the language specification, so streams are portable.
    mixed = mix(mixed ^ (purpose.hashCode() * GOLDEN_GAMMA));
    mixed = mix(mixed ^ (index * GOLDEN_GAMMA));
    return new SplittableRandom(mixed);
  }

  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }
}
