package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

class SaturationTest {

  private static final Source TEXTBOOK =
      Source.found(
          "Venkatramaiah", "Geotechnical Engineering", "", "example 2.1: S 61.24 % at 11 %");

  @Test
  void aTextbookSoilIsAsFullAsPrinted() {
    StepRecorder steps = new StepRecorder();
    double full = Saturation.moisture(17_840 / 9.81, 2700, steps);
    OutsideCheck.of("materials.water", "degree of saturation at 11 % of water, %", TEXTBOOK)
        .expect(61.24)
        .within(0.05)
        .got(0.11 / full * 100);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.water.saturation", "w"), full);
  }

  @Test
  void packedFloorsHoldAboutAFifth() {
    assertThat(Saturation.moisture(1780)).isCloseTo(0.1844, within(5e-5));
    assertThat(Saturation.densestAt(0.1844)).isCloseTo(1780, within(0.5));
    assertThatThrownBy(() -> Saturation.moisture(2700, 2650, Steps.none()))
        .hasMessageContaining("dry density");
  }
}
