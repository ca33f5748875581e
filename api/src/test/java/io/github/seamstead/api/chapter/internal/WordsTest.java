package io.github.seamstead.api.chapter.internal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.uncertainty.Range;
import org.junit.jupiter.api.Test;

class WordsTest {

  private final Words metric = new Words(UnitSystem.METRIC);
  private final Words imperial = new Words(UnitSystem.IMPERIAL);

  @Test
  void writesWhatTheCrewReads() {
    assertThat(metric.length(1.6)).isEqualTo("1.600\u00a0m");
    assertThat(imperial.length(2.3495)).isEqualTo("7\u00a0ft\u00a08\u00a01/2\u00a0in");
    assertThat(imperial.area(10)).isEqualTo("107.6\u00a0ft²");
    assertThat(metric.mass(1234)).isEqualTo("1.23\u00a0t");
    assertThat(metric.mass(7.42)).isEqualTo("7.4\u00a0kg");
    assertThat(metric.percent(0.163)).isEqualTo("16\u00a0%");
    assertThat(metric.duration(60 * 95)).isEqualTo("95\u00a0min");
    assertThat(metric.duration(3600 * 3 + 60 * 5)).isEqualTo("3\u00a0h 5\u00a0min");
  }

  @Test
  void aRangeWithoutWidthIsOneValue() {
    assertThat(metric.range(new Range(1, 2, 3), metric::area))
        .isEqualTo("2.00\u00a0m² (1.00\u00a0m² to 3.00\u00a0m²)");
    assertThat(metric.range(Range.exactly(2), metric::area)).isEqualTo("2.00\u00a0m²");
  }
}
