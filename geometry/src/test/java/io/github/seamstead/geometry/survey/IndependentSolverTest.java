package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.junit.jupiter.api.Test;

/**
 * The same readings through commons-math3's Levenberg-Marquardt with differences for derivatives
 * and a datum of held coordinates: what does not depend on the datum must agree.
 */
class IndependentSolverTest {

  private final Survey survey = TestFrames.survey(7, true, 0.06, 0.003, 21);
  private final List<Node> nodes = survey.nodes();
  private final Map<Node, Integer> places = new HashMap<>();

  @Test
  void lengthsAndWeightedSquaresAgree() {
    Adjustment adjustment = survey.adjust().orThrow();
    double[] start = new double[3 * nodes.size()];
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      double[] place = adjustment.regular(nodes.get(i)).toArray();
      System.arraycopy(place, 0, start, 3 * i, 3);
    }
    int m = survey.readings().size();
    double[] target = new double[m + 4];
    double[] weights = new double[m + 4];
    for (int i = 0; i < m; i++) {
      target[i] = survey.readings().get(i).value();
      weights[i] = 1 / Math.pow(survey.readings().get(i).standardUncertainty(), 2);
    }
    // The datum: three coordinates of the first node and one of the fourth, held by weight.
    int[] held = {0, 1, 2, 9};
    for (int k = 0; k < 4; k++) {
      target[m + k] = start[held[k]];
      weights[m + k] = 1e6;
    }
    Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(start)
                    .target(target)
                    .weight(new DiagonalMatrix(weights))
                    .model(
                        (double[] point) -> values(point, m, held),
                        (double[] point) -> slopes(point, m, held))
                    .maxEvaluations(10_000)
                    .maxIterations(10_000)
                    .build());
    double[] x = optimum.getPoint().toArray();
    double squares = Math.pow(optimum.getCost(), 2);
    assertThat(adjustment.weightedSquares()).isCloseTo(squares, within(1e-6));
    for (EdgeLength edge : adjustment.edges()) {
      assertThat(distance(x, edge.edge().from(), edge.edge().to()))
          .isCloseTo(edge.length().value(), within(1e-7));
    }
  }

  private double[] values(double[] x, int m, int[] held) {
    double[] values = new double[m + held.length];
    for (int i = 0; i < m; i++) {
      Reading reading = survey.readings().get(i);
      Node a = reading.nodes().get(0);
      Node b = reading.nodes().get(1);
      values[i] =
          reading instanceof Reading.Distance
              ? distance(x, a, b)
              : x[3 * places.get(b) + 2] - x[3 * places.get(a) + 2];
    }
    for (int k = 0; k < held.length; k++) {
      values[m + k] = x[held[k]];
    }
    return values;
  }

  private double[][] slopes(double[] x, int m, int[] held) {
    double h = 1e-6;
    double[][] slopes = new double[m + held.length][x.length];
    for (int j = 0; j < x.length; j++) {
      double[] up = x.clone();
      double[] down = x.clone();
      up[j] += h;
      down[j] -= h;
      double[] high = values(up, m, held);
      double[] low = values(down, m, held);
      for (int i = 0; i < high.length; i++) {
        slopes[i][j] = (high[i] - low[i]) / (2 * h);
      }
    }
    return slopes;
  }

  private double distance(double[] x, Node a, Node b) {
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      double d = x[3 * places.get(a) + axis] - x[3 * places.get(b) + axis];
      sum += d * d;
    }
    return Math.sqrt(sum);
  }
}
