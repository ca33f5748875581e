package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingPlannerTest {

  /** The rank-one forecast against an adjustment that really has the reading. */
  @Test
  void theForecastComesTrue() {
    Survey survey = TestFrames.survey(6, false, 0.05, 0.002, 4);
    Adjustment before = survey.adjust().orThrow();
    List<NextReading> next = before.nextReadings(3);
    assertThat(next).hasSize(3);
    NextReading best = next.get(0);
    assertThat(best.worstBefore())
        .isEqualTo(
            before.edges().stream()
                .mapToDouble(e -> e.length().standardUncertainty())
                .max()
                .orElseThrow(),
            within(1e-12));
    List<Reading> more = new ArrayList<>(survey.readings());
    more.add(
        Reading.distance(
            best.pair().from(),
            best.pair().to(),
            best.predicted().value(),
            best.assumedUncertainty()));
    Adjustment after = Survey.of(survey.shape(), more).adjust().orThrow();
    assertThat(after.distance(best.worstEdge().from(), best.worstEdge().to()).standardUncertainty())
        .isEqualTo(best.edgeAfter(), within(1e-9));
    assertThat(after.edges().stream().mapToDouble(e -> e.length().standardUncertainty()).max())
        .hasValueCloseTo(best.worstAfter(), within(1e-9));
    // A reading as predicted moves nothing.
    assertThat(after.weightedSquares()).isCloseTo(before.weightedSquares(), within(1e-9));
  }

  /** Every two distances, the first and then the second really added to the readings. */
  @Test
  void theBestPairIsTheBestOfAllPairs() {
    for (int seed = 1; seed <= 3; seed++) {
      Survey survey = TestFrames.survey(4, false, 0.05, 0.002, seed);
      Adjustment before = survey.adjust().orThrow();
      NextReadingSet best = before.nextReadingPair(pair -> true).orElseThrow();
      List<SurveyShape.PanelEdge> pairs = ReadingPlanner.pairs(survey.nodes());
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < pairs.size(); i++) {
        for (int j = i; j < pairs.size(); j++) {
          least = Math.min(least, worst(before, List.of(pairs.get(i), pairs.get(j))));
        }
      }
      assertThat(best.worstAfter()).isCloseTo(least, within(1e-9));
      assertThat(worst(before, best.pairs())).isCloseTo(best.worstAfter(), within(1e-9));
      // Never worse than the best two taken one at a time.
      assertThat(best.worstAfter())
          .isLessThanOrEqualTo(before.nextReadings(1).get(0).worstAfter() + 1e-12);
      assertThat(before.nextReadingPair(pair -> false)).isEmpty();
    }
  }

  private static double worst(Adjustment before, List<SurveyShape.PanelEdge> added) {
    List<Reading> more = new ArrayList<>(before.survey().readings());
    double u = ReadingPlanner.usualUncertainty(more);
    for (SurveyShape.PanelEdge pair : added) {
      double as = before.distance(pair.from(), pair.to()).value();
      more.add(Reading.distance(pair.from(), pair.to(), as, u));
    }
    return Survey.of(before.survey().shape(), more).adjust().orThrow().edges().stream()
        .mapToDouble(e -> e.length().standardUncertainty())
        .max()
        .orElseThrow();
  }

  @Test
  void whatCannotBeMeasuredIsNotProposed() {
    Adjustment adjustment = TestFrames.survey(6, false, 0.05, 0.002, 4).adjust().orThrow();
    List<NextReading> next =
        adjustment.nextReadings(
            50, pair -> pair.from().kind() != Node.Kind.APEX && pair.to().kind() != Node.Kind.APEX);
    assertThat(next).isNotEmpty();
    assertThat(next).allSatisfy(n -> assertThat(n.pair().name()).doesNotContain("A"));
  }

  /** A node's own statistics from the others: left out and predicted. */
  @Test
  void predictionByOthersIsThatOfAnAdjustmentWithout() {
    Survey survey = TestFrames.survey(7, true, 0.05, 0.002, 9);
    Adjustment all = survey.adjust().orThrow();
    ReadingResult one = all.readings().get(5);
    List<Reading> rest = new ArrayList<>(survey.readings());
    rest.remove(5);
    Adjustment without = Survey.of(survey.shape(), rest).adjust().orThrow();
    assertThat(one.predictedByOthers().orElseThrow().value())
        .isCloseTo(without.predict(one.reading()).value(), within(2e-5));
    assertThat(one.predictedByOthers().orElseThrow().standardUncertainty())
        .isCloseTo(without.predict(one.reading()).standardUncertainty(), within(2e-5));
  }

  @Test
  void plumbOffsetsAndLevelDistancesAreUsed() {
    Survey survey = TestFrames.survey(6, false, 0.04, 0.0, 4);
    Adjustment exact = survey.adjust().orThrow();
    List<Reading> readings = new ArrayList<>(survey.readings());
    Reading.PlumbOffset offset =
        new Reading.PlumbOffset(Node.APEX, Node.CENTRE, Node.base(2), 0, 0.003, "");
    Reading.LevelDistance level = new Reading.LevelDistance(Node.base(1), Node.APEX, 1, 0.003, "");
    readings.add(
        new Reading.PlumbOffset(
            Node.APEX, Node.CENTRE, Node.base(2), exact.predict(offset).value(), 0.003, ""));
    readings.add(
        new Reading.LevelDistance(
            Node.base(1), Node.APEX, exact.predict(level).value(), 0.003, ""));
    Adjustment more = Survey.of(survey.shape(), readings).adjust().orThrow();
    assertThat(more.weightedSquares()).isLessThan(1e-12);
    assertThat(more.degreesOfFreedom()).isEqualTo(exact.degreesOfFreedom() + 2);
    assertThat(more.distance(Node.CENTRE, Node.APEX).standardUncertainty())
        .isLessThan(exact.distance(Node.CENTRE, Node.APEX).standardUncertainty());
    double dx = exact.position(Node.base(2)).getX() - exact.position(Node.CENTRE).getX();
    double dy = exact.position(Node.base(2)).getY() - exact.position(Node.CENTRE).getY();
    double ax = exact.position(Node.APEX).getX() - exact.position(Node.CENTRE).getX();
    double ay = exact.position(Node.APEX).getY() - exact.position(Node.CENTRE).getY();
    assertThat(exact.predict(offset).value())
        .isCloseTo((dx * ax + dy * ay) / Math.hypot(dx, dy), within(1e-12));
  }

  @Test
  void derivativesAgreeWithDifferences() {
    Survey survey = TestFrames.survey(5, false, 0.05, 0.001, 2);
    Adjustment adjustment = survey.adjust().orThrow();
    List<Reading> kinds =
        List.of(
            new Reading.PlumbOffset(Node.APEX, Node.CENTRE, Node.base(2), 0, 0.003, ""),
            new Reading.LevelDistance(Node.base(1), Node.APEX, 1, 0.003, ""),
            Reading.distance(Node.base(1), Node.APEX, 1, 0.003),
            new Reading.HeightDifference(Node.base(1), Node.base(3), 1, 0.003, ""));
    List<Node> nodes = survey.nodes();
    java.util.Map<Node, Integer> places = new java.util.HashMap<>();
    double[][] coordinates = new double[nodes.size()][];
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      coordinates[i] = adjustment.position(nodes.get(i)).toArray();
    }
    NetworkModel model = new NetworkModel(places, coordinates, new boolean[nodes.size()][3], kinds);
    double[] x = model.start();
    DesignRow row = new DesignRow(9);
    DesignRow ignored = new DesignRow(9);
    for (int i = 0; i < kinds.size(); i++) {
      model.evaluate(i, x, row);
      double[] slope = new double[x.length];
      for (int k = 0; k < row.size(); k++) {
        slope[row.index(k)] += row.coefficient(k);
      }
      for (int j = 0; j < x.length; j++) {
        double h = 1e-6;
        double[] up = x.clone();
        double[] down = x.clone();
        up[j] += h;
        down[j] -= h;
        double difference =
            (model.evaluate(i, down, ignored) - model.evaluate(i, up, ignored)) / (2 * h);
        assertThat(slope[j]).isCloseTo(difference, within(1e-8));
      }
    }
  }

  @Test
  void curvatureAgreesWithDifferencesOfDerivatives() {
    Survey survey = TestFrames.survey(5, false, 0.05, 0.001, 2);
    Adjustment adjustment = survey.adjust().orThrow();
    Node a = Node.base(1);
    List<Reading> kinds =
        List.of(
            new Reading.LevelDistance(a, Node.APEX, 1, 0.003, ""),
            Reading.distance(a, Node.APEX, 1, 0.003));
    double[][] coordinates = {
      adjustment.position(a).toArray(), adjustment.position(Node.APEX).toArray()
    };
    NetworkModel model =
        new NetworkModel(
            java.util.Map.of(a, 0, Node.APEX, 1), coordinates, new boolean[2][3], kinds);
    double[] x = model.start();
    for (int i = 0; i < 2; i++) {
      double[][] lower = new double[6][];
      for (int k = 0; k < 6; k++) {
        lower[k] = new double[k + 1];
      }
      model.addCurvature(i, x, 2, lower);
      for (int j = 0; j < 6; j++) {
        double h = 1e-5;
        double[] up = slopes(model, i, x, j, h);
        double[] down = slopes(model, i, x, j, -h);
        for (int k = j; k < 6; k++) {
          assertThat(lower[k][j]).isCloseTo(2 * (up[k] - down[k]) / (2 * h), within(1e-8));
        }
      }
    }
  }

  private static double[] slopes(NetworkModel model, int i, double[] x, int j, double h) {
    double[] moved = x.clone();
    moved[j] += h;
    DesignRow row = new DesignRow(9);
    model.evaluate(i, moved, row);
    double[] slopes = new double[x.length];
    for (int k = 0; k < row.size(); k++) {
      slopes[row.index(k)] += row.coefficient(k);
    }
    return slopes;
  }
}
