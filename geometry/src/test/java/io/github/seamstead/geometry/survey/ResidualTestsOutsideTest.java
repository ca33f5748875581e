package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A frame's residuals worked again with a pseudo-inverse, and planted errors that the search must
 * name: the sizes of both are known from outside the adjustment.
 */
class ResidualTestsOutsideTest {

  private static final Source PSEUDO =
      Source.derived("commons-math3, pseudo-inverse by singular values, slopes by differences");
  private static final Source CHI =
      Source.derived("commons-math3, sum of squares and distribution of chi-squared");
  private static final Source PLANTED =
      Source.derived("an error of known size in one of otherwise exact readings");
  private static final int SIDES = 7;
  private static final double STEP = 1e-6;

  private final Survey survey = TestFrames.survey(SIDES, false, 0.05, 0.003, 5);
  private final List<Node> nodes = survey.nodes();
  private final Map<Node, Integer> places = new HashMap<>();

  private RealVector values(double[] x) {
    double[] values = new double[survey.readings().size()];
    for (int i = 0; i < values.length; i++) {
      Reading reading = survey.readings().get(i);
      int a = 3 * places.get(reading.nodes().get(0));
      int b = 3 * places.get(reading.nodes().get(1));
      values[i] =
          reading instanceof Reading.Distance
              ? Math.sqrt(
                  Math.pow(x[a] - x[b], 2)
                      + Math.pow(x[a + 1] - x[b + 1], 2)
                      + Math.pow(x[a + 2] - x[b + 2], 2))
              : x[b + 2] - x[a + 2];
    }
    return new ArrayRealVector(values, false);
  }

  private RealMatrix slopes(double[] x) {
    RealMatrix slopes = new Array2DRowRealMatrix(survey.readings().size(), x.length);
    for (int j = 0; j < x.length; j++) {
      double[] up = x.clone();
      double[] down = x.clone();
      up[j] += STEP;
      down[j] -= STEP;
      slopes.setColumnVector(j, values(up).subtract(values(down)).mapDivide(2 * STEP));
    }
    return slopes;
  }

  /** Residuals over their uncertainties, and redundancies: from a start off the regular frame. */
  private double[][] solved() {
    double[] x = new double[3 * nodes.size()];
    Map<Node, Vector3D> regular = TestFrames.bent(SIDES, false, 3, 3.5, 0, 1);
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      System.arraycopy(regular.get(nodes.get(i)).toArray(), 0, x, 3 * i, 3);
    }
    int m = survey.readings().size();
    double[] u = new double[m];
    double[] read = new double[m];
    for (int i = 0; i < m; i++) {
      u[i] = survey.readings().get(i).standardUncertainty();
      read[i] = survey.readings().get(i).value();
    }
    RealMatrix scaled = new Array2DRowRealMatrix(m, x.length);
    RealMatrix inverse = scaled;
    for (int turn = 0; turn < 30; turn++) {
      scaled = slopes(x);
      RealVector off = new ArrayRealVector(read).subtract(values(x));
      for (int i = 0; i < m; i++) {
        scaled.setRowVector(i, scaled.getRowVector(i).mapDivide(u[i]));
        off.setEntry(i, off.getEntry(i) / u[i]);
      }
      SingularValueDecomposition svd = new SingularValueDecomposition(scaled);
      inverse = pseudoInverse(svd, svd.getSingularValues()[0] * 1e-7);
      x = new ArrayRealVector(x).add(inverse.operate(off)).toArray();
    }
    RealMatrix hat = scaled.multiply(inverse);
    RealVector residual = values(x).subtract(new ArrayRealVector(read));
    double[][] solved = new double[2][m];
    for (int i = 0; i < m; i++) {
      solved[0][i] = residual.getEntry(i) / u[i];
      solved[1][i] = 1 - hat.getEntry(i, i);
    }
    return solved;
  }

  private static RealMatrix pseudoInverse(SingularValueDecomposition svd, double least) {
    RealMatrix s = svd.getS().copy();
    for (int i = 0; i < s.getRowDimension(); i++) {
      double value = s.getEntry(i, i);
      s.setEntry(i, i, value > least ? 1 / value : 0);
    }
    return svd.getV().multiply(s).multiply(svd.getUT());
  }

  @Test
  void residualsStandardised() {
    Adjustment adjustment = survey.adjust().orThrow();
    double[][] solved = solved();
    double delta =
        new NormalDistribution().inverseCumulativeProbability(1 - 0.001 / 2)
            + new NormalDistribution().inverseCumulativeProbability(0.8);
    double squares = 0;
    for (double ratio : solved[0]) {
      squares += ratio * ratio;
    }
    for (int i : new int[] {0, 3, 7, 10, 14, 19}) {
      Reading reading = survey.readings().get(i);
      double s = adjustment.uncertaintyScale();
      String what = "seven-sided frame, reading " + (i + 1) + ", " + reading.name();
      OutsideCheck.of("geometry.survey.standardised-residual", what, PSEUDO)
          .expect(solved[0][i] / Math.sqrt(solved[1][i]) / s)
          .within(1e-5)
          .got(AdjustmentSummary.standardisedResidual(adjustment, i + 1, Steps.none()));
      OutsideCheck.of("geometry.survey.minimal-detectable-error", what + ", mm", PSEUDO)
          .expect(1000 * delta * s * reading.standardUncertainty() / Math.sqrt(solved[1][i]))
          .within(1e-5)
          .got(1000 * AdjustmentSummary.minimalDetectableError(adjustment, i + 1, Steps.none()));
    }
    int nu = survey.readings().size() - 3 * nodes.size() + adjustment.freeMotions();
    GlobalTest test = AdjustmentSummary.globalTest(adjustment, Steps.none());
    ChiSquaredDistribution chi = new ChiSquaredDistribution(nu);
    global("degrees of freedom", nu, test.degreesOfFreedom());
    global("variance factor", squares / nu, test.varianceFactor());
    global("2.5 % quantile", chi.inverseCumulativeProbability(0.025), test.lower());
    global("97.5 % quantile", chi.inverseCumulativeProbability(0.975), test.upper());
  }

  private static void global(String what, double expected, double got) {
    OutsideCheck.of("geometry.survey.global-test", "seven-sided frame: " + what, CHI)
        .expect(expected)
        .within(1e-5)
        .got(got);
  }

  /** One reading off by a usual slip; all others exact. The number named and its size are known. */
  @ParameterizedTest
  @CsvSource({
    "2,0.3048,a foot",
    "5,-0.1,a decimetre short",
    "9,0.0254,an inch",
    "12,0.5,half a metre",
    "16,-0.3048,a foot short",
    "20,0.1,a decimetre"
  })
  void plantedErrorsAreNamed(int number, double error, String slip) {
    List<Reading> readings = new ArrayList<>();
    Map<Node, Vector3D> frame = TestFrames.bent(SIDES, false, 3, 3.5, 0.03, 4);
    for (Reading reading : TestFrames.readings(frame, SIDES, false, 0, 4)) {
      boolean hit = readings.size() == number - 1 && reading instanceof Reading.Distance;
      readings.add(
          hit
              ? Reading.distance(
                  reading.nodes().get(0),
                  reading.nodes().get(1),
                  reading.value() + error,
                  reading.standardUncertainty())
              : reading);
    }
    BlunderReport report = Survey.of(SurveyShape.whole(SIDES), readings).findBlunders();
    assertThat(report.blunders()).hasSize(1);
    String what = "reading " + number + " of a seven-sided frame " + slip + " off: ";
    OutsideCheck.of("geometry.survey", what + "number named", PLANTED)
        .expect(number)
        .within(1e-9)
        .got(report.blunders().get(0).number());
    OutsideCheck.of("geometry.survey", what + "error found, m", PLANTED)
        .expect(error)
        .within(1e-6)
        .got(report.blunders().get(0).error());
  }
}
