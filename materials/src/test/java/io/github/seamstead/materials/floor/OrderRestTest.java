package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.uncertainty.Range;
import org.junit.jupiter.api.Test;

class OrderRestTest {

  private static OrderLine line(double ordered, int trips) {
    return new OrderLine(
        new Supply("sand", 0.04, 100, 24, true),
        Range.exactly(1000),
        Range.exactly(1040),
        ordered,
        ordered / 1500,
        0,
        trips,
        ordered / 1000 * 24);
  }

  @Test
  void whatLiesReadyIsNotOrderedAgain() {
    OrderLine left = line(1200, 3).less(450);
    // 750 kg are lacking, sold in hundreds.
    assertThat(left.ordered()).isEqualTo(800);
    assertThat(left.cost()).isCloseTo(19.2, within(1e-9));
    assertThat(left.looseVolume()).isCloseTo(800 / 1500.0, within(1e-12));
    assertThat(left.trips()).isEqualTo(2);
    assertThat(line(1200, 3).less(0)).isEqualTo(line(1200, 3));
    assertThat(line(1200, 3).less(1300).ordered()).isZero();
    assertThat(line(0, 0).less(10).trips()).isZero();
    assertThatThrownBy(() -> line(1, 1).less(-1)).hasMessageContaining("mass on site");
  }
}
