package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import org.junit.jupiter.api.Test;

class MitreTest {

  @Test
  void squareCornerIsTheDiagonal() {
    assertThat(Mitre.reach(Math.PI / 2, 0.03, 0.04, 2)).isCloseTo(0.05, within(1e-15));
  }

  @Test
  void equalAllowancesMeetOnTheBisector() {
    double angle = Math.toRadians(70);
    assertThat(Mitre.reach(angle, 0.04, 0.04, 2))
        .isCloseTo(0.04 / Math.sin(angle / 2), within(1e-15));
  }

  @Test
  void sharpTipIsHeldToTheLimit() {
    double tip = Math.toRadians(25);
    assertThat(0.04 / Math.sin(tip / 2)).as("full mitre").isGreaterThan(0.18);
    assertThat(Mitre.reach(tip, 0.04, 0.04, 2)).isEqualTo(0.08);
  }

  @Test
  void bluntCornerIsMitredUpToTheLimit() {
    double angle = Math.toRadians(120);
    assertThat(Mitre.reach(angle, 0, 0.1, 2)).isCloseTo(0.1 / Math.sin(angle), within(1e-14));
    assertThat(Mitre.reach(Math.toRadians(170), 0, 0.1, 2)).isEqualTo(0.1);
  }

  @Test
  void inwardCornerIsAlwaysMitred() {
    double angle = Math.toRadians(190);
    assertThat(Mitre.reach(angle, 0, 0.1, 2))
        .isCloseTo(0.1 / Math.abs(Math.sin(angle)), within(1e-14));
  }

  @Test
  void stepsFollow() {
    for (double degrees : new double[] {25, 60, 90, 120, 175, 250}) {
      StepRecorder steps = new StepRecorder();
      double reach = Mitre.reach(Math.toRadians(degrees), 0.02, 0.04, 2, steps);
      DerivationChecks.assertFollowsTo(
          steps.derivation("geometry.pattern.mitre", "mitre at " + degrees + "°"), reach);
    }
  }

  @Test
  void badArgumentsAreNamed() {
    assertThatThrownBy(() -> Mitre.reach(0, 1, 1, 2)).hasMessageContaining("corner angle");
    assertThatThrownBy(() -> Mitre.reach(Math.PI, 1, 1, 2)).hasMessageContaining("straight line");
    assertThatThrownBy(() -> Mitre.reach(1, -1, 1, 2)).hasMessageContaining("first allowance");
    assertThatThrownBy(() -> Mitre.reach(1, 1, Double.NaN, 2))
        .hasMessageContaining("second allowance");
    assertThatThrownBy(() -> Mitre.reach(1, 1, 1, 0.5))
        .hasMessage("mitre limit: given 0.5, must be 1 or more, or seams lose their allowance");
  }
}
