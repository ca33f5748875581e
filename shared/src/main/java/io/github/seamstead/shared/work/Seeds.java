package io.github.seamstead.shared.work;

import java.util.random.RandomGenerator;

/**
 * Random streams that depend on a seed and a purpose alone.
 *
 * <p>Streams of one seed with different purposes or indices are independent for all practical use,
 * so adding a new user of randomness never shifts the numbers of another, and parallel parts may
 * each take their own. The generator is SplitMix64, whose sequence is published.
 */
public final class Seeds {

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
    long mixed = SplitMix.mix(seed + SplitMix.GOLDEN_GAMMA);
    // String.hashCode is fixed by the language specification, so streams are portable.
    mixed = SplitMix.mix(mixed ^ (purpose.hashCode() * SplitMix.GOLDEN_GAMMA));
    mixed = SplitMix.mix(mixed ^ (index * SplitMix.GOLDEN_GAMMA));
    return new SplitMix(mixed);
  }

  /**
   * Opens the plain sequence of a seed, as {@link java.util.SplittableRandom} gives it.
   *
   * @param seed any number
   * @return a generator at its beginning; not thread-safe
   */
  public static RandomGenerator plain(long seed) {
    return new SplitMix(seed);
  }
}
