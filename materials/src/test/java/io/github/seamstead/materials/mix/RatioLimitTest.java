package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of a limit between samples: a table of the normal law, and bits of a channel. */
class RatioLimitTest {

  private static final Source NORMAL =
      Source.fromMemory("", "Table of the normal distribution", "", "area left of z");
  private static final Source SHANNON =
      Source.fromMemory(
          "C. E. Shannon", "A mathematical theory of communication", "1948", "noisy channel");

  /** The logarithm of the limit is normal about that of the middle. */
  @ParameterizedTest
  @CsvSource({"-2, 0.0228", "-1, 0.1587", "0, 0.5", "0.5, 0.6915", "1, 0.8413", "1.645, 0.95"})
  void theFirstGuessIsLogNormal(double z, double left) {
    for (double middle : new double[] {1.5, 3}) {
      for (double deviation : new double[] {0.2, 0.5}) {
        RatioLimit limit = new RatioLimit(middle, deviation);
        OutsideCheck.of(
                "materials.mix",
                "share of limits below " + middle + " e^(" + z + " · " + deviation + ")",
                NORMAL)
            .expect(left)
            .within(0.002)
            .got(1 - limit.below(middle * Math.exp(z * deviation)));
        // The quantile gives the ratio back, to the width of a slot of 2.2 %.
        assertThat(limit.quantile(left) / (middle * Math.exp(z * deviation)))
            .isCloseTo(1, within(0.023));
      }
    }
    assertThat(NormalTail.above(z)).isCloseTo(1 - left, within(6e-5));
  }

  @Test
  void allLiesBelowTheEnd() {
    RatioLimit limit = new RatioLimit(2, 0.5);
    // What is asked is how probably a ratio lies below the limit.
    assertThat(limit.below(0.09)).isCloseTo(1, within(1e-12));
    assertThat(limit.below(21)).isZero();
    assertThat(limit.quantile(1 + 1e-9))
        .as("a level that rounding misses")
        .isCloseTo(20, within(1e-9));
  }

  /**
   * A sample at the middle of a wide guess asks yes or no, and one answer in twenty is wrong: a
   * symmetric channel of 5 %, which carries 1 - H(0.05) = 0.7136 bit. The blur between samples
   * takes a little of it.
   */
  @Test
  void aSampleInTheMiddleTellsWhatItsChannelCarries() {
    RatioLimit limit = new RatioLimit(1.4, 5);
    OutsideCheck.of("materials.mix", "bits of a sample in the middle of a wide guess", SHANNON)
        .expect(0.7136)
        .within(0.06)
        .got(limit.information(1.4));
    assertThat(limit.information(1.4)).isLessThan(0.7136);
    // Far out the answer is known before.
    assertThat(limit.information(19)).isBetween(0.0, 0.05);
    assertThat(limit.information(0.1)).isBetween(0.0, 0.05);
    assertThat(limit.information(1.4)).isGreaterThan(limit.information(2.8));
    assertThat(limit.information(1.4)).isGreaterThan(limit.information(0.7));
  }

  /** Bayes on two halves: 0.95 to 0.05, blurred near the sample by 8 % of 60 %. */
  @Test
  void oneSampleMovesHalfOfTheGuess() {
    RatioLimit limit = new RatioLimit(2, 0.6);
    limit.learn(2, 1);
    assertThat(limit.below(2)).as("it cracked, so it lies below the limit").isBetween(0.88, 0.95);
    limit.learn(2, 0);
    assertThat(limit.below(2))
        .as("another did not: all is open again")
        .isCloseTo(0.5, within(0.01));
  }

  /** Soil without any sand lies below every limit, and what is sure beforehand teaches nothing. */
  @Test
  void soilAloneTeachesNothing() {
    RatioLimit limit = new RatioLimit(2, 0.5);
    double before = limit.below(1.7);
    limit.learn(0, 1);
    limit.learn(0, 0);
    assertThat(limit.below(1.7)).isCloseTo(before, within(1e-12));
    assertThat(limit.information(0)).isCloseTo(0, within(1e-12));
  }

  @Test
  void ratiosGoUpToTheLast() {
    assertThat(RatioLimit.multiples(0.5, 2)).containsExactly(0.5, 1.0, 1.5, 2.0);
    assertThat(RatioLimit.multiples(0.25, 0.6)).containsExactly(0.25, 0.5);
  }
}
