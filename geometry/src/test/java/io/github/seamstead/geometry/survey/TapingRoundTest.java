package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.work.Seeds;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapingRoundTest {

  private static SurveyShape shape(int sides, boolean truncated) {
    SurveyShape bare = truncated ? SurveyShape.truncated(sides) : SurveyShape.whole(sides);
    return bare.meant(new SurveyShape.Ideal(3, 3.5, truncated ? 2.8 : 0));
  }

  @ParameterizedTest
  @CsvSource({
    "3,false", "4,false", "5,false", "6,false", "7,false", "12,false",
    "3,true", "4,true", "5,true", "6,true", "7,true", "12,true"
  })
  void everyReadingIsControlledByOthers(int sides, boolean truncated) {
    SurveyShape shape = shape(sides, truncated);
    RandomGenerator random = Seeds.stream(11, "round", sides);
    List<Reading> readings =
        TapingRound.of(shape).stands().stream()
            .flatMap(stand -> stand.readings().stream())
            .map(wanted -> wanted.reading(wanted.wanted() + 0.001 * random.nextGaussian(), 0.002))
            .toList();
    BlunderReport report = Survey.of(shape, readings).findBlunders();
    assertThat(report.blunders()).isEmpty();
    assertThat(report.control().isAllControlled()).as(report.control().message()).isTrue();
  }

  @Test
  void theWantedLengthsAreThoseOfTheRegularFrame() {
    // Hand sum: square base of circumradius 3 m, apex 3.5 m: side 3 sqrt 2, hip sqrt(9 + 12.25).
    List<TapingRound.Stand> stands = TapingRound.of(shape(4, false)).stands();
    assertThat(stands).hasSize(2);
    assertThat(stands.get(0).readings().get(0).wanted()).isCloseTo(3 * Math.sqrt(2), within(1e-12));
    assertThat(stands.get(1).readings().get(0).wanted()).isCloseTo(Math.sqrt(21.25), within(1e-12));
    assertThat(stands.get(1).at()).contains(Node.APEX);
  }

  @Test
  void eachReadingIsTakenOnceAndTheLadderMovesAsLittleAsItsReachAllows() {
    TapingRound wide =
        TapingRound.of(SurveyShape.truncated(6).meant(new SurveyShape.Ideal(6, 6, 3)));
    // Corners 3 m apart: one stand for each, and the ground.
    assertThat(wide.stands()).hasSize(7);
    TapingRound narrow =
        TapingRound.of(SurveyShape.truncated(6).meant(new SurveyShape.Ideal(6, 6, 5.8)));
    // An opening of 0.2 m radius is within reach of one stand.
    assertThat(narrow.stands()).hasSize(2);
    Set<String> seen = new HashSet<>();
    wide.stands().stream()
        .flatMap(stand -> stand.readings().stream())
        .forEach(
            r ->
                assertThat(seen.add(r.quantity() + " " + r.from() + " " + r.to()))
                    .as("%s %s", r.from(), r.to())
                    .isTrue());
  }

  @Test
  void aShapeWithoutMeasuresIsRefused() {
    assertThatThrownBy(() -> TapingRound.of(SurveyShape.whole(5)))
        .isInstanceOf(ArgumentFault.class)
        .hasMessageContaining("states no measures");
  }
}
