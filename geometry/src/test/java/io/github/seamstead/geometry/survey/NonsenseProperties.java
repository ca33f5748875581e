package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;

/** Readings that fit no frame: an answer with finite numbers, or one clear message. */
@Tag("dear")
class NonsenseProperties {

  @Property(tries = 100, seed = "2026110043")
  void contradictionsEndInAnAnswerOrAMessage(
      @ForAll @IntRange(min = 3, max = 7) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(min = 1, max = 60) int count,
      @ForAll @IntRange(max = 100_000) int seed) {
    RandomGenerator random = Seeds.stream(seed, "nonsense", 0);
    SurveyShape shape = TestFrames.shape(sides, truncated);
    List<Node> nodes = shape.panelNodes();
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Node a = nodes.get(random.nextInt(nodes.size()));
      Node b = nodes.get(random.nextInt(nodes.size()));
      if (!a.equals(b)) {
        double size = Math.pow(10, 4 * random.nextDouble() - 2);
        readings.add(
            random.nextInt(4) > 0
                ? Reading.distance(a, b, size, 0.002)
                : new Reading.HeightDifference(a, b, size, 0.002, ""));
      }
    }
    if (readings.isEmpty()) {
      return;
    }
    Survey survey = Survey.of(shape, readings);
    try {
      if (survey.adjust() instanceof Adjustment adjustment) {
        assertThat(adjustment.weightedSquares()).isFinite();
        for (EdgeLength edge : adjustment.edges()) {
          assertThat(edge.length().value()).isFinite();
        }
      } else {
        assertThat(((Deficiency) survey.adjust()).message()).contains("needed to fix");
      }
    } catch (IllegalArgumentException e) {
      assertThat(e.getMessage()).contains("readings:");
    }
  }
}
