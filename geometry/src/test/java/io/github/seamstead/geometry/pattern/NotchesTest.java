package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import org.junit.jupiter.api.Test;

class NotchesTest {

  @Test
  void notchesStandAtWholeSpacings() {
    assertThat(Notches.distances(2.3, 0.5)).containsExactly(0.5, 1.0, 1.5, 2.0);
  }

  @Test
  void noneStandsAtTheEnd() {
    assertThat(Notches.distances(2.0, 0.5)).containsExactly(0.5, 1.0, 1.5);
    assertThat(Notches.distances(2.04, 0.5)).containsExactly(0.5, 1.0, 1.5);
    assertThat(Notches.distances(0.5, 0.5)).isEmpty();
    assertThat(Notches.distances(0.01, 0.5)).isEmpty();
  }

  @Test
  void stepsFollow() {
    StepRecorder steps = new StepRecorder();
    int count = Notches.count(3.598632, 0.4, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("geometry.pattern.notches", "notches"), count);
    assertThat(count).isEqualTo(8);
  }

  @Test
  void badArgumentsAreNamed() {
    assertThatThrownBy(() -> Notches.count(0, 0.5)).hasMessageContaining("seam length");
    assertThatThrownBy(() -> Notches.count(1, 0)).hasMessageContaining("notch spacing");
    assertThatThrownBy(() -> Notches.count(1, 1e-9))
        .hasMessage("notch spacing: given 1.0E-9 m on a seam of 1 m, must be wider");
  }
}
