package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Readings set aside and taken back, twins of an apex, and what a drawing of residuals shows. */
class SearchByHandTest {

  private static final Survey SURVEY = TestFrames.survey(6, false, 0.02, 0.002, 3);

  private static AcceptedReadings all(Survey survey) {
    return new AcceptedReadings(survey, new SearchTerms(new Cancellation()));
  }

  @Test
  void readingsSetAsideAndTakenBack() {
    AcceptedReadings all = all(SURVEY);
    int count = SURVEY.readings().size();
    assertThat(all.indices()).isEqualTo(IntStream.range(0, count).boxed().toList());
    AcceptedReadings without = all.without(3);
    assertThat(without.indices()).hasSize(count - 1).doesNotContain(3);
    assertThat(all.indices()).as("left as it was").hasSize(count);
    Adjustment fewer = without.adjust().orElseThrow();
    assertThat(fewer.readings()).hasSize(count - 1);
    assertThat(without.indexOf(fewer.readings().get(2))).isEqualTo(2);
    assertThat(without.indexOf(fewer.readings().get(3))).isEqualTo(4);
    assertThat(without.isRead(fewer.readings().get(count - 2))).isTrue();
    assertThat(without.with(3).indices()).isEqualTo(all.indices());
    assertThat(without.isStoodInFor(3)).isFalse();
  }

  @Test
  void theRegularFrameStandsInForAReading() {
    RegularEvidence evidence = new RegularEvidence(SURVEY);
    int count = SURVEY.readings().size();
    AcceptedReadings stoodIn = all(SURVEY).standIn(3, evidence);
    assertThat(stoodIn.isStoodInFor(3)).isTrue();
    assertThat(stoodIn.isStoodInFor(4)).isFalse();
    Adjustment adjusted = stoodIn.adjust().orElseThrow();
    assertThat(adjusted.readings()).hasSize(count);
    ReadingResult last = adjusted.readings().get(count - 1);
    Reading reading = SURVEY.readings().get(3);
    assertThat(last.reading().nodes()).isEqualTo(reading.nodes());
    assertThat(last.reading().value()).isEqualTo(evidence.regular(3, reading));
    assertThat(last.reading().standardUncertainty())
        .isEqualTo(evidence.standInUncertainty())
        .isGreaterThan(reading.standardUncertainty());
    assertThat(stoodIn.isRead(last)).isFalse();
    assertThat(stoodIn.isRead(adjusted.readings().get(count - 2))).isTrue();
    AcceptedReadings back = stoodIn.with(3);
    assertThat(back.isStoodInFor(3)).isFalse();
    assertThat(back.adjust().orElseThrow().weightedSquares())
        .isCloseTo(SURVEY.adjust().orThrow().weightedSquares(), within(1e-9));
  }

  @Test
  void aWidenedReadingIsBelievedLess() {
    AcceptedReadings widened = all(SURVEY).widened(3, 0.05).widened(3, 0.01);
    List<ReadingResult> results = widened.adjust().orElseThrow().readings();
    assertThat(results.get(3).reading().standardUncertainty()).isEqualTo(0.05);
    assertThat(results.get(2).reading().standardUncertainty()).isEqualTo(0.002);
    assertThat(results.get(3).redundancy()).isGreaterThan(0.99);
  }

  @Test
  void theWorstIsTheOneThatIsTestedWorst() {
    assertThat(all(SURVEY).worst(SURVEY.adjust().orThrow())).isEmpty();
    List<Reading> readings = new ArrayList<>(SURVEY.readings());
    readings.set(7, readings.get(7).withValue(readings.get(7).value() + 0.03));
    readings.set(11, readings.get(11).withValue(readings.get(11).value() - 0.06));
    Survey off = Survey.of(SURVEY.shape(), readings);
    Adjustment adjusted = off.adjust().orThrow();
    ReadingResult worst = all(off).worst(adjusted).orElseThrow();
    assertThat(worst.suspect()).isTrue();
    for (ReadingResult result : adjusted.readings()) {
      assertThat(Math.abs(result.statistic().orElse(0.0)))
          .isLessThanOrEqualTo(Math.abs(worst.statistic().orElseThrow()));
    }
    BlunderReport report = off.findBlunders();
    assertThat(report.blunders()).extracting(Blunder::number).contains(12);
    Blunder found =
        report.blunders().stream().filter(b -> b.number() == 12).findFirst().orElseThrow();
    assertThat(found.error()).isCloseTo(-0.06, within(0.01));
    assertThat(found.critical()).isCloseTo(3.2905, within(1e-4));
    assertThat(Math.abs(found.statistic())).isGreaterThan(found.critical());
    assertThat(report.control().spareReadings()).isEqualTo(report.accepted().degreesOfFreedom());
    assertThat(report.control(new Cancellation())).isEqualTo(report.control());
  }

  /** Eight of 24 readings off by 15 mm: the root mean square of all, 8.66 mm. */
  @Test
  void whatStandsInIsAsUncertainAsFramesAreBent() {
    Map<Node, Vector3D> regular = TestFrames.bent(6, false, 3, 4, 0, 1);
    List<Reading> readings =
        new ArrayList<>(TestFrames.readings(regular, 6, false, 0, 1)).subList(0, 24);
    // Sides, hips, spokes and chords in turn; two of each.
    for (int i = 0; i < 8; i++) {
      Reading one = readings.get(i);
      readings.set(i, one.withValue(one.value() + (i < 4 ? 0.015 : -0.015)));
    }
    RegularEvidence evidence = new RegularEvidence(Survey.of(SurveyShape.whole(6), readings));
    assertThat(evidence.ratio(0)).isCloseTo(5, within(1e-6));
    assertThat(evidence.ratio(9)).isCloseTo(0, within(1e-6));
    assertThat(evidence.standInUncertainty()).isCloseTo(0.015 * Math.sqrt(8 / 24.0), within(1e-9));
    // Six bends of 3 mm are the limit: what is grossly off tells nothing of the others.
    Reading gross = readings.get(12);
    readings.set(12, gross.withValue(gross.value() + 0.0181));
    assertThat(new RegularEvidence(Survey.of(SurveyShape.whole(6), readings)).standInUncertainty())
        .isCloseTo(0.015 * Math.sqrt(8 / 23.0), within(1e-9));
    // Most readings off: 1.4826 times the median of what they are off.
    for (int i = 8; i < 16; i++) {
      Reading one = readings.get(i);
      Reading exact = TestFrames.readings(regular, 6, false, 0, 1).get(i);
      readings.set(i, one.withValue(exact.value() + (i % 2 == 0 ? 0.01 : -0.01)));
    }
    assertThat(new RegularEvidence(Survey.of(SurveyShape.whole(6), readings)).ratio(0))
        .isBetween(0.9, 1.4);
  }

  /** A frame of eight sides bent by so much, one of its levels off by so much. */
  private static BlunderReport wrongLevel(double bend, double error) {
    Map<Node, Vector3D> frame = TestFrames.bent(8, false, 3, 3.5, bend, 11);
    List<Reading> readings = new ArrayList<>(TestFrames.readings(frame, 8, false, 0.002, 11));
    int i = 0;
    while (!readings.get(i).name().equals("B1-B5 (height)")) {
      i++;
    }
    readings.set(i, readings.get(i).withValue(readings.get(i).value() + error));
    return Survey.of(SurveyShape.whole(8), readings).findBlunders();
  }

  /** Nothing but a level and a hip show how high a corner stands: either may be wrong. */
  @Test
  void ofRivalsTheOneFarOffTheRegularFrameIsNamed() {
    BlunderReport report = wrongLevel(0.005, 0.155);
    assertThat(report.undecided()).isTrue();
    Blunder named = report.blunders().get(0);
    assertThat(named.hints()).as("no slip of 155 mm").noneMatch(h -> h.contains("read "));
    assertThat(named.reading().name()).isEqualTo("B1-B5 (height)");
    assertThat(named.cause()).isEqualTo(Blunder.Cause.RIVAL);
    assertThat(named.error()).isCloseTo(0.155, within(0.01));
    Blunder.Alternative rival = named.alsoPossible().get(0);
    assertThat(rival.reading().name()).isEqualTo("B5-A");
    // With even chances of its error e, it is believed as well as e over the root of two.
    double error = rival.reading().value() - rival.predicted().value();
    ReadingResult believed =
        report.accepted().readings().stream()
            .filter(r -> r.reading().name().equals("B5-A"))
            .findFirst()
            .orElseThrow();
    assertThat(believed.reading().standardUncertainty())
        .isCloseTo(Math.hypot(0.002, error / Math.sqrt(2)), within(1e-12));
    // On a frame that is bent as much itself the regular one tells nothing.
    assertThat(wrongLevel(0.06, 0.05).undecided()).isTrue();
  }

  /** Sides of 7, 3, 4 m and hips of 2, 8, 3 m: a regular frame has the middle ones, 4 and 3 m. */
  @Test
  void whereNoFrameFitsTheReadingFurthestOffIsNamed() {
    double[] lengths = {7, 3, 2, 4, 8, 3};
    List<Reading> readings = new ArrayList<>();
    for (SurveyShape.PanelEdge pair : ReadingPlanner.pairs(SurveyShape.whole(3).panelNodes())) {
      double length = lengths[readings.size()];
      readings.add(Reading.distance(pair.from(), pair.to(), length, 0.002));
    }
    Survey survey = Survey.of(SurveyShape.whole(3), readings);
    assertThatThrownBy(survey::adjust)
        .hasMessageEndingWith(
            "furthest off is reading 5 (B2-A): given 8.000 m, a regular frame has about 3.000 m");
  }

  private static List<Reading> square() {
    Map<Node, Vector3D> regular = TestFrames.bent(4, false, 3, 3.5, 0, 1);
    return new ArrayList<>(TestFrames.readings(regular, 4, false, 0, 1));
  }

  private static List<MirrorTwin> twins(List<Reading> readings) {
    return Survey.of(SurveyShape.whole(4), readings).adjust().orThrow().mirrorTwins();
  }

  /** Taped from corners of one plane alone, the apex may as well lie below it. */
  @Test
  void theTwinOfAnApex() {
    MirrorTwin twin = twins(square()).get(0);
    assertThat(twins(square())).hasSize(1);
    assertThat(twin.node()).isEqualTo(Node.APEX);
    assertThat(twin.taped())
        .containsExactly(Node.base(1), Node.base(2), Node.base(3), Node.base(4));
    assertThat(twin.apart()).isCloseTo(7, within(1e-6));
    assertThat(twin.twin().distance(Vector3D.of(0, 0, -3.5))).isLessThan(1e-6);
    List<Reading> reversed = new ArrayList<>();
    for (Reading r : square()) {
      boolean hip = r.nodes().contains(Node.APEX);
      reversed.add(hip ? Reading.distance(Node.APEX, r.nodes().get(0), r.value(), 0.001) : r);
    }
    assertThat(twins(reversed)).hasSize(1);
    assertThat(twins(reversed).get(0).apart()).isCloseTo(7, within(1e-6));
    // A level to it, or a line from beside the plane, tells which it is.
    List<Reading> levelled = square();
    levelled.add(new Reading.HeightDifference(Node.base(1), Node.APEX, 3.5, 0.002, ""));
    assertThat(twins(levelled)).isEmpty();
    assertThat(TestFrames.survey(6, false, 0.05, 0, 1).adjust().orThrow().mirrorTwins()).isEmpty();
  }

  /** On sloping ground the twin lies as far beyond the sloping base. */
  @Test
  void theTwinOfAnApexOnASlope() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(4, false, 3, 3.5, 0, 1));
    // Turned about the x axis by a slope of 7 in 24.
    nodes.replaceAll(
        (n, v) ->
            Vector3D.of(
                v.getX(), 0.96 * v.getY() - 0.28 * v.getZ(), 0.28 * v.getY() + 0.96 * v.getZ()));
    MirrorTwin twin = twins(TestFrames.readings(nodes, 4, false, 0, 1)).get(0);
    assertThat(twin.node()).isEqualTo(Node.APEX);
    assertThat(twin.apart()).isCloseTo(7, within(1e-6));
    assertThat(twin.chosen().subtract(twin.twin()).normalize().getZ())
        .isCloseTo(0.96, within(1e-6));
  }

  /** A base bent by 2 mm: a twin 0.2 mm off each reading fits one read to 1 mm, and none finer. */
  @Test
  void aTwinFitsWithinThreeUncertainties() {
    double[] limits = new double[2];
    for (int k = 0; k < 2; k++) {
      double bend = k == 0 ? 0.0004 : 0.02;
      Map<Node, Vector3D> nodes = TestFrames.bent(4, false, 3, 3.5, 0, 1);
      Vector3D up = Vector3D.of(0, 0, bend);
      nodes.put(Node.base(1), nodes.get(Node.base(1)).add(up));
      nodes.put(Node.base(3), nodes.get(Node.base(3)).add(up));
      List<Reading> readings = TestFrames.readings(nodes, 4, false, 0, 1);
      limits[k] = twins(readings).size();
    }
    assertThat(limits).containsExactly(1, 0);
  }

  @Test
  void aDrawingOfResiduals() {
    Adjustment adjusted = SURVEY.adjust().orThrow();
    ResidualPlot plot = ResidualPlot.of(adjusted);
    assertThat(plot.lines()).hasSameSizeAs(adjusted.readings());
    for (int i = 0; i < plot.lines().size(); i++) {
      ResidualPlot.Line line = plot.lines().get(i);
      ReadingResult result = adjusted.readings().get(i);
      assertThat(line.number()).isEqualTo(i + 1);
      assertThat(line.residual()).isEqualTo(result.residual());
      if (result.reading() instanceof Reading.Distance) {
        assertThat(line.from().distance(line.to())).isCloseTo(result.adjusted(), within(1e-9));
      }
      assertThat(Math.abs(line.residual())).isLessThanOrEqualTo(plot.greatestResidual());
    }
    assertThat(plot.lines()).anyMatch(l -> Math.abs(l.residual()) == plot.greatestResidual());
    assertThat(plot.nodes()).hasSameSizeAs(adjusted.nodeNames());
    double most = 0;
    double extent = 0;
    for (ResidualPlot.Deviation node : plot.nodes()) {
      assertThat(node.adjusted()).isEqualTo(adjusted.position(node.node()));
      assertThat(node.regular().add(node.way()).distance(node.adjusted())).isLessThan(1e-12);
      most = Math.max(most, node.regular().distance(node.adjusted()));
      for (double c : node.adjusted().toArray()) {
        extent = Math.max(extent, Math.abs(c));
      }
    }
    assertThat(plot.greatestDeviation()).isCloseTo(most, within(1e-12)).isPositive();
    assertThat(plot.extent()).isEqualTo(extent);
    // A height of 3.5 m or a radius of 3 m is the greatest coordinate.
    assertThat(plot.extent()).isBetween(3.0, 3.7);
  }
}
