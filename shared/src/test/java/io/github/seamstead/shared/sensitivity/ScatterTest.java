package io.github.seamstead.shared.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ScatterTest {

  private static final double ONE = NormalScore.below(1);

  @Test
  void theMiddleIsWhatIsStated() {
    assertThat(Scatter.normal(3).at(7, 0.5, 1)).isCloseTo(7, within(1e-9));
    assertThat(Scatter.logNormal(0.4).at(7, 0.5, 1)).isCloseTo(7, within(1e-9));
    assertThat(Scatter.evenPart(0.4).at(7, 0.5, 1)).isEqualTo(7);
    assertThat(new Scatter(Scatter.Form.EVEN, 1, 5).at(7, 0.5, 1)).isEqualTo(7);
  }

  @Test
  void oneDeviationUpIsOneReach() {
    assertThat(Scatter.normal(3).at(7, ONE, 1)).isCloseTo(10, within(1e-8));
    assertThat(Scatter.normal(3).at(7, ONE, 0.5)).isCloseTo(8.5, within(1e-8));
    assertThat(Scatter.logNormal(0.4).at(7, ONE, 1)).isCloseTo(7 * Math.exp(0.4), within(1e-7));
  }

  @Test
  void evenEndsLieAtTheirReach() {
    Scatter ends = new Scatter(Scatter.Form.EVEN, 1, 5);
    assertThat(ends.at(7, 0, 1)).isEqualTo(6);
    assertThat(ends.at(7, 1, 1)).isEqualTo(12);
    assertThat(ends.at(7, 0.25, 1)).isEqualTo(6.5);
    assertThat(Scatter.evenPart(0.15).at(100, 0, 1)).isCloseTo(85, within(1e-12));
    assertThat(Scatter.evenPart(0.15).at(100, 1, 0)).isEqualTo(100);
  }

  @Test
  void whatIsOutOfRangeIsRefused() {
    assertThatThrownBy(() -> Scatter.normal(-1)).hasMessageContaining("scatter below");
    assertThatThrownBy(() -> Scatter.normal(1).at(0, 1.5, 1)).hasMessageContaining("place");
    assertThatThrownBy(() -> Scatter.normal(1).at(0, 0.5, -1)).hasMessageContaining("width");
  }
}
