package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * What tests by hand have in common: they feel plasticity, not clay, and the same clay share is
 * more or less plastic by its minerals. All of them read the clay share times one factor,
 * log-normal with a deviation of {@link #DEVIATION}, which is integrated out by Gauss-Hermite
 * quadrature. Taken as independent, five such tests claim a range that holds the truth in 64
 * instead of 90 of 100 soils.
 */
final class SharedPlasticity {

  /** Activity scatters by 0.45 in the logarithm; a hand feels a part of that (common practice). */
  static final double DEVIATION = 0.28;

  static final Source SOURCE =
      Source.commonPractice(
          "hand tests of one soil err together by the plasticity of its minerals");

  private static final double[] NODES = {
    -3.750439717725742,
    -2.366759410734541,
    -1.154405394739968,
    0,
    1.154405394739968,
    2.366759410734541,
    3.750439717725742
  };

  private static final double[] WEIGHTS = {
    0.000548268855972,
    0.030757123967586,
    0.240123178605013,
    0.457142857142858,
    0.240123178605013,
    0.030757123967586,
    0.000548268855972
  };

  private final List<ClayLikelihood> tests = new ArrayList<>();

  SharedPlasticity(List<? extends SoilEvidence> evidence) {
    for (SoilEvidence test : evidence) {
      if (feels(test)) {
        tests.add((ClayLikelihood) test.likelihood());
      }
    }
  }

  /** Whether a test feels plasticity. */
  static boolean feels(SoilEvidence test) {
    return test instanceof RibbonTest
        || test instanceof RollTest
        || test instanceof SqueezeTest
        || test instanceof DropTest
        || test instanceof BendTest
        || test instanceof ShineTest
        || test instanceof DryStrengthTest;
  }

  /** Likelihood of all tests that feel plasticity together; 1 if there is none. */
  ClayLikelihood together() {
    return clay -> {
      double sum = 0;
      for (double weight : weights(clay)) {
        sum += weight;
      }
      return sum;
    };
  }

  /** Weight of each node after the tests, for a clay share; not scaled. */
  private double[] weights(double clay) {
    double[] weights = WEIGHTS.clone();
    for (int k = 0; k < weights.length; k++) {
      double felt = felt(clay, k);
      for (ClayLikelihood test : tests) {
        weights[k] *= test.ofClay(felt);
      }
    }
    return weights;
  }

  /** Likelihood of a further test that feels plasticity, given those made and the clay share. */
  double[] given(double clay, List<ClayLikelihood> outcomes) {
    double[] weights = weights(clay);
    double all = 0;
    for (double weight : weights) {
      all += weight;
    }
    double[] chances = new double[outcomes.size()];
    for (int k = 0; k < weights.length; k++) {
      double felt = felt(clay, k);
      double[] here = new double[chances.length];
      double sum = 0;
      for (int i = 0; i < here.length; i++) {
        here[i] = outcomes.get(i).ofClay(felt);
        sum += here[i];
      }
      for (int i = 0; i < here.length; i++) {
        chances[i] += weights[k] / all * here[i] / sum;
      }
    }
    return chances;
  }

  private static double felt(double clay, int node) {
    return Math.min(1, clay * StrictMath.exp(DEVIATION * NODES[node]));
  }
}
