package io.github.seamstead.shared.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;

class PropagationTest {

  private static final Source GUM_H2 =
      Source.fromMemory(
          "JCGM",
          "Guide to the expression of uncertainty in measurement, JCGM 100",
          "2008",
          "annex H.1, end gauge: table H.1");

  /**
   * The end gauge of the guide, first order: l_s, d and the two temperature terms, in nanometres;
   * 25, 9.7, 2.9 and 16.6 make 32 nm (the guide prints its sum rounded).
   */
  @Test
  void theEndGaugeOfTheGuide() {
    Propagation.Doubt doubt =
        Propagation.of("l", "gauge", "l_s + d - l_0 * (a * th + da)", "nm")
            .doubted("l_s", "the standard", new Uncertain(50_000_623, 25), "nm")
            .doubted("d", "the difference", new Uncertain(215, 9.7), "nm")
            .exact("l_0", 50_000_623, "nm")
            .exact("a", 11.5e-6, "1/K")
            .doubted("th", "the difference of temperature", new Uncertain(0, 0.029), "K")
            .doubted("da", "the difference of expansion, at -0.1 K", new Uncertain(0, 0.058e-6), "")
            .write(Steps.none());
    OutsideCheck.of("shared.sensitivity", "end gauge: combined uncertainty, nm", GUM_H2)
        .expect(32)
        .within(0.5)
        .got(doubt.standardUncertainty());
  }

  @Test
  void straightFormulasAgreeWithTheClosedForm() {
    Uncertain a = new Uncertain(8, 0.3);
    Uncertain b = new Uncertain(5, 0.4);
    StepRecorder steps = new StepRecorder();
    Propagation.Doubt doubt = product(a, b).write(steps);
    assertThat(doubt.standardUncertainty())
        .isCloseTo(a.times(b).standardUncertainty(), within(1e-12));
    assertThat(doubt.shares().get("a") + doubt.shares().get("b")).isCloseTo(1, within(1e-12));
    assertThat(doubt.shares().get("b")).isGreaterThan(doubt.shares().get("a"));
    double reach = 1.645 * doubt.standardUncertainty();
    assertThat(doubt.sampled().high()).isCloseTo(40 + reach, within(0.1 * reach));
    assertThat(doubt.sampled().low()).isCloseTo(40 - reach, within(0.1 * reach));
    Derivation derivation = steps.derivation("shared.sensitivity", "product");
    DerivationChecks.assertFollowsTo(derivation, doubt.sampled().high());
    assertThat(product(a, b).write(Steps.none())).isEqualTo(doubt);
  }

  private static Propagation product(Uncertain a, Uncertain b) {
    return Propagation.of("y", "product", "a * b", "")
        .doubted("a", "one", a, "")
        .doubted("b", "other", b, "");
  }

  @Test
  void oneRangeComesThroughAsItIs() {
    Propagation.Doubt doubt =
        Propagation.of("y", "third of it", "x / k", "")
            .doubted("x", "it", new Range(1, 2, 6), "")
            .exact("k", 2, "")
            .write(Steps.none());
    assertThat(doubt.sampled().low()).isCloseTo(0.5, within(0.01));
    assertThat(doubt.sampled().high()).isCloseTo(3, within(0.01));
    assertThat(doubt.shares()).containsEntry("x", 1.0);
  }

  /** The law sees nothing where the formula is flat at its value; samples do. */
  @Test
  void aKinkIsSeenBySamplesOnly() {
    Propagation.Doubt doubt =
        Propagation.of("y", "what is over", "max(0, x - 3)", "")
            .doubted("x", "it", new Range(1, 2, 5), "")
            .write(Steps.none());
    assertThat(doubt.value()).isZero();
    assertThat(doubt.sampled().high()).isCloseTo(2, within(0.01));
    assertThat(doubt.sampled().low()).isZero();
  }

  @Test
  void withoutDoubtThereIsNone() {
    StepRecorder steps = new StepRecorder();
    Propagation.Doubt doubt =
        Propagation.of("y", "sum", "a + 1", "")
            .doubted("a", "it", Range.exactly(2), "")
            .write(steps);
    assertThat(doubt.sampled()).isEqualTo(Range.exactly(3));
    assertThat(doubt.standardUncertainty()).isZero();
    assertThat(doubt.shares()).isEmpty();
    DerivationChecks.assertFollowsTo(steps.derivation("shared.sensitivity", "sum"), 3);
  }

  @Test
  void aSymbolWithoutNumberIsRefused() {
    Propagation lacking = Propagation.of("y", "sum", "a + b", "").exact("a", 1, "");
    assertThatThrownBy(() -> lacking.write(Steps.none())).hasMessageContaining("b");
  }
}
