package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Cancellation;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** NIST certified nonlinear regression through the same Gauss-Newton as the frame. */
class CertifiedRegressionTest {

  private static final Source NIST =
      Source.found("NIST/ITL", "Statistical Reference Datasets, nonlinear regression", "1999", "");

  /** A regression set. */
  private record Dataset(
      String name,
      String data,
      BiFunction<double[], Double, Double> model,
      double[] certified,
      double[] deviations,
      double squares,
      double tolerance) {}

  private static final Dataset MISRA1A =
      new Dataset(
          "Misra1a",
          "77.6:10.07 114.9:14.73 141.1:17.94 190.8:23.93 239.9:29.61 289.0:35.18 332.8:40.02"
              + " 378.4:44.82 434.8:50.76 477.3:55.05 536.8:61.01 593.1:66.40 689.1:75.47"
              + " 760.0:81.78",
          (b, x) -> b[0] * (1 - Math.exp(-b[1] * x)),
          new double[] {238.94212918, 5.5015643181e-4},
          new double[] {2.7070075241, 7.2668688436e-6},
          0.12455138894,
          1e-6);

  private static final Dataset RAT42 =
      new Dataset(
          "Rat42",
          "9:8.930 14:10.800 21:18.590 28:22.330 42:39.350 57:56.110 63:61.730 70:64.620"
              + " 79:67.080",
          (b, x) -> b[0] / (1 + Math.exp(b[1] - b[2] * x)),
          new double[] {72.462237576, 2.6180768402, 0.067359200066},
          new double[] {1.7340283401, 0.088295217536, 0.0034465663377},
          8.0565229338,
          1e-5);

  private static final Dataset THURBER =
      new Dataset(
          "Thurber",
          "-3.067:80.574 -2.981:84.248 -2.921:87.264 -2.912:87.195 -2.840:89.076 -2.797:89.608"
              + " -2.702:89.868 -2.699:90.101 -2.633:92.405 -2.481:95.854 -2.363:100.696"
              + " -2.322:101.060 -1.501:401.672 -1.460:390.724 -1.274:567.534 -1.212:635.316"
              + " -1.100:733.054 -1.046:759.087 -0.915:894.206 -0.714:990.785 -0.566:1090.109"
              + " -0.545:1080.914 -0.400:1122.643 -0.309:1178.351 -0.109:1260.531"
              + " -0.103:1273.514 0.010:1288.339 0.119:1327.543 0.377:1353.863 0.790:1414.509"
              + " 0.963:1425.208 1.006:1421.384 1.115:1442.962 1.572:1464.350 1.841:1468.705"
              + " 2.047:1447.894 2.200:1457.628",
          (b, x) ->
              (b[0] + x * (b[1] + x * (b[2] + x * b[3])))
                  / (1 + x * (b[4] + x * (b[5] + x * b[6]))),
          new double[] {
            1288.1396800,
            1491.0792535,
            583.23836877,
            75.416644291,
            0.96629502864,
            0.39797285797,
            0.049727297349
          },
          new double[] {
            4.6647963344,
            39.571156086,
            28.698696102,
            5.5675370270,
            0.031333340687,
            0.014984928198,
            0.0065842344623
          },
          5642.7082397,
          1e-5);

  static Stream<Arguments> starts() {
    return Stream.of(
        Arguments.of(MISRA1A, 1, new double[] {500, 0.0001}),
        Arguments.of(MISRA1A, 2, new double[] {250, 0.0005}),
        Arguments.of(RAT42, 1, new double[] {100, 1, 0.1}),
        Arguments.of(RAT42, 2, new double[] {75, 2.5, 0.07}),
        Arguments.of(THURBER, 1, new double[] {1000, 1000, 400, 40, 0.7, 0.3, 0.03}),
        Arguments.of(THURBER, 2, new double[] {1300, 1500, 500, 75, 1, 0.4, 0.05}));
  }

  @ParameterizedTest
  @MethodSource("starts")
  void certifiedValues(Dataset set, int start, double[] from) {
    Regression regression = new Regression(set, from);
    GaussNewton.Solution solution = GaussNewton.solve(regression, new Cancellation()).orElseThrow();
    double s = Math.sqrt(solution.weightedSquares() / (regression.observations() - from.length));
    String label = set.name + ", start " + start + ", ";
    for (int i = 0; i < from.length; i++) {
      OutsideCheck.of("geometry.survey", label + "b" + (i + 1), NIST)
          .expect(set.certified[i])
          .withinRatio(set.tolerance)
          .got(solution.unknowns()[i]);
      OutsideCheck.of("geometry.survey", label + "s.d. of b" + (i + 1), NIST)
          .expect(set.deviations[i])
          .withinRatio(set.tolerance)
          .got(s * Math.sqrt(solution.cofactors()[i][i]));
    }
    OutsideCheck.of("geometry.survey", label + "residual sum of squares", NIST)
        .expect(set.squares)
        .withinRatio(1e-8)
        .got(solution.weightedSquares());
  }

  /** Derivatives by central differences in the fifth root of the epsilon, four points. */
  private static final class Regression implements ObservationModel {

    private final Dataset set;
    private final double[] from;
    private final double[][] points;

    Regression(Dataset set, double[] from) {
      this.set = set;
      this.from = from;
      this.points =
          Arrays.stream(set.data.split(" "))
              .map(p -> Arrays.stream(p.split(":")).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new);
    }

    @Override
    public int unknowns() {
      return from.length;
    }

    @Override
    public int observations() {
      return points.length;
    }

    @Override
    public int mostPerObservation() {
      return from.length;
    }

    @Override
    public double[] start() {
      return from.clone();
    }

    @Override
    public double weight(int observation) {
      return 1;
    }

    @Override
    public double evaluate(int observation, double[] b, DesignRow row) {
      double x = points[observation][0];
      row.clear();
      for (int i = 0; i < b.length; i++) {
        double h = 7e-4 * Math.abs(b[i]);
        double slope =
            (8 * (at(b, i, h, x) - at(b, i, -h, x)) - (at(b, i, 2 * h, x) - at(b, i, -2 * h, x)))
                / (12 * h);
        row.add(i, slope);
      }
      return points[observation][1] - set.model.apply(b, x);
    }

    private double at(double[] b, int i, double change, double x) {
      double[] moved = b.clone();
      moved[i] += change;
      return set.model.apply(moved, x);
    }

    @Override
    public double[][] freeMotions(double[] unknowns) {
      return new double[0][];
    }
  }
}
