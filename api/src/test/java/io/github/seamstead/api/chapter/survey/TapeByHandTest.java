package io.github.seamstead.api.chapter.survey;

import static io.github.seamstead.api.chapter.survey.TapedSquare.MEASURES;
import static io.github.seamstead.api.chapter.survey.TapedSquare.SQUARE;
import static io.github.seamstead.api.chapter.survey.TapedSquare.planned;
import static io.github.seamstead.api.chapter.survey.TapedSquare.readings;
import static io.github.seamstead.api.chapter.survey.TapedSquare.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.Fixture;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A square taped with a tape that was warm, pulled and hung. */
class TapeByHandTest {

  /**
   * A tape 15 K too warm, pulled 30 N too hard and hung free, by the formulas of Mahun: alpha L dT,
   * (P - P0) L / S and -w² L³ / (24 P²), with 50 kN of stiffness and 30 g to a metre.
   */
  @Test
  void warmthPullAndSagAreCorrected() {
    String tape =
        "\"tape\": {\"markedLength\": \"30 m\", \"trueLength\": \"30 m\", \"stiffness\": \"50000"
            + " N\", \"massPerLength\": \"0.03 kg/m\", \"temperature\": \"35 degC\", \"pull\": \"80"
            + " N\", \"hung\": true}, ";
    Fixture f = planned(MEASURES, readings(SQUARE, "", 0), tape + terms("8 mm", ""));
    double w = 0.03 * 9.80665;
    for (int i = 0; i < 10; i++) {
      String one = "/survey/tape/distances/" + i;
      double l = f.number(one + "/taped_m");
      double correction = 11.6e-6 * l * 15 + 30 * l / 50_000 - w * w * l * l * l / (24 * 80.0 * 80);
      assertThat(f.number(one + "/distance_m")).isCloseTo(l + correction, within(1e-9));
    }
    // Held as hard as this, the longest distance is shown true.
    double l = Math.sqrt(32);
    double pull = f.number("/survey/tape/truePull_N");
    double left =
        11.6e-6 * l * 15 + (pull - 50) * l / 50_000 - w * w * l * l * l / (24 * pull * pull);
    assertThat(left).isCloseTo(0, within(1e-9));
    assertThat(f.sums("geometry.tape.cancelling-pull"))
        .singleElement()
        .satisfies(p -> assertThat(p).isCloseTo(pull, within(1e-6)));
    double most = 11.6e-6 * l * 15 + 30 * l / 50_000 - w * w * l * l * l / (24 * 80.0 * 80);
    assertThat(f.sums("geometry.tape.correction"))
        .singleElement()
        .satisfies(d -> assertThat(d).isCloseTo(l + most, within(1e-9)));
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(
            line ->
                line.startsWith(
                    "Every taped distance was corrected for the tape as it was held; the most,"
                        + " B1-B3, by "
                        + String.format(Locale.ROOT, "%.1f", 1000 * most)
                        + " mm, from 5.657 m. Held at that warmth with a pull of "));
    // Not hung, it does not sag; of unknown stiffness, no pull makes it true.
    Fixture lying =
        planned(
            MEASURES,
            readings(SQUARE, "", 0),
            tape.replace("\"stiffness\": \"50000 N\",", "").replace("true}", "false}")
                + terms("8 mm", ""));
    assertThat(lying.number("/survey/tape/distances/0/distance_m"))
        .isCloseTo(4 + 11.6e-6 * 4 * 15, within(1e-9));
    assertThat(lying.keys("/survey/tape")).containsExactly("distances");
  }
}
