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
  void aLimitIsNeverToldAsMoreAndWhatMustHoldNeverAsLess() {
    assertThat(metric.speedAtMost(7.48)).isEqualTo("7.4\u00a0m/s");
    assertThat(metric.speedAtMost(7.5)).isEqualTo("7.5\u00a0m/s");
    // 7.4 m/s are 16.55 mph.
    assertThat(imperial.speedAtMost(7.48)).isEqualTo("16.5\u00a0mph");
    assertThat(imperial.said("gusts above 7.4 m/s")).isEqualTo("gusts above 16.5\u00a0mph");
    assertThat(metric.lengthAtMost(9.0569)).isEqualTo("9.056\u00a0m");
    // 2.3495 m are 92 1/2 in, 2.3509 m nearly a sixteenth more.
    assertThat(imperial.lengthAtMost(2.3509)).isEqualTo("7\u00a0ft\u00a08\u00a01/2\u00a0in");
    assertThat(metric.massAtMost(24.96)).isEqualTo("24\u00a0kg");
    assertThat(metric.massAtMost(17.58)).isEqualTo("17.5\u00a0kg");
    assertThat(metric.massAtMost(1239)).isEqualTo("1.23\u00a0t");
    // 24.96 kg are 55.03 lb.
    assertThat(imperial.massAtMost(24.96)).isEqualTo("55\u00a0lb");
    assertThat(metric.forceAtMost(847.7)).isEqualTo("847\u00a0N");
    assertThat(metric.forceAtLeast(847.1)).isEqualTo("848\u00a0N");
    assertThat(metric.forceAtLeast(10_010)).isEqualTo("10.1\u00a0kN");
    // 847.3 N are 86.40 kgf or 190.5 lbf.
    assertThat(metric.scaleForceAtLeast(847.3)).isEqualTo("87\u00a0kgf");
    assertThat(metric.scaleForce(847.3)).isEqualTo("86\u00a0kgf");
    assertThat(imperial.forceAtLeast(847.3)).isEqualTo("191\u00a0lbf");
  }

  @Test
  void aRangeWithoutWidthIsOneValue() {
    assertThat(metric.range(new Range(1, 2, 3), metric::area))
        .isEqualTo("2.00\u00a0m² (1.00\u00a0m² to 3.00\u00a0m²)");
    assertThat(metric.range(Range.exactly(2), metric::area)).isEqualTo("2.00\u00a0m²");
  }
}
