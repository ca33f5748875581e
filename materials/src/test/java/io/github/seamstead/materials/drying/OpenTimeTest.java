package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Range;
import org.junit.jupiter.api.Test;

class OpenTimeTest {

  @Test
  void windShortensTheOpenTime() {
    Range still = OpenTime.of(new AirState(18, 0.6, 0.1), 1750, 0.2, 0.14);
    Range windy = OpenTime.of(new AirState(25, 0.4, 3), 1750, 0.2, 0.14);
    assertThat(windy.likely()).isLessThan(still.likely() / 3);
    assertThat(still.low()).isLessThan(still.likely());
  }

  @Test
  void theStepsFollow() {
    StepRecorder steps = new StepRecorder();
    double time = OpenTime.of(new AirState(18, 0.6, 0.1), 1750, 0.2, 0.14, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.open-time", "t"), time);
  }

  @Test
  void saturatedAirNeverDriesTheEdge() {
    Range day = OpenTime.of(new AirState(18, 1, 0.1), 1750, 0.2, 0.14);
    assertThat(day.likely()).isCloseTo(Weather.DAY, within(1e-6));
    assertThatThrownBy(() -> OpenTime.of(new AirState(18, 0.6, 0.1), 1750, 0.1, 0.14))
        .hasMessageContaining("ram it instead");
  }
}
