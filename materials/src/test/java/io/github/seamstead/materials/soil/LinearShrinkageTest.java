package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinearShrinkageTest {

  private static final Source DERIVED = Source.derived("geometry of shrinkage");

  @ParameterizedTest
  @CsvSource({"5,1.613", "10,3.127", "20,5.896", "30,8.374", "40,10.610"})
  void linearFromVolume(double volume, double linear) {
    OutsideCheck.of("materials.soil", "LS % from volume shrinkage " + volume + " % of dry", DERIVED)
        .expect(linear)
        .within(0.001)
        .got(LinearShrinkage.fromVolume(volume / 100, Steps.none()) * 100);
  }

  @ParameterizedTest
  @CsvSource({"2,5.88", "3,8.73", "4,11.53", "5,14.26", "7.1,19.82"})
  void volumeFromLinear(double linear, double volume) {
    OutsideCheck.of("materials.soil", "volume loss % of wet from LS " + linear + " %", DERIVED)
        .expect(volume)
        .within(0.005)
        .got(LinearShrinkage.volumeLoss(linear / 100, Steps.none()) * 100);
  }

  @Test
  void sausageExample() {
    Source source = Source.found("Practical Action Sudan", "Timberless house model", "", "sausage");
    OutsideCheck.of("materials.soil", "100 mm dries to 93 mm: shrinkage %", source)
        .expect(7)
        .within(1e-9)
        .got(new LinearShrinkage(0.100, 0.093).ratio() * 100);
  }

  @Test
  void moreShrinkageMeansMoreClay() {
    double before = 0;
    for (double gap : new double[] {0.001, 0.005, 0.01, 0.02}) {
      double clay =
          SoilAssessment.assess(List.of(LinearShrinkage.ofGap(0.14, gap))).texture().clay().value();
      assertThat(clay).isGreaterThan(before);
      before = clay;
    }
  }

  @Test
  void gapGivenAsLengthIsRefused() {
    assertThatThrownBy(() -> new LinearShrinkage(0.6, 0.012))
        .hasMessageContaining("dried length: given 0.012 m")
        .hasMessageContaining("not the gap");
  }

  @Test
  void derivationsFollow() {
    StepRecorder a = new StepRecorder();
    double ls = new LinearShrinkage(0.14, 0.131).ratio(a);
    DerivationChecks.assertFollowsTo(a.derivation("materials.soil.linear_shrinkage", "LS"), ls);
    StepRecorder b = new StepRecorder();
    double linear = LinearShrinkage.fromVolume(0.3, b);
    DerivationChecks.assertFollowsTo(b.derivation("x", "x"), linear);
    StepRecorder c = new StepRecorder();
    double volume = LinearShrinkage.volumeLoss(0.05, c);
    DerivationChecks.assertFollowsTo(c.derivation("x", "x"), volume);
  }
}
