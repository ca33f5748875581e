package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class DrainageTest {

  private static final RegularPyramid FRAME = RegularPyramid.ofBaseSideAndHeight(8, 2, 1.5);

  @Test
  void fallAndLapAreThoseOfAHipInSpace() {
    Drainage drainage = Drainage.of(FRAME.measures());
    Vector3D hip = FRAME.baseCorner(1).vectorTo(FRAME.apex());
    assertThat(drainage.fallRatio())
        .isCloseTo(hip.getZ() / Math.hypot(hip.getX(), hip.getY()), within(1e-12));
    double lap = drainage.lapForRise(0.05, Steps.none());
    assertThat(hip.withNorm(lap).getZ()).isCloseTo(0.05, within(1e-12));
    assertThat(lap).isGreaterThan(0.05 / Math.sin(FRAME.measures().faceSlope()));
    assertThat(drainage.caution().text()).contains("°").contains("Local codes");
  }

  @Test
  void stepsCanBeFollowed() {
    StepRecorder recorder = new StepRecorder();
    double lap = Drainage.of(FRAME.measures()).lapForRise(0.05, recorder);
    DerivationChecks.assertFollowsTo(recorder.derivation("geometry.frame.lap", "Lap"), lap);
  }

  @Test
  void badInputIsNamed() {
    assertThatThrownBy(() -> new Drainage(0.5, 0.6)).hasMessageContaining("hip slope");
    assertThatThrownBy(() -> Drainage.of(FRAME.measures()).lapForRise(0, Steps.none()))
        .hasMessageContaining("rise of the lap: given 0 m");
  }
}
