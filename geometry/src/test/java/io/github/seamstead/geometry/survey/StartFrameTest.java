package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.TapingRound.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What few readings say of a regular frame, and the round of a frame, by right triangles. */
class StartFrameTest {

  private static final double U = 0.002;
  private static final SurveyShape SQUARE = SurveyShape.whole(4);
  private static final SurveyShape CUT = SurveyShape.truncated(4);

  private static Reading tape(String from, String to, double metres) {
    return Reading.distance(Node.parse(from), Node.parse(to), metres, U);
  }

  private static Reading level(String from, String to, double metres) {
    return new Reading.LevelDistance(Node.parse(from), Node.parse(to), metres, U, "");
  }

  private static Reading rise(String from, String to, double metres) {
    return new Reading.HeightDifference(Node.parse(from), Node.parse(to), metres, U, "");
  }

  private static void assertAt(StartFrame frame, String node, double x, double y, double z) {
    assertThat(frame.place(Node.parse(node)))
        .as(node)
        .containsExactly(new double[] {x, y, z}, within(1e-9));
  }

  /** Radius of the base and height of the apex. */
  private static void assertWhole(double radius, double height, Reading... readings) {
    StartFrame frame = StartFrame.of(SQUARE, List.of(readings));
    assertAt(frame, "B4", radius, 0, 0);
    assertAt(frame, "B1", 0, radius, 0);
    assertAt(frame, "A", 0, 0, height);
    assertAt(frame, "C", 0, 0, 0);
  }

  /** Radius and height of the opening over a base of 3 m. */
  private static void assertCut(double radius, double height, Reading... more) {
    List<Reading> readings = new ArrayList<>(List.of(tape("B1", "B3", 6)));
    readings.addAll(Arrays.asList(more));
    StartFrame frame = StartFrame.of(CUT, readings);
    assertAt(frame, "B1", 0, 3, 0);
    assertAt(frame, "T1", 0, radius, height);
    assertAt(frame, "T4", radius, 0, height);
  }

  @Test
  void whatWasMeantIsTaken() {
    StartFrame frame = StartFrame.of(CUT.meant(new SurveyShape.Ideal(3, 4, 1)), List.of());
    assertAt(frame, "B4", 3, 0, 0);
    assertAt(frame, "B2", -3, 0, 0);
    // A quarter of the way up, three quarters of the radius.
    assertAt(frame, "T1", 0, 2.25, 1);
    assertAt(frame, "A", 0, 0, 4);
  }

  @Test
  void theBaseFromItsChords() {
    double side = 3 * Math.sqrt(2);
    assertWhole(3, 3, tape("B1", "B2", side));
    assertWhole(3, 3, tape("B4", "B1", side));
    assertWhole(3, 3, tape("B1", "B3", 6));
    assertWhole(3, 3, level("B1", "B3", 6));
    assertWhole(3, 3, tape("B2", "C", 3));
    assertWhole(3, 3, tape("C", "B2", 3));
    assertWhole(3, 3, level("B2", "C", 3));
    assertWhole(3, 3, level("A", "B2", 3));
    // The middle of an odd number, the mean of the middle two of an even one.
    assertWhole(3, 3, tape("B1", "B3", 6), tape("B2", "C", 9), tape("B1", "C", 1));
    assertWhole(4, 4, tape("B1", "B3", 6), tape("B2", "C", 5));
    assertWhole(
        4, 4, tape("B1", "B3", 6), tape("B2", "C", 5), tape("B3", "C", 1), tape("B1", "C", 9));
  }

  @Test
  void theBaseAndTheApexFromHips() {
    // A 3-4-5 triangle, by hip and height or by base and hip.
    assertWhole(3, 4, tape("B1", "A", 5), rise("B1", "A", 4));
    assertWhole(3, 4, tape("A", "B1", 5), rise("A", "B1", -4));
    assertWhole(3, 4, tape("B1", "A", 5), tape("B1", "B3", 6));
    assertWhole(3, 4, tape("B1", "A", 5), rise("C", "A", 4));
    assertWhole(3, 4, tape("C", "A", 4), tape("B1", "B3", 6));
    assertWhole(3, 4, tape("B1", "A", 5), tape("C", "A", 4));
    // A hip alone: half as high as it is long.
    assertWhole(5 * Math.sqrt(0.75), 2.5, tape("B1", "A", 5));
    // Height 6 and 4: the mean of what both say.
    assertWhole(3, 5, rise("B1", "A", 6), tape("B2", "A", 5), tape("B1", "B3", 6));
    // A hip shorter than the height keeps a tenth of itself.
    assertWhole(0.5, 6, tape("B1", "A", 5), rise("B1", "A", 6), rise("B2", "A", 6));
    // A level distance to the apex says nothing of its height, a level of the base neither.
    assertWhole(3, 3, level("A", "C", 0.1), tape("B1", "B3", 6));
    assertWhole(3, 3, rise("B1", "B3", 2), tape("B1", "B3", 6));
  }

  @Test
  void withoutAnyMeasureTheMeanOfTheReadingsIsTaken() {
    assertWhole(0.4, 0.4, rise("B1", "B2", 0.3), rise("B1", "B3", -0.5));
    assertWhole(0.001, 0.001, rise("B1", "B2", 0));
    assertWhole(1, 1);
  }

  @Test
  void theOpening() {
    // Nothing said: a quarter of the base, half of it high.
    assertCut(0.75, 1.5);
    assertCut(1, 1.5, tape("T1", "T2", Math.sqrt(2)));
    assertCut(1, 1.5, tape("T1", "T3", 2));
    assertCut(1, 1.5, level("T1", "C", 1));
    // A taped line from the mark slopes and is no radius.
    assertCut(0.75, Math.sqrt(25 - 0.5625), tape("T1", "C", 5));
    assertCut(0.75, 2, rise("B1", "T1", 2));
    assertCut(0.75, 2, rise("T2", "C", -2));
    // Poles of 2 m up and 2 m in; from the mark 2 up and 1 out: 8 = 9 + 5 - 2 · 3 · 1.
    double pole = Math.sqrt(8);
    double centre = Math.sqrt(5);
    assertCut(1, 2, tape("T1", "B1", pole), tape("T1", "C", centre));
    assertCut(1, 2, tape("B1", "T1", pole), tape("T1", "T3", 2));
    // Across a face: 3 out, 1 out at a right angle, 2 up.
    assertCut(1, 2, tape("B1", "T2", Math.sqrt(14)), tape("T1", "T3", 2));
    // Straight across the frame: 4 level, 2 up.
    assertCut(1, 2, tape("T3", "B1", Math.sqrt(20)), tape("T1", "T3", 2));
    // The same with an opening of half the base: 4.5 level.
    assertCut(1.5, 2, tape("T3", "B1", Math.sqrt(24.25)), tape("T1", "T3", 3));
    // A line from the mark that contradicts the pole leaves a twentieth of the base.
    double leg = Math.sqrt(36 - 2.85 * 2.85);
    double other = Math.sqrt(4 - 0.15 * 0.15);
    assertCut(0.15, (leg + other) / 2, tape("T1", "B1", 6), tape("T1", "C", 2));
  }

  private static String all(TapingRound.Stand stand) {
    StringBuilder text = new StringBuilder();
    stand
        .readings()
        .forEach(
            r ->
                text.append(r.quantity() == Quantity.RISE ? "rise " : "")
                    .append(r.from())
                    .append('-')
                    .append(r.to())
                    .append(' '));
    return text.toString().strip();
  }

  private static List<TapingRound.Stand> stands(SurveyShape shape, double top) {
    return TapingRound.of(shape.meant(new SurveyShape.Ideal(3, 4, top))).stands();
  }

  @Test
  void theRoundOfAWholeFrame() {
    assertThat(stands(SQUARE, 0).stream().map(StartFrameTest::all))
        .containsExactly(
            "B1-B2 B2-B3 B3-B4 B4-B1 B1-B3 B2-B4 rise B1-B2 rise B1-B3 rise B1-B4",
            "B1-A B2-A B3-A B4-A rise B1-A rise B3-A");
    assertThat(all(stands(SurveyShape.whole(3), 0).get(0)))
        .isEqualTo("B1-B2 B2-B3 B3-B1 B2-B1 B3-B2 B1-B3 rise B1-B2 rise B1-B3");
    assertThat(all(stands(SurveyShape.whole(6), 0).get(0)))
        .isEqualTo(
            "B1-B2 B2-B3 B3-B4 B4-B5 B5-B6 B6-B1 B1-B4 B2-B5 B3-B6"
                + " B1-B3 B2-B4 B3-B5 B4-B6 B5-B1 B6-B2"
                + " rise B1-B2 rise B1-B3 rise B1-B4 rise B1-B5 rise B1-B6");
    // The chords of a pentagon lie across it as well as past one corner: each is read once.
    assertThat(all(stands(SurveyShape.whole(5), 0).get(0)))
        .isEqualTo(
            "B1-B2 B2-B3 B3-B4 B4-B5 B5-B1 B1-B3 B2-B4 B3-B5 B4-B1 B5-B2"
                + " rise B1-B2 rise B1-B3 rise B1-B4 rise B1-B5");
    List<TapingRound.Wanted> top = stands(SQUARE, 0).get(1).readings();
    assertThat(top.get(0).wanted()).isCloseTo(5, within(1e-12));
    assertThat(top.get(4).wanted()).isCloseTo(4, within(1e-12));
    assertThat(top.get(4).reading(4.01, U))
        .isEqualTo(new Reading.HeightDifference(Node.base(1), Node.APEX, 4.01, U, "4.01 m"));
    assertThat(top.get(0).reading(5.01, U))
        .isEqualTo(new Reading.Distance(Node.base(1), Node.APEX, 5.01, U, "5.01 m"));
  }

  @Test
  void theRoundOfACutFrame() {
    // An opening of 0.75 m radius: 1.06 m from corner to corner, 1.5 m across.
    List<TapingRound.Stand> stands = stands(CUT, 3);
    assertThat(stands.stream().skip(1).map(StartFrameTest::all))
        .containsExactly(
            "B1-T1 B4-T1 B2-T1 T1-T2 T1-T3 rise B1-T1"
                + " B2-T2 B1-T2 B3-T2 T2-T3 T2-T4 rise B1-T2",
            "B3-T3 B2-T3 B4-T3 T3-T4 rise B1-T3 B4-T4 B3-T4 B1-T4 T4-T1 rise B1-T4");
    assertThat(stands.get(1).at()).contains(Node.opening(1));
    assertThat(stands.get(2).at()).contains(Node.opening(3));
    List<TapingRound.Wanted> first = stands.get(1).readings();
    // 2.25 in and 3 up is 3.75; the diagonal 3 and 0.75 at a right angle and 3 up.
    assertThat(first.get(0).wanted()).isCloseTo(3.75, within(1e-12));
    assertThat(first.get(1).wanted()).isCloseTo(Math.sqrt(9 + 0.5625 + 9), within(1e-12));
    assertThat(first.get(5).wanted()).isCloseTo(3, within(1e-12));
    // Three levels on six corners, at each second one.
    assertThat(
            stands(SurveyShape.truncated(6), 3.9).stream()
                .skip(1)
                .flatMap(s -> s.readings().stream())
                .filter(r -> r.quantity() == Quantity.RISE)
                .map(r -> r.to().name()))
        .containsExactly("T1", "T3", "T5");
    assertThat(
            stands(SurveyShape.truncated(9), 3.9).stream()
                .skip(1)
                .flatMap(s -> s.readings().stream())
                .filter(r -> r.quantity() == Quantity.RISE)
                .map(r -> r.to().name()))
        .containsExactly("T1", "T4", "T7");
  }

  @Test
  void linesOfPanels() {
    assertThat(CUT.panelEdges().stream().map(SurveyShape.PanelEdge::name))
        .containsExactly(
            "B4-B1", "B1-B2", "B2-B3", "B3-B4", "B1-T1", "B2-T2", "B3-T3", "B4-T4", "T4-T1",
            "T1-T2", "T2-T3", "T3-T4");
    assertThat(SurveyShape.whole(3).panelEdges().stream().map(SurveyShape.PanelEdge::name))
        .containsExactly("B3-B1", "B1-B2", "B2-B3", "B1-A", "B2-A", "B3-A");
    assertThat(SQUARE.panelNodes()).hasSize(5).endsWith(Node.APEX);
    assertThat(CUT.panelNodes()).hasSize(8).endsWith(Node.opening(4));
    assertThat(CUT.baseCorner(0)).isEqualTo(Node.base(4));
    assertThat(CUT.baseCorner(5)).isEqualTo(Node.base(1));
    assertThat(CUT.hipTop(5)).isEqualTo(Node.opening(1));
    assertThat(SQUARE.hipTop(5)).isEqualTo(Node.APEX);
  }

  @Test
  void namesOfNodes() {
    assertThat(Node.parse("T 3")).isEqualTo(Node.opening(3));
    assertThat(Node.parse("a")).isEqualTo(Node.APEX);
    assertThat(Node.parse("c")).isEqualTo(Node.CENTRE);
    assertThat(Node.parse("CENTRE")).isEqualTo(Node.CENTRE);
    for (String bad : List.of("A1", "APEX2", "C3", "B", "T", "X2", "", "B0", "B65")) {
      assertThatThrownBy(() -> Node.parse(bad)).isInstanceOf(IllegalArgumentException.class);
    }
    assertThat(Node.base(64).name()).isEqualTo("B64");
    assertThat(Node.APEX.name()).isEqualTo("A");
    assertThat(Node.base(2)).isLessThan(Node.base(10)).isLessThan(Node.opening(1));
    assertThat(Node.CENTRE).isGreaterThan(Node.APEX);
    assertThatThrownBy(() -> new Node(Node.Kind.APEX, 1)).hasMessageContaining("number of A");
  }
}
