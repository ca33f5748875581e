package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What tests of plasticity have in common: the same clay share is more or less plastic by its
 * minerals, so what a hand feels, what the limits say and how far a bar shrinks err together. One
 * standard normal number z, the mineral, stands for it: hands feel the clay share times {@code
 * exp(0.28 z)}, and the plasticity index is that of the usual activity times {@code exp(0.4 z)}.
 * Each test keeps its own scatter beside it, and z is summed out by the trapezoidal rule.
 *
 * <p>Taken as independent, five tests by hand claim a range of 90 % that holds the truth in 64 of
 * 100 soils.
 */
final class SharedPlasticity {

  /** Activity scatters by 0.45 in the logarithm; a hand feels a part of that (common practice). */
  static final double DEVIATION = 0.28;

  /**
   * What of that scatter is the mineral, the rest the test itself: 0.2 remain for the limits, about
   * what two laboratories differ by on one soil (common practice).
   */
  static final double INDEX_DEVIATION = 0.4;

  static final Source SOURCE =
      Source.commonPractice(
          "hand tests, limits and shrinkage of one soil err together by the plasticity of its"
              + " minerals");

  /** Half a deviation, over four to each side: the sum of a smooth product is exact to 1e-5. */
  private static final double STEP = 0.5;

  private static final int NODES = 17;
  private static final double[] MINERALS = new double[NODES];
  private static final double[] WEIGHTS = new double[NODES];

  static {
    double all = 0;
    for (int k = 0; k < NODES; k++) {
      MINERALS[k] = (k - NODES / 2) * STEP;
      WEIGHTS[k] = Densities.normal(MINERALS[k], 0, 1);
      all += WEIGHTS[k];
    }
    for (int k = 0; k < NODES; k++) {
      WEIGHTS[k] /= all;
    }
  }

  private final TextureGrid grid;
  private final List<Seen> tests = new ArrayList<>();

  /** Prepares the tests that share the mineral, in their order; others are left out. */
  SharedPlasticity(List<? extends SoilEvidence> evidence, TextureGrid grid) {
    this.grid = grid;
    for (SoilEvidence test : evidence) {
      if (shares(test)) {
        tests.add(new Seen(test, grid));
      }
    }
  }

  /** Whether a hand feels plasticity in a test. */
  static boolean feels(SoilEvidence test) {
    return test instanceof RibbonTest
        || test instanceof RollTest
        || test instanceof SqueezeTest
        || test instanceof DropTest
        || test instanceof BendTest
        || test instanceof ShineTest
        || test instanceof DryStrengthTest;
  }

  /** Whether a test tells plasticity, felt or measured, and so errs with the others. */
  static boolean shares(SoilEvidence test) {
    return feels(test) || test instanceof ConsistencyLimits || test instanceof LinearShrinkage;
  }

  /** How likely what one test showed is, for each mineral. */
  static final class Seen {

    private final boolean byClay;
    private final TextureGrid grid;
    private final double[] table;

    /** Evaluates a test that {@link SharedPlasticity#shares}, over grid and minerals. */
    Seen(SoilEvidence test, TextureGrid grid) {
      this.grid = grid;
      Optional<IndexReading> index = IndexReading.of(test);
      byClay = index.isEmpty();
      table =
          index
              .map(reading -> measured(reading, grid))
              .orElseGet(() -> felt((ClayLikelihood) test.likelihood(), grid));
    }

    /** Likelihood at a cell of the grid for a mineral. */
    double at(int cell, int mineral) {
      return table[(byClay ? grid.clayPlace(cell) : cell) * NODES + mineral];
    }

    private static double[] felt(ClayLikelihood likelihood, TextureGrid grid) {
      double[] table = new double[grid.clayPlaces() * NODES];
      for (int place = 0; place < grid.clayPlaces(); place++) {
        double clay = grid.clayAt(place);
        for (int k = 0; k < NODES; k++) {
          double felt = Math.min(1, clay * StrictMath.exp(DEVIATION * MINERALS[k]));
          table[place * NODES + k] = likelihood.ofClay(felt);
        }
      }
      return table;
    }

    private static double[] measured(IndexReading index, TextureGrid grid) {
      double[] table = new double[grid.size() * NODES];
      for (int cell = 0; cell < grid.size(); cell++) {
        double expected = IndexReading.expected(grid.clay(cell), grid.silt(cell));
        for (int k = 0; k < NODES; k++) {
          table[cell * NODES + k] = index.given(expected + INDEX_DEVIATION * MINERALS[k]);
        }
      }
      return table;
    }
  }

  /** Likelihood of all tests that share the mineral, at each cell. */
  double[] together() {
    return together(test -> true);
  }

  /** The same of those whose place in the order among them is kept; 1 if there is none. */
  double[] together(IntPredicate kept) {
    List<Seen> felt = new ArrayList<>();
    List<Seen> measured = new ArrayList<>();
    for (int i = 0; i < tests.size(); i++) {
      if (kept.test(i)) {
        (tests.get(i).byClay ? felt : measured).add(tests.get(i));
      }
    }
    double[] row = new double[grid.size()];
    double[][] known = new double[grid.clayPlaces()][0];
    double[] sums = new double[grid.clayPlaces()];
    for (int cell = 0; cell < row.length; cell++) {
      int place = grid.clayPlace(cell);
      if (known[place].length == 0) {
        known[place] = weights(felt, cell, WEIGHTS);
        sums[place] = sum(known[place]);
      }
      row[cell] = measured.isEmpty() ? sums[place] : sum(weights(measured, cell, known[place]));
    }
    return row;
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  /** Probability of each mineral after the tests, for the texture of a cell. */
  double[] minerals(int cell) {
    double[] weights = weights(tests, cell, WEIGHTS);
    double all = sum(weights);
    for (int k = 0; k < NODES; k++) {
      weights[k] /= all;
    }
    return weights;
  }

  private static double[] weights(List<Seen> tests, int cell, double[] before) {
    double[] weights = before.clone();
    for (Seen test : tests) {
      for (int k = 0; k < NODES; k++) {
        weights[k] *= test.at(cell, k);
      }
    }
    return weights;
  }
}
