package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Invariants of every adjustment. */
@Tag("dear")
class SurveyProperties {

  @Property(tries = 60, seed = "2026110035")
  void exactReadingsGiveTheExactFrame(
      @ForAll @IntRange(min = 3, max = 14) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 10_000) int seed) {
    Map<Node, Vector3D> nodes = TestFrames.bent(sides, truncated, 3, 3.5, 0.06, seed);
    Survey survey =
        Survey.of(
            TestFrames.shape(sides, truncated),
            TestFrames.readings(nodes, sides, truncated, 0, seed));
    Adjustment adjustment = survey.adjust().orThrow();
    assertThat(adjustment.weightedSquares()).isLessThan(1e-12);
    for (Node a : survey.nodes()) {
      for (Node b : survey.nodes()) {
        if (!a.equals(b)) {
          assertThat(adjustment.distance(a, b).value())
              .isCloseTo(nodes.get(a).distance(nodes.get(b)), within(1e-9));
        }
      }
      assertThat(adjustment.heightDifference(Node.CENTRE, a).value())
          .isCloseTo(nodes.get(a).getZ() - nodes.get(Node.CENTRE).getZ(), within(1e-9));
    }
  }

  @Property(tries = 60, seed = "2026110036")
  void residualsSatisfyTheNormalEquations(
      @ForAll @IntRange(min = 3, max = 14) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 10_000) int seed) {
    Survey survey = TestFrames.survey(sides, truncated, 0.06, 0.003, seed);
    Adjustment adjustment = survey.adjust().orThrow();
    double[] sum = new double[adjustment.cofactors().length];
    DesignRow row = new DesignRow(9);
    double size = 0;
    for (ReadingResult result : adjustment.readings()) {
      double u = result.reading().standardUncertainty();
      adjustment.readingRow(result.number() - 1, row);
      for (int k = 0; k < row.size(); k++) {
        double part = row.coefficient(k) * result.residual() / (u * u);
        sum[row.index(k)] += part;
        size = Math.max(size, Math.abs(part));
      }
    }
    for (double value : sum) {
      assertThat(value).isCloseTo(0, within(1e-7 * size));
    }
  }

  @Property(tries = 60, seed = "2026110037")
  void redundancyNumbersSumToTheDegreesOfFreedom(
      @ForAll @IntRange(min = 3, max = 14) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 10_000) int seed) {
    Survey survey = TestFrames.survey(sides, truncated, 0.06, 0.003, seed);
    Adjustment adjustment = survey.adjust().orThrow();
    assertThat(adjustment.freeMotions()).isEqualTo(4);
    assertThat(adjustment.isLevelled()).isTrue();
    assertThat(adjustment.readings().stream().mapToDouble(ReadingResult::redundancy).sum())
        .isCloseTo(adjustment.degreesOfFreedom(), within(1e-8));
  }

  @Property(tries = 40, seed = "2026110038")
  void renamingCornersRoundAndShufflingReadingsChangesNothing(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(min = 1, max = 11) int turn,
      @ForAll @IntRange(max = 10_000) int seed) {
    Survey survey = TestFrames.survey(sides, truncated, 0.06, 0.003, seed);
    List<Reading> renamed = new ArrayList<>();
    for (Reading reading : survey.readings()) {
      Node a = turned(reading.nodes().get(0), turn, sides);
      Node b = turned(reading.nodes().get(1), turn, sides);
      renamed.add(
          reading instanceof Reading.Distance
              // Taped from the other end, as it may be booked.
              ? Reading.distance(b, a, reading.value(), reading.standardUncertainty())
              : new Reading.HeightDifference(
                  a, b, reading.value(), reading.standardUncertainty(), ""));
    }
    Collections.shuffle(renamed, new Random(seed));
    Adjustment before = survey.adjust().orThrow();
    Adjustment after = Survey.of(survey.shape(), renamed).adjust().orThrow();
    assertThat(after.weightedSquares()).isCloseTo(before.weightedSquares(), within(1e-7));
    for (EdgeLength edge : before.edges()) {
      Node from = turned(edge.edge().from(), turn, sides);
      Node to = turned(edge.edge().to(), turn, sides);
      assertThat(after.distance(from, to).value()).isCloseTo(edge.length().value(), within(1e-9));
      assertThat(after.distance(from, to).standardUncertainty())
          .isCloseTo(edge.length().standardUncertainty(), within(1e-9));
    }
  }

  private static Node turned(Node node, int turn, int sides) {
    int number = node.number() == 0 ? 0 : (node.number() - 1 + turn) % sides + 1;
    return new Node(node.kind(), number);
  }

  @Property(tries = 40, seed = "2026110039")
  void scalingReadingsAndUncertaintiesScalesTheFrame(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 10_000) int seed) {
    Survey survey = TestFrames.survey(sides, truncated, 0.06, 0.003, seed);
    double factor = 3.28;
    List<Reading> scaled = new ArrayList<>();
    for (Reading r : survey.readings()) {
      double u = factor * r.standardUncertainty();
      scaled.add(
          r instanceof Reading.Distance
              ? Reading.distance(r.nodes().get(0), r.nodes().get(1), factor * r.value(), u)
              : new Reading.HeightDifference(
                  r.nodes().get(0), r.nodes().get(1), factor * r.value(), u, ""));
    }
    Adjustment small = survey.adjust().orThrow();
    Adjustment large = Survey.of(survey.shape(), scaled).adjust().orThrow();
    assertThat(large.weightedSquares()).isCloseTo(small.weightedSquares(), within(1e-7));
    for (EdgeLength edge : small.edges()) {
      assertThat(large.distance(edge.edge().from(), edge.edge().to()).value())
          .isCloseTo(factor * edge.length().value(), within(1e-8));
    }
  }

  @Property(tries = 60, seed = "2026110040")
  void aBlunderAboveItsDetectableErrorIsNamed(
      @ForAll @IntRange(min = 4, max = 12) int sides,
      @ForAll boolean truncated,
      @ForAll boolean negative,
      @ForAll @IntRange(max = 10_000) int seed) {
    // Noise well below the stated 1 mm, so that no reading is suspect by chance alone.
    Survey clean = TestFrames.survey(sides, truncated, 0.06, 0.0003, seed);
    Adjustment before = clean.adjust().orThrow();
    assertThat(before.readings()).noneMatch(ReadingResult::suspect);
    int at = seed % clean.readings().size();
    ReadingResult target = before.readings().get(at);
    Assume.that(target.redundancy() > 0.1);
    // Twice the detectable error leaves the test a power of far more than 80 %.
    double error = (negative ? -2 : 2) * target.minimalDetectableError().get();
    List<Reading> readings = new ArrayList<>(clean.readings());
    readings.set(at, withError(readings.get(at), error));
    BlunderReport report = Survey.of(clean.shape(), readings).findBlunders();
    assertThat(report.blunders()).hasSize(1);
    Blunder blunder = report.blunders().get(0);
    List<Integer> named = new ArrayList<>();
    named.add(blunder.number());
    blunder.alsoPossible().forEach(other -> named.add(other.number()));
    assertThat(named).contains(at + 1);
  }

  private static Reading withError(Reading r, double error) {
    Node a = r.nodes().get(0);
    Node b = r.nodes().get(1);
    double value = r.value() + error;
    return r instanceof Reading.Distance
        ? Reading.distance(a, b, value, r.standardUncertainty())
        : new Reading.HeightDifference(a, b, value, r.standardUncertainty(), "");
  }

  @Property(tries = 40, seed = "2026110041")
  void anIdealFarFromTheFrameChangesNoLength(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll boolean truncated,
      @ForAll @DoubleRange(min = 1, max = 10) double radius,
      @ForAll @DoubleRange(min = 1, max = 10) double height,
      @ForAll @IntRange(max = 10_000) int seed) {
    Survey survey = TestFrames.survey(sides, truncated, 0.06, 0.003, seed);
    Adjustment guessed = survey.adjust().orThrow();
    SurveyShape meant =
        survey.shape().meant(new SurveyShape.Ideal(radius, height, truncated ? 0.7 * height : 0));
    Adjustment adjustment = Survey.of(meant, survey.readings()).adjust().orThrow();
    assertThat(adjustment.weightedSquares()).isCloseTo(guessed.weightedSquares(), within(1e-6));
    for (EdgeLength edge : guessed.edges()) {
      assertThat(adjustment.distance(edge.edge().from(), edge.edge().to()).value())
          .isCloseTo(edge.length().value(), within(1e-8));
    }
  }

  @Property(tries = 20, seed = "2026110042")
  void workedStepsFollow(
      @ForAll @IntRange(min = 3, max = 8) int sides, @ForAll @IntRange(max = 1000) int seed) {
    Adjustment adjustment = TestFrames.survey(sides, false, 0.06, 0.003, seed).adjust().orThrow();
    StepRecorder global = new StepRecorder();
    GlobalTest test = AdjustmentSummary.globalTest(adjustment, global);
    DerivationChecks.assertFollowsTo(
        global.derivation("geometry.survey.global-test", "Test of the variance factor"),
        test.varianceFactor());
    assertThat(test.weightedSquares())
        .isCloseTo(adjustment.weightedSquares(), within(1e-9 * adjustment.weightedSquares()));
    StepRecorder residual = new StepRecorder();
    double w = AdjustmentSummary.standardisedResidual(adjustment, 1, residual);
    DerivationChecks.assertFollowsTo(
        residual.derivation("geometry.survey.standardised-residual", "Residual"), w);
    assertThat(w).isCloseTo(adjustment.readings().get(0).statistic().get(), within(1e-9));
    StepRecorder detectable = new StepRecorder();
    double mde = AdjustmentSummary.minimalDetectableError(adjustment, 1, detectable);
    DerivationChecks.assertFollowsTo(
        detectable.derivation("geometry.survey.minimal-detectable-error", "Detectable"), mde);
    assertThat(AdjustmentSummary.minimalDetectableError(adjustment, 1, Steps.none()))
        .isCloseTo(adjustment.readings().get(0).minimalDetectableError().get(), within(1e-15));
  }
}
