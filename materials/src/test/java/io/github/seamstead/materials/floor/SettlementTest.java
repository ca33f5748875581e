package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import org.junit.jupiter.api.Test;

class SettlementTest {

  @Test
  void turfUnderAFloor() {
    Settlement turf = Settlement.of(0.08, 350);
    assertThat(turf.total().high()).isBetween(0.02, 0.08);
    assertThat(turf.advice()).anyMatch(a -> a.startsWith("strip turf"));
    assertThat(turf.caution().text()).contains("Local codes");
    StepRecorder steps = new StepRecorder();
    double squeeze = Settlement.squeeze(0.08, 350, 1e-6, steps);
    assertThat(squeeze).isCloseTo(0.08 * 350 * 9.80665 * 1e-6, within(1e-12));
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.floor.settlement", "squeeze"), squeeze);
  }

  @Test
  void boundsHold() {
    assertThat(Settlement.of(0, 350).total().high()).isZero();
    assertThat(Settlement.of(0, 350).advice()).anyMatch(a -> a.contains("stripped"));
    assertThat(Settlement.squeeze(1, 5000, 1e-3, Steps.none())).isEqualTo(0.5);
    assertThatThrownBy(() -> Settlement.of(-0.1, 350)).hasMessageContaining("organic layer");
  }
}
