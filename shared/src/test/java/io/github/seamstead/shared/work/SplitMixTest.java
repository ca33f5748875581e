package io.github.seamstead.shared.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** Holds the generator to the platform's own, number by number. */
class SplitMixTest {

  private static final long[] SEEDS = {0, 1, -1, 42, Long.MIN_VALUE, Long.MAX_VALUE, 0xCAFEBABEL};

  private static final int[] BOUNDS = {
    1, 2, 3, 7, 10, 64, 1000, 65537, (1 << 30) + 1, 1 << 30, Integer.MAX_VALUE
  };

  @Test
  void numbersAreThoseOfThePlatformFromTheSameSeed() {
    for (long seed : SEEDS) {
      RandomGenerator own = Seeds.plain(seed);
      SplittableRandom theirs = new SplittableRandom(seed);
      for (int i = 0; i < 20_000; i++) {
        assertThat(own.nextLong()).isEqualTo(theirs.nextLong());
        assertThat(own.nextInt()).isEqualTo(theirs.nextInt());
        assertThat(own.nextDouble()).isEqualTo(theirs.nextDouble());
        assertThat(own.nextBoolean()).isEqualTo(theirs.nextBoolean());
        int bound = BOUNDS[i % BOUNDS.length];
        assertThat(own.nextInt(bound)).isEqualTo(theirs.nextInt(bound));
      }
    }
  }

  @Test
  void boundsBelowOneAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Seeds.plain(1).nextInt(0));
    assertThatIllegalArgumentException().isThrownBy(() -> Seeds.plain(1).nextInt(-5));
  }
}
