package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.page.maths.Sums;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Holds sums to those of the platform, bit by bit. */
class SumsTest {

  @Test
  void sumsAndMeansAreThoseOfThePlatform() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 20_000; i++) {
      double[] numbers = new double[random.nextInt(40)];
      for (int k = 0; k < numbers.length; k++) {
        numbers[k] = Math.scalb(random.nextDouble() - 0.3, random.nextInt(-20, 20));
      }
      assertThat(Sums.sum(DoubleStream.of(numbers))).isEqualTo(DoubleStream.of(numbers).sum());
      assertThat(Sums.average(DoubleStream.of(numbers)))
          .isEqualTo(DoubleStream.of(numbers).average());
    }
    double[] huge = {Double.POSITIVE_INFINITY, 1, 2};
    assertThat(Sums.sum(DoubleStream.of(huge))).isEqualTo(DoubleStream.of(huge).sum());
  }
}
