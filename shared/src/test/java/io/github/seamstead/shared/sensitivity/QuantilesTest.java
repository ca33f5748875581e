package io.github.seamstead.shared.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;

class QuantilesTest {

  private static final double[] SORTED = {1, 2, 4, 8, 16, 32};

  @Test
  void agreesWithTheReferenceLibrary() {
    Percentile reference = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
    reference.setData(SORTED);
    for (double level : new double[] {0.05, 0.25, 0.5, 0.63, 0.95, 1}) {
      assertThat(Quantiles.of(SORTED, level))
          .isCloseTo(reference.evaluate(100 * level), within(1e-12));
    }
    assertThat(Quantiles.of(SORTED, 0)).isEqualTo(1);
    assertThat(Quantiles.of(new double[] {7}, 0.3)).isEqualTo(7);
  }

  @Test
  void badInputIsNamed() {
    assertThatThrownBy(() -> Quantiles.of(new double[0], 0.5)).hasMessageContaining("sample");
    assertThatThrownBy(() -> Quantiles.of(SORTED, 1.1)).hasMessageContaining("level");
  }
}
