package io.github.seamstead.geometry.layout.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PairsTest {

  private static Pairs pairs() {
    return new Pairs(3, 4, new double[] {2, 1, 0.5, 1});
  }

  @Test
  void aPairWeighsAtFirstWhatTheSizesOfItsPiecesMakeIt() {
    Pairs pairs = pairs();
    assertThat(pairs.weight(0, 1)).isEqualTo(2);
    assertThat(pairs.weight(1, 0)).isEqualTo(2);
    assertThat(pairs.weight(1, 2)).isEqualTo(0.5);
    assertThat(pairs.weight(2, 3)).isEqualTo(0.5);
  }

  @Test
  void theDeepestPairGrowsMostAndWeightsFadeToWhatTheyWere() {
    Pairs pairs = pairs();
    Tuning tuning = Tuning.CHOSEN;
    pairs.add(0, 1, 0.2);
    pairs.add(1, 2, 0.1);
    pairs.grow(tuning);
    assertThat(pairs.weight(0, 1)).isEqualTo(2 * (1 + tuning.growth()));
    assertThat(pairs.weight(2, 1)).isEqualTo(0.5 * (1 + tuning.growth() / 2));
    pairs.clear(1);
    pairs.add(0, 2, 0.1);
    for (int pass = 0; pass < 100; pass++) {
      pairs.grow(tuning);
    }
    assertThat(pairs.weight(0, 1)).isEqualTo(2);
    assertThat(pairs.weight(1, 2)).isEqualTo(0.5);
    assertThat(pairs.weight(0, 2)).isGreaterThan(1);
    pairs.reset();
    assertThat(pairs.weight(0, 2)).isEqualTo(1);
  }
}
