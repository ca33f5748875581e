package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class BlunderSearchTest {

  private final Map<Node, Vector3D> frame = TestFrames.bent(8, false, 3, 3.5, 0.05, 11);
  private final List<Reading> readings =
      new ArrayList<>(TestFrames.readings(frame, 8, false, 0.002, 11));

  private BlunderReport search() {
    return Survey.of(SurveyShape.whole(8), readings).findBlunders();
  }

  private int indexOf(String name) {
    for (int i = 0; i < readings.size(); i++) {
      if (readings.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new AssertionError(name);
  }

  private Blunder only(BlunderReport report) {
    assertThat(report.blunders()).hasSize(1);
    assertThat(report.undecided()).isFalse();
    return report.blunders().get(0);
  }

  private void book(String name, double metres, String asWritten) {
    int i = indexOf(name);
    Node a = readings.get(i).nodes().get(0);
    Node b = readings.get(i).nodes().get(1);
    readings.set(i, new Reading.Distance(a, b, metres, 0.002, asWritten));
  }

  @Test
  void soundReadingsHaveNone() {
    BlunderReport report = search();
    assertThat(report.blunders()).isEmpty();
    assertThat(report.accepted()).isSameAs(report.first());
  }

  @Test
  void swappedDigitsAreExplained() {
    double exact = frame.get(Node.base(2)).distance(frame.get(Node.APEX));
    long centimetres = Math.round(exact * 100);
    String right = io.github.seamstead.shared.quantity.Numbers.fixed(centimetres / 100.0, 2);
    StringBuilder wrong = new StringBuilder(right);
    wrong.setCharAt(2, right.charAt(3));
    wrong.setCharAt(3, right.charAt(2));
    assertThat(wrong.toString()).isNotEqualTo(right);
    book("B2-A", Double.parseDouble(wrong.toString()), wrong + " m");
    Blunder blunder = only(search());
    assertThat(blunder.reading().name()).isEqualTo("B2-A");
    assertThat(blunder.predicted().value()).isCloseTo(exact, within(0.01));
    // Centimetres only: the swap is offered if rounding stays within three uncertainties.
    if (Math.abs(centimetres / 100.0 - blunder.predicted().value()) < 0.006) {
      assertThat(blunder.hints().get(0)).contains("digits swapped").contains(right + " m");
    }
  }

  @Test
  void swappedDigitsInFeetAndInches() {
    // 4.4196 m = 14 ft 6 in; booked as 41 ft 6 in.
    assertThat(WrittenDigits.swaps("41 ft 6 in"))
        .anySatisfy(v -> assertThat(v.value()).isCloseTo(4.4196, within(1e-9)));
    assertThat(WrittenDigits.swaps("5.38 m").stream().map(WrittenDigits.Variant::text))
        .containsExactly("3.58 m", "5.83 m");
    assertThat(WrittenDigits.swaps("10.496 m").stream().map(WrittenDigits.Variant::text))
        .noneMatch(text -> text.startsWith("0"));
    assertThat(WrittenDigits.swaps("about the width of the gate 12")).isEmpty();
  }

  @Test
  void exchangedFeetAndInchesAreExplained() {
    assertMeans(WrittenDigits.exchanged("7 ft 5 in"), "5 ft 7 in", 67 * 0.0254);
    assertMeans(WrittenDigits.exchanged("7' 5 1/2\""), "5' 7 1/2\"", 67.5 * 0.0254);
    // 14 in would be written 1 ft 2 in; a length without inches has nothing to exchange.
    assertThat(WrittenDigits.exchanged("14 ft 5 in")).isEmpty();
    assertThat(WrittenDigits.exchanged("7 ft")).isEmpty();
    assertThat(WrittenDigits.exchanged("7.05 m")).isEmpty();
    bookInches(
        (feet, inches) -> inches + " ft " + feet + " in",
        (feet, inches) -> (12 * inches + feet) * 0.0254);
    assertThat(only(search()).hints().get(0)).startsWith("feet and inches exchanged: written ");
  }

  @Test
  void tenthsOfAFootTakenForInchesAreExplained() {
    assertMeans(WrittenDigits.decimalFeet("7 ft 5 in"), "7.5 ft", 7.5 * 0.3048);
    assertMeans(WrittenDigits.decimalFeet("7.05 ft"), "7 ft 5 in", 89 * 0.0254);
    assertThat(WrittenDigits.decimalFeet("7.5 m")).isEmpty();
    bookInches(
        (feet, inches) -> feet + "." + inches + " ft",
        (feet, inches) -> Double.parseDouble(feet + "." + inches) * 0.3048);
    assertThat(only(search()).hints())
        .anyMatch(h -> h.startsWith("tenths of a foot taken for inches: written "));
  }

  private static void assertMeans(List<WrittenDigits.Variant> variants, String text, double value) {
    assertThat(variants).extracting(WrittenDigits.Variant::text).containsExactly(text);
    assertThat(variants.get(0).value()).isCloseTo(value, within(1e-12));
  }

  /** Books a reading near a whole inch wrongly: the first whose slip would be large. */
  private void bookInches(
      BiFunction<Long, Long, String> text, BiFunction<Long, Long, Double> metres) {
    for (Reading reading : List.copyOf(readings)) {
      long inches = Math.round(reading.value() / 0.0254);
      double off = Math.abs(inches * 0.0254 - reading.value());
      if (!(reading instanceof Reading.Distance) || inches % 12 == 0 || off > 0.002) {
        continue;
      }
      double wrong = metres.apply(inches / 12, inches % 12);
      if (Math.abs(wrong - reading.value()) > 0.02) {
        book(reading.name(), wrong, text.apply(inches / 12, inches % 12));
        return;
      }
    }
    throw new AssertionError("no reading near a whole inch");
  }

  @Test
  void aWholeDecimetreIsExplained() {
    double exact = frame.get(Node.base(3)).distance(frame.get(Node.base(4)));
    book("B3-B4", exact + 0.1, "");
    Blunder blunder = only(search());
    assertThat(blunder.reading().name()).isEqualTo("B3-B4");
    assertThat(blunder.error()).isCloseTo(0.1, within(0.01));
    assertThat(String.join("; ", blunder.hints())).contains("one decimetre (10 cm) too long");
  }

  @Test
  void aWholeFootIsExplained() {
    double exact = frame.get(Node.base(3)).distance(frame.get(Node.base(4)));
    book("B3-B4", exact - 0.3048, "");
    assertThat(String.join("; ", only(search()).hints())).contains("one foot too short");
  }

  @Test
  void aWrongNodeIsExplained() {
    double other = frame.get(Node.base(3)).distance(frame.get(Node.base(5)));
    book("B3-B4", other, "");
    Blunder blunder = only(search());
    assertThat(blunder.reading().name()).isEqualTo("B3-B4");
    assertThat(String.join("; ", blunder.hints())).contains("wrong node");
  }

  @Test
  void feetBookedAsMetresAreExplained() {
    double exact = frame.get(Node.base(3)).distance(frame.get(Node.base(4)));
    book("B3-B4", exact / 0.3048, "");
    Blunder blunder = only(search());
    assertThat(blunder.reading().name()).isEqualTo("B3-B4");
    assertThat(String.join("; ", blunder.hints())).contains("feet booked as metres");
  }

  @Test
  void aTurnedSignIsExplained() {
    int i = indexOf("B1-B5 (height)");
    double rise = frame.get(Node.base(5)).getZ() - frame.get(Node.base(1)).getZ();
    assertThat(Math.abs(rise)).isGreaterThan(0.015);
    readings.set(i, new Reading.HeightDifference(Node.base(1), Node.base(5), -rise, 0.002, ""));
    // Seen from the other readings, a wrong hip would look the same: the report names both.
    BlunderReport report = search();
    assertThat(report.undecided()).isTrue();
    assertThat(report.blunders()).hasSize(1);
    Blunder blunder = report.blunders().get(0);
    assertThat(blunder.cause()).isEqualTo(Blunder.Cause.RIVAL);
    assertThat(blunder.reading().name()).isEqualTo("B5-A");
    assertThat(blunder.alsoPossible()).hasSize(1);
    Blunder.Alternative other = blunder.alsoPossible().get(0);
    assertThat(other.reading().name()).isEqualTo("B1-B5 (height)");
    assertThat(other.number()).isEqualTo(i + 1);
    assertThat(String.join("; ", other.hints())).contains("sign turned");
    // Neither is believed: the hip is as uncertain as either error would make it.
    Uncertain hip = report.accepted().distance(Node.base(5), Node.APEX);
    double exact = frame.get(Node.base(5)).distance(frame.get(Node.APEX));
    assertThat(hip.standardUncertainty()).isGreaterThan(0.01);
    assertThat(hip.value()).isCloseTo(exact, within(3 * hip.standardUncertainty()));
  }

  /** Hip and level cannot be told apart; of the two only the level has a slip that explains it. */
  @Test
  void ofTwoThatCannotBeToldApartTheOneWithASlipIsNamed() {
    int i = indexOf("B1-B5 (height)");
    double rise = frame.get(Node.base(5)).getZ() - frame.get(Node.base(1)).getZ();
    readings.set(
        i, new Reading.HeightDifference(Node.base(1), Node.base(5), rise + 0.1, 0.002, ""));
    BlunderReport report = search();
    assertThat(report.undecided()).isTrue();
    Blunder blunder = report.blunders().get(0);
    assertThat(blunder.cause()).isEqualTo(Blunder.Cause.RIVAL);
    assertThat(blunder.reading().name()).isEqualTo("B1-B5 (height)");
    assertThat(String.join("; ", blunder.hints())).contains("one decimetre (10 cm) too long");
    assertThat(blunder.alsoPossible()).extracting(o -> o.reading().name()).contains("B5-A");
    Uncertain hip = report.accepted().distance(Node.base(5), Node.APEX);
    double exact = frame.get(Node.base(5)).distance(frame.get(Node.APEX));
    assertThat(hip.standardUncertainty()).isGreaterThan(0.03);
    assertThat(hip.value()).isCloseTo(exact, within(2 * hip.standardUncertainty()));
  }

  @Test
  void twoBlundersAreBothNamed() {
    book("B3-B4", frame.get(Node.base(3)).distance(frame.get(Node.base(4))) + 0.06, "");
    book("B7-A", frame.get(Node.base(7)).distance(frame.get(Node.APEX)) - 0.09, "");
    BlunderReport report = search();
    assertThat(report.blunders().stream().map(b -> b.reading().name()))
        .containsExactlyInAnyOrder("B3-B4", "B7-A");
    assertThat(report.first().globalTest().orElseThrow().verdict())
        .isEqualTo(GlobalTest.Verdict.TOO_LARGE);
    assertThat(report.accepted().globalTest().orElseThrow().verdict())
        .isNotEqualTo(GlobalTest.Verdict.TOO_LARGE);
    assertThat(report.accepted().readings()).hasSize(readings.size() - 2);
  }

  @Test
  void withEstimatedSigmaTheTauTestIsUsed() {
    book("B3-B4", frame.get(Node.base(3)).distance(frame.get(Node.base(4))) + 0.06, "");
    Survey survey = new Survey(SurveyShape.whole(8), readings, SigmaBasis.ESTIMATED);
    BlunderReport report = survey.findBlunders();
    assertThat(report.first().outlierTest().kind()).isEqualTo(OutlierTest.Kind.TAU);
    assertThat(report.first().uncertaintyScale()).isGreaterThan(1);
    assertThat(report.blunders().get(0).reading().name()).isEqualTo("B3-B4");
    // Estimated from the same residuals, no standardised residual exceeds the root of nu.
    double bound = Math.sqrt(report.first().degreesOfFreedom());
    assertThat(report.first().readings())
        .allSatisfy(
            r -> assertThat(Math.abs(r.statistic().orElse(0.0))).isLessThanOrEqualTo(bound + 1e-9));
  }

  @Test
  void missingReadingsAreNamedFirst() {
    Survey survey = Survey.of(SurveyShape.whole(8), readings.subList(0, 12));
    assertThatThrownBy(survey::findBlunders).hasMessageContaining("needed to fix");
  }
}
