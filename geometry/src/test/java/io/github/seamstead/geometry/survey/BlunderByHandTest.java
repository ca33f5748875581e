package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.tape.TapeClass;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Slips of tape and pen whose size is known, and tests whose limits are. */
class BlunderByHandTest {

  private static final Node B1 = Node.base(1);
  private static final Node B2 = Node.base(2);

  /** A square of 6 m across, 3.5 m high, as built. */
  private static final Adjustment SQUARE = TestFrames.survey(4, false, 0, 0, 1).adjust().orThrow();

  /** Reading and prediction are uncertain by 5 mm together, so that 15 mm still fit. */
  private static List<String> hints(Reading reading, double predicted) {
    return BlunderHints.of(reading.withUncertainty(0.004), new Uncertain(predicted, 0.003), SQUARE);
  }

  private static Reading tape(double metres, String asWritten) {
    return new Reading.Distance(B1, Node.APEX, metres, 0.004, asWritten);
  }

  private static List<String> hints(double read, double predicted) {
    return hints(tape(read, "a mark"), predicted);
  }

  @Test
  void wholeUnits() {
    assertThat(hints(8.1, 8.0)).containsExactly("read one decimetre (10 cm) too long");
    assertThat(hints(8.1, 8.2)).containsExactly("read one decimetre (10 cm) too short");
    assertThat(hints(8.1, 8.1 - 0.0149 - 0.1)).hasSize(1);
    assertThat(hints(8.1, 8.1 - 0.0151 - 0.1)).noneMatch(h -> h.contains("decimetre"));
    assertThat(hints(8.1, 7.6)).containsExactly("read 5 decimetres too long");
    assertThat(hints(8.1, 7.5)).noneMatch(h -> h.contains("decimetre"));
    assertThat(hints(8.1, 7.1)).containsExactly("read one metre too long");
    assertThat(hints(8.1, 6.1)).isEmpty();
    assertThat(hints(8.1, 8.1 + 3 * 0.3048)).containsExactly("read 3 feet too short");
    assertThat(hints(8.1, 8.1 + 4 * 0.3048)).isEmpty();
    assertThat(hints(8.1, 8.1 - 0.0508)).containsExactly("read 2 inches too long");
    assertThat(hints(8.1, 8.1 - 0.0762)).noneMatch(h -> h.contains("inch"));
    // An inch must stand well clear of the uncertainty: four times 7 mm are more.
    assertThat(
            BlunderHints.of(
                tape(8.1, "a mark").withUncertainty(0.007), new Uncertain(8.1 - 0.0254, 0), SQUARE))
        .isEmpty();
    assertThat(
            BlunderHints.of(
                tape(8.1, "a mark").withUncertainty(0.006), new Uncertain(8.1 - 0.0254, 0), SQUARE))
        .containsExactly("read one inch too long");
  }

  @Test
  void wrongUnitsAndSigns() {
    assertThat(hints(30, 30 * 0.3048)).containsExactly("feet booked as metres");
    assertThat(hints(3.3, 3.3 / 0.3048)).containsExactly("metres booked as feet");
    Reading rise = new Reading.HeightDifference(B1, B2, 0.35, 0.004, "a mark");
    assertThat(hints(rise, -0.35)).containsExactly("sign turned: probably the other way round");
    assertThat(hints(rise.withValue(0.3), 0.3 * 0.3048)).noneMatch(h -> h.contains("booked as"));
    Reading plumb = new Reading.PlumbOffset(Node.APEX, Node.CENTRE, B1, 0.35, 0.004, "a mark");
    assertThat(hints(plumb, -0.35)).containsExactly("sign turned: probably the other way round");
    assertThat(hints(tape(0.35, "a mark"), 0.0)).noneMatch(h -> h.contains("sign"));
  }

  @Test
  void digits() {
    assertThat(hints(tape(5.38, "5.38 m"), 5.83))
        .containsExactly("digits swapped: written 5.38 m, probably 5.83 m");
    assertThat(hints(tape(5.38, ""), 3.58).get(0))
        .isEqualTo("digits swapped: written 5.38 m, probably 3.58 m");
    // A tape correction of 3 mm is added to what was meant as well.
    assertThat(hints(tape(5.383, "5.38 m"), 5.833 + 0.0149)).hasSize(1);
    assertThat(hints(tape(5.383, "5.38 m"), 5.833 + 0.0151)).isEmpty();
    // The last digits swapped change less than what is uncertain anyhow.
    assertThat(hints(tape(5.321, "5.321 m"), 5.312)).isEmpty();
    assertThat(WrittenDigits.correction(tape(5.383, "5.38 m"))).isCloseTo(0.003, within(1e-12));
    assertThat(WrittenDigits.correction(tape(5.5, "5.38 m"))).as("other words").isZero();
    assertThat(WrittenDigits.correction(tape(5.38, ""))).isZero();
    assertThat(WrittenDigits.correction(tape(5.38, "by the gate"))).isZero();
    assertThat(WrittenDigits.textOf(tape(5.38, ""))).isEqualTo("5.38 m");
    assertThat(WrittenDigits.textOf(tape(5.3, ""))).isEqualTo("5.30 m");
    assertThat(WrittenDigits.textOf(tape(5.381, ""))).isEqualTo("5.381 m");
    assertThat(WrittenDigits.textOf(tape(5.381, "17 ft"))).isEqualTo("17 ft");
    assertThat(WrittenDigits.swaps("12.3 m").stream().map(WrittenDigits.Variant::text))
        .containsExactly("21.3 m", "13.2 m");
    assertThat(WrittenDigits.swaps("12,3 m")).as("a comma is never read").isEmpty();
    assertThat(WrittenDigits.swaps("3.33 m")).isEmpty();
    assertThat(WrittenDigits.decimalFeet("7.11 ft"))
        .singleElement()
        .satisfies(v -> assertThat(v.value()).isCloseTo(95 * 0.0254, within(1e-12)));
    assertThat(WrittenDigits.decimalFeet("7.12 ft")).as("twelve inches are a foot").isEmpty();
    assertThat(WrittenDigits.exchanged("12 ft 5 in")).isEmpty();
    assertThat(WrittenDigits.exchanged("11 ft 5 in")).hasSize(1);
    assertThat(hints(tape(2.2606, "7 ft 5 in"), 1.7018))
        .containsExactly("feet and inches exchanged: written 7 ft 5 in, probably 5 ft 7 in");
    assertThat(hints(tape(2.2606, "7 ft 5 in"), 2.286).get(0))
        .isEqualTo("tenths of a foot taken for inches: written 7 ft 5 in, probably 7.5 ft");
  }

  /** A hip of the square is 4.610 m, a side 4.243 m and a diagonal of the base 6 m. */
  @Test
  void otherNodes() {
    assertThat(hints(new Reading.Distance(B1, B2, 6, 0.004, "a mark"), 4.2426))
        .containsExactlyInAnyOrder(
            "wrong node: it fits B1-B3 (6.000 m)", "wrong node: it fits B4-B2 (6.000 m)");
    assertThat(hints(new Reading.Distance(B1, B2, 6 + 0.011, 0.004, "a mark"), 4.2426)).hasSize(2);
    assertThat(hints(new Reading.Distance(B1, B2, 6 + 0.02, 0.004, "a mark"), 4.2426)).isEmpty();
    assertThat(hints(new Reading.HeightDifference(B1, B2, 6, 0.004, "a mark"), 4.2426)).isEmpty();
    // What fits by chance comes after a slip of the tape, and never explains by itself.
    Reading side = new Reading.Distance(B1, B2, 6, 0.004, "a mark");
    assertThat(hints(side, 5.9))
        .hasSize(3)
        .startsWith("read one decimetre (10 cm) too long")
        .contains("wrong node: it fits B1-B3 (6.000 m)", "wrong node: it fits B4-B2 (6.000 m)");
    assertThat(BlunderHints.explain(side, new Uncertain(5.9, 0.003), SQUARE)).isTrue();
    assertThat(BlunderHints.explain(side, new Uncertain(4.2426, 0.003), SQUARE)).isFalse();
  }

  @Test
  void readingsKeepWhatIsNotChanged() {
    Node centre = Node.CENTRE;
    List<Reading> kinds =
        List.of(
            new Reading.Distance(B1, B2, 1, 0.1, "w"),
            new Reading.LevelDistance(B1, B2, 1, 0.1, "w"),
            new Reading.HeightDifference(B1, B2, 1, 0.1, "w"),
            new Reading.PlumbOffset(B1, centre, B2, 1, 0.1, "w"));
    List<String> names =
        List.of("B1-B2", "B1-B2 (level distance)", "B1-B2 (height)", "B1 plumbed at C towards B2");
    for (int i = 0; i < kinds.size(); i++) {
      Reading reading = kinds.get(i);
      assertThat(reading.name()).isEqualTo(names.get(i));
      Reading other = reading.withUncertainty(0.2);
      assertThat(other).hasSameClassAs(reading);
      assertThat(other.standardUncertainty()).isEqualTo(0.2);
      assertThat(other.withUncertainty(0.1)).isEqualTo(reading);
      Reading moved = reading.withValue(2);
      assertThat(moved).hasSameClassAs(reading);
      assertThat(moved.value()).isEqualTo(2);
      assertThat(moved.asWritten()).as("no longer what was written").isEmpty();
      assertThat(moved.nodes()).isEqualTo(reading.nodes());
      assertThat(moved.standardUncertainty()).isEqualTo(0.1);
    }
  }

  @Test
  void aTapesClassTellsItsUncertainty() {
    for (TapeClass tape : TapeClass.values()) {
      assertThat(Reading.distance(B1, B2, 5, tape))
          .isEqualTo(Reading.distance(B1, B2, 5, tape.readingUncertainty(5)));
    }
    assertThatThrownBy(() -> Reading.distance(B1, B2, 0, TapeClass.II))
        .hasMessageContaining("distance B1-B2");
  }

  @Test
  void readingsOutOfReasonAreRefused() {
    assertThatThrownBy(() -> new Reading.Distance(B1, B2, 100_001, 0.1, ""))
        .hasMessageContaining("distance B1-B2");
    assertThatThrownBy(() -> new Reading.LevelDistance(B1, B2, 0, 0.1, ""))
        .hasMessageContaining("level distance B1-B2");
    assertThatThrownBy(() -> new Reading.LevelDistance(B1, B1, 1, 0.1, ""))
        .hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Reading.LevelDistance(B1, B2, 1, 11, ""))
        .hasMessageContaining("standard uncertainty of B1-B2");
    assertThatThrownBy(() -> new Reading.HeightDifference(B1, B1, 1, 0.1, ""))
        .hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Reading.HeightDifference(B1, B2, -100_001, 0.1, ""))
        .hasMessageContaining("height difference B1-B2");
    assertThatThrownBy(() -> new Reading.HeightDifference(B1, B2, 1, 1e-7, ""))
        .hasMessageContaining("standard uncertainty of B1-B2");
    Node c = Node.CENTRE;
    assertThatThrownBy(() -> new Reading.PlumbOffset(B1, B1, B2, 1, 0.1, ""))
        .hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Reading.PlumbOffset(B1, c, B1, 1, 0.1, ""))
        .hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Reading.PlumbOffset(B1, c, c, 1, 0.1, ""))
        .hasMessageContaining("two different nodes");
    assertThatThrownBy(() -> new Reading.PlumbOffset(B1, c, B2, 100_001, 0.1, ""))
        .hasMessageContaining("plumb offset of B1");
    assertThatThrownBy(() -> new Reading.PlumbOffset(B1, c, B2, 1, 11, ""))
        .hasMessageContaining("standard uncertainty of plumb offset of B1");
  }

  @Test
  void verdictsOfTheGlobalTest() {
    // Chi-squared of 10 degrees of freedom lies within 3.247 and 20.483 nineteen times of twenty.
    assertThat(new GlobalTest(10, 20.5, 2.05, 3.247, 20.483).verdict())
        .isEqualTo(GlobalTest.Verdict.TOO_LARGE);
    assertThat(new GlobalTest(10, 20.4, 2.04, 3.247, 20.483).verdict())
        .isEqualTo(GlobalTest.Verdict.AS_EXPECTED);
    assertThat(new GlobalTest(10, 3.2, 0.32, 3.247, 20.483).verdict())
        .isEqualTo(GlobalTest.Verdict.TOO_SMALL);
  }

  /** Magnified to the round step below a tenth of 3.5 m over the greatest residual. */
  @Test
  void magnificationsAreRound() {
    double[][] cases = {
      {0.01, 20},
      {0.0069, 50},
      {0.0071, 20},
      {0.017, 20},
      {0.018, 10},
      {0.034, 10},
      {0.036, 5},
      {0.4, 1},
      {0.2, 1},
      {3e-9, 1},
      {0, 1}
    };
    for (double[] one : cases) {
      ResidualPlot plot = new ResidualPlot(List.of(), List.of(), one[0], 0, 3.5);
      assertThat(plot.residualMagnification()).as("%s m", one[0]).isEqualTo(one[1]);
      assertThat(plot.deviationMagnification()).isEqualTo(1);
      assertThat(new ResidualPlot(List.of(), List.of(), 0, one[0], 3.5).deviationMagnification())
          .isEqualTo(one[1]);
    }
  }

  @Test
  void theWorkOfASearch() {
    SearchTerms terms = new SearchTerms(new Cancellation());
    Survey small = TestFrames.survey(8, false, 0.02, 0.002, 1);
    // 40 readings and 30 unknowns: 36 000 units each, of 2e10.
    assertThat(small.readings()).hasSize(40);
    assertThat(small.nodes()).hasSize(10);
    assertThat(terms.tried(small, 6)).isEqualTo(6);
    assertThat(terms.isSpent()).isFalse();
    Survey large = many(small, 20_000);
    // 18 million units each: a twentieth of all is affordable 55 times, so the usual are tried.
    assertThat(terms.tried(large, 100)).isEqualTo(55);
    for (int i = 0; i < 1111; i++) {
      terms.adjusts(large);
    }
    assertThat(terms.isSpent()).isFalse();
    terms.adjusts(large);
    assertThat(terms.isSpent()).isTrue();
  }

  private static Survey many(Survey survey, int count) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      readings.add(survey.readings().get(i % survey.readings().size()));
    }
    return Survey.of(survey.shape(), readings);
  }

  /** Of readings off by 1, 2, 3 cm and one by 60 cm that one is gross, and alone so. */
  @Test
  void whatIsGrosslyOffTheRegularFrame() {
    Map<Node, Vector3D> regular = TestFrames.bent(6, false, 3, 4, 0, 1);
    List<Reading> readings =
        new ArrayList<>(TestFrames.readings(regular, 6, false, 0, 1)).subList(0, 24);
    RegularEvidence none = new RegularEvidence(Survey.of(SurveyShape.whole(6), readings));
    assertThat(none.gross(List.of(0, 1, 2))).isEmpty();
    // Nothing is bent by less than three reading uncertainties of 1 mm.
    assertThat(none.standInUncertainty()).isCloseTo(0.003, within(1e-9));
    Reading one = readings.get(1);
    readings.set(1, one.withValue(one.value() + 0.6));
    RegularEvidence evidence = new RegularEvidence(Survey.of(SurveyShape.whole(6), readings));
    assertThat(evidence.ratio(1)).isCloseTo(200, within(1e-6));
    assertThat(evidence.regular(1, readings.get(1))).isCloseTo(one.value(), within(1e-9));
    assertThat(evidence.gross(List.of(0, 1, 2))).contains(1);
    assertThat(evidence.gross(List.of(1))).contains(1);
    assertThat(evidence.gross(List.of(0, 2))).isEmpty();
    Reading other = readings.get(4);
    readings.set(4, other.withValue(other.value() - 0.301));
    RegularEvidence two = new RegularEvidence(Survey.of(SurveyShape.whole(6), readings));
    assertThat(two.gross(List.of(1, 4)))
        .as("twice as far is not alone")
        .isEqualTo(Optional.empty());
    readings.set(4, other.withValue(other.value() - 0.299));
    assertThat(new RegularEvidence(Survey.of(SurveyShape.whole(6), readings)).gross(List.of(1, 4)))
        .contains(1);
  }
}
