package io.github.seamstead.shared.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RangeTest {

  @Test
  void scalesAndAddsMemberByMember() {
    assertThat(new Range(1, 2, 4).times(2)).isEqualTo(new Range(2, 4, 8));
    assertThat(new Range(1, 2, 4).plus(Range.exactly(1))).isEqualTo(new Range(2, 3, 5));
  }

  @Test
  void refusesAFallingRange() {
    assertThatThrownBy(() -> new Range(3, 2, 4)).hasMessageContaining("must not fall");
    assertThatThrownBy(() -> new Range(1, 2, 4).times(-1)).hasMessageContaining("factor");
    assertThatThrownBy(() -> new Range(1, Double.NaN, 4)).hasMessageContaining("likely");
  }
}
