package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SandBulkingTest {

  private static final Source TABLE =
      Source.found(
          "", "Teaching table of bulking", "", "20 to 35 % at 4 to 6 %, from 10 % falling");
  private static final Source BEAKER =
      Source.found("", "Bulking of sand, student laboratory report", "", "from the printed masses");

  private static Range at(double moisture) {
    return SandBulking.published().at(moisture);
  }

  @ParameterizedTest
  @CsvSource({"0.02, 15", "0.03, 20", "0.04, 25", "0.05, 30"})
  void thePublishedPointsAreMet(double moisture, double bulking) {
    OutsideCheck.of("materials.water", "bulking of sand at " + moisture + ", %", SandBulking.SOURCE)
        .expect(bulking)
        .within(1e-9)
        .got(at(moisture).likely() * 100);
  }

  @ParameterizedTest
  @CsvSource({"2, 14.6", "4, 32.2", "6, 36.4", "8, 40.8", "10, 40.7"})
  void aMeasuredFineSandLiesInTheRange(double moisture, double bulking) {
    Range range = at(moisture / 100);
    OutsideCheck.of(
            "materials.water",
            "bulking of a measured sand at " + moisture + " %, %, within the range",
            BEAKER)
        .expect(bulking)
        .within((range.high() - range.low()) * 50 + 0.05)
        .got((range.high() + range.low()) * 50);
  }

  @Test
  void theTopIsBroadAndTheFallEndsAtNothing() {
    OutsideCheck.of("materials.water", "bulking of a medium sand at 6 %, %", TABLE)
        .expect(27.5)
        .within(7.5)
        .got(at(0.06).likely() * 100);
    assertThat(at(0.051).likely()).isCloseTo(at(0.050).likely(), within(0.01));
    assertThat(at(0.12).likely()).isBetween(0.1, 0.25);
    assertThat(at(0.17)).isEqualTo(new Range(0, 0, at(0.17).high()));
    assertThat(at(0.30)).isEqualTo(Range.exactly(0));
    double before = 0.4;
    for (double w = 0.08; w < 0.25; w += 0.002) {
      assertThat(at(w).likely()).isLessThanOrEqualTo(before);
      before = at(w).likely();
    }
  }

  @Test
  void noStepIsSteeperThanTheFirst() {
    for (double w = 0; w < 0.3; w += 0.001) {
      Range one = at(w);
      Range next = at(w + 0.001);
      assertThat(Math.abs(next.likely() - one.likely())).isLessThanOrEqualTo(0.0076);
      assertThat(one.low()).isLessThanOrEqualTo(one.likely());
      assertThat(one.likely()).isLessThanOrEqualTo(one.high());
    }
  }

  @Test
  void sixPerCentIsNoDrySand() {
    StepRecorder steps = new StepRecorder();
    double dense = SandBulking.bulkedDensity(1555, at(0.06).likely(), steps);
    assertThat(dense).isCloseTo(1196, within(1.0));
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.water.bulked-density", "density"), dense);
  }

  @Test
  void aTinTestBendsTheCurveThroughItsPoint() {
    SandBulking own = SandBulking.ofTin(120, 100, 0.05);
    assertThat(own.at(0.05).likely()).isCloseTo(0.2, within(1e-12));
    assertThat(own.at(0.025).likely()).isCloseTo(0.175 * 2 / 3, within(1e-12));
    assertThat(own.at(0.05).high() - own.at(0.05).low())
        .isLessThan(at(0.05).high() - at(0.05).low());
    assertThatThrownBy(() -> SandBulking.ofTin(100, 120, 0.05)).hasMessageContaining("swapped");
    assertThatThrownBy(() -> SandBulking.ofTin(0.9, 0.01)).hasMessageContaining("tin test");
    assertThatThrownBy(() -> SandBulking.published().at(0.7)).hasMessageContaining("moisture");
    StepRecorder steps = new StepRecorder();
    double bulking = SandBulking.tin(125, 100, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.water.bulking", "B"), bulking);
  }
}
