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

class FieldDensityTest {

  private static final Source SAND_CONE =
      Source.derived("sand-cone worked example of a civil engineering site, hole not rounded");
  private static final double POUND = 0.45359237;
  private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;

  @Test
  void theHoleIsNotRounded() {
    StepRecorder steps = new StepRecorder();
    double density =
        FieldDensity.ofSandCone(
            7.00 * POUND, 0.53 * POUND, 99 * POUND / CUBIC_FOOT, 8.11 * POUND, 0.1111, steps);
    double pcf = density / POUND * CUBIC_FOOT;
    OutsideCheck.of("materials.water", "dry density by sand cone, pcf", SAND_CONE)
        .expect(111.69)
        .within(0.01)
        .got(pcf);
    assertThat(pcf).as("the printed 112.29 rounds the hole").isNotCloseTo(112.29, within(0.3));
    DerivationChecks.assertFollowsTo(steps.derivation("materials.water.sand-cone", "d"), density);
    assertThatThrownBy(() -> FieldDensity.ofSandCone(0.5, 0.6, 1500, 3, 0.1, Steps.none()))
        .hasMessageContaining("must be more than the 0.6 kg");
  }
}
