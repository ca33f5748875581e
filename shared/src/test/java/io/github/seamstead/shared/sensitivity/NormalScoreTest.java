package io.github.seamstead.shared.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** An independent library gives the same scores. */
class NormalScoreTest {

  private static final NormalDistribution ORACLE = new NormalDistribution();

  @Test
  void scoresAreThoseOfAnotherLibrary() {
    for (int i = 1; i < 2000; i++) {
      double part = i / 2000.0;
      assertThat(NormalScore.of(part))
          .isCloseTo(ORACLE.inverseCumulativeProbability(part), within(1e-8));
    }
    for (double part : new double[] {1e-7, 1e-5, 1e-3, 0.999, 0.99999}) {
      assertThat(NormalScore.of(part))
          .isCloseTo(ORACLE.inverseCumulativeProbability(part), within(1e-6));
    }
  }

  @Test
  void ninetyFivePerCentIsTheConstant() {
    assertThat(NormalScore.of(0.95)).isCloseTo(NormalScore.AT_95, within(1e-10));
    assertThat(NormalScore.of(0.5)).isCloseTo(0, within(1e-12));
  }

  @Test
  void theEndsAreHeld() {
    assertThat(NormalScore.of(0)).isEqualTo(-6);
    assertThat(NormalScore.of(1)).isEqualTo(6);
    assertThatThrownBy(() -> NormalScore.of(1.01)).hasMessageContaining("part of the distribution");
  }
}
