package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinearShrinkageTest {

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
  }
}
