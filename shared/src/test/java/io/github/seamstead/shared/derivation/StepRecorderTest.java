package io.github.seamstead.shared.derivation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import org.junit.jupiter.api.Test;

class StepRecorderTest {

  private static final Source PLANE = Source.derived("Pythagoras");

  private static double slant(double r, double h, Steps steps) {
    steps.section("Face");
    double s =
        steps
            .step("s", "slant height")
            .formula("sqrt(r^2 + H^2)")
            .with("r", r, "m")
            .with("H", h, "m")
            .from(PLANE)
            .gives(Math.sqrt(r * r + h * h), "m");
    return steps
        .step("d", "double slant")
        .formula("2 * s")
        .with("s", s, "m")
        .note("for both sides")
        .gives(2 * s, "m");
  }

  @Test
  void theWorkedCallGivesWhatThePlainCallGives() {
    StepRecorder recorder = new StepRecorder();
    double worked = slant(3, 4, recorder);
    Derivation derivation = recorder.derivation("test.slant", "Slant height");
    assertThat(worked).isEqualTo(slant(3, 4, Steps.none())).isEqualTo(10);
    DerivationChecks.assertFollowsTo(derivation, worked);
    assertThat(derivation.steps().get(0).section()).isEqualTo("Face");
    assertThat(derivation.steps().get(0).source()).contains(PLANE);
    assertThat(derivation.result().note()).isEqualTo("for both sides");
  }

  @Test
  void aWrongFormulaTextIsCaught() {
    StepRecorder recorder = new StepRecorder();
    recorder
        .step("a", "area")
        .formula("w * h / 2")
        .with("w", 2, "m")
        .with("h", 3, "m")
        .gives(6, "m2");
    Derivation derivation = recorder.derivation("test.area", "Area");
    assertThatThrownBy(() -> DerivationChecks.assertFollows(derivation))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("step a = w * h / 2");
  }

  @Test
  void anInputThatDriftsFromItsStepIsCaught() {
    StepRecorder recorder = new StepRecorder();
    recorder.step("a", "given").gives(6, "m");
    recorder.step("b", "double").formula("2 * a").with("a", 6.1, "m").gives(12.2, "m");
    Derivation derivation = recorder.derivation("test.drift", "Drift");
    assertThatThrownBy(() -> DerivationChecks.assertFollows(derivation))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("input a of step b");
  }

  @Test
  void refusesAFormulaWithoutItsNumbers() {
    StepRecorder recorder = new StepRecorder();
    Steps.Entry entry = recorder.step("a", "area").formula("w * h").with("w", 2, "m");
    assertThatThrownBy(() -> entry.gives(6, "m2"))
        .hasMessageContaining("no number was given for [h]");
    assertThatThrownBy(() -> new StepRecorder().derivation("x", "y")).hasMessageContaining("steps");
  }
}
