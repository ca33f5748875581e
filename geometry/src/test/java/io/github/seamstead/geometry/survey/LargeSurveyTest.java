package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The largest survey: 64 sides with an opening, 129 nodes, 387 unknowns. */
@Tag("dear")
class LargeSurveyTest {

  @Test
  void sixtyFourSidesAdjust() {
    Adjustment adjustment = TestFrames.survey(64, true, 0.02, 0.002, 1).adjust().orThrow();
    assertThat(adjustment.nodes()).hasSize(129);
    assertThat(adjustment.readings()).hasSize(512);
    assertThat(adjustment.degreesOfFreedom()).isEqualTo(512 - 387 + 4);
    assertThat(adjustment.readings().stream().mapToDouble(ReadingResult::redundancy).sum())
        .isCloseTo(129, within(1e-6));
    assertThat(adjustment.globalTest().orElseThrow().verdict())
        .isEqualTo(GlobalTest.Verdict.AS_EXPECTED);
  }

  @Test
  void theNextReadingImprovesTheWorstEdge() {
    Adjustment adjustment = TestFrames.survey(64, true, 0.02, 0.002, 2).adjust().orThrow();
    List<NextReading> next = adjustment.nextReadings(3);
    assertThat(next).isNotEmpty();
    assertThat(next.get(0).edgeAfter()).isLessThan(next.get(0).worstBefore());
  }
}
