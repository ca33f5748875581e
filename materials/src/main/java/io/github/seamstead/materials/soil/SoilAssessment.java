package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Says what a soil is from any tests of it.
 *
 * <p>Bayes' rule on the texture triangle: nothing known beforehand (every point of the triangle
 * alike), times the likelihood of each test, scaled to one. The triangle is cut into 100^2 equal
 * cells, a step of 1 % of mass, and evaluated at their centroids, so there is no sampling noise.
 * Against a grid ten times finer, over 40 drawn sets of three to five tests: means and standard
 * deviations differ by less than 0.0001, 5 and 95 % quantiles by less than 0.002, class
 * probabilities by less than 0.01. Cost: cells times tests.
 *
 * <p>How often the central ranges of the clay hold the truth, over 2000 virtual soils of each kind,
 * drawn evenly from the triangle and tested with the scatter that the tests state (the test of this
 * table is {@code CoverageTest}; its own doubt is 1.1, 0.7 and 0.5 points):
 *
 * <table>
 * <caption>Shares of soils in per cent; the last column is of the verdicts on a floor</caption>
 * <tr><th>tests<th>50 %<th>90 %<th>95 %<th>wrong
 * <tr><td>five by feel, one mineral<td>50.1<td>89.7<td>94.3<td>1.9
 * <tr><td>the same and a dispersed jar<td>51.1<td>89.4<td>94.3<td>1.6
 * <tr><td>a shrinkage bar and limits, one mineral<td>51.3<td>90.3<td>95.0<td>2.2
 * <tr><td>five by feel, a bar and limits, one mineral<td>48.7<td>90.6<td>95.2<td>1.3
 * <tr><td>the same and a dispersed jar<td>49.8<td>89.2<td>94.6<td>1.1
 * <tr><td>a jar in flocs<td>49.3<td>90.1<td>95.0<td>4.9
 * <tr><td>a jar in flocs, layers sharp<td>48.6<td>88.9<td>94.6<td>7.6
 * <tr><td>a dispersed jar, every third cloudy<td>50.9<td>90.4<td>95.5<td>4.6
 * </table>
 *
 * <pre>{@code
 * SoilFinding soil =
 *     SoilAssessment.assess(
 *         List.of(RibbonTest.ofLength(0.04), new BendTest(BendTest.Outcome.HALF_RING)));
 * double clay = soil.texture().clay().value(); // 0.32
 * }</pre>
 */
public final class SoilAssessment {

  /** Bayes' rule. */
  public static final Source SOURCE =
      Source.fromMemory("Gelman et al.", "Bayesian Data Analysis, 3rd ed.", "2013", "eq. 1.1");

  /** Below this the others speak substantially against a test. */
  private static final double CONFLICT = 1 / Math.sqrt(10);

  private SoilAssessment() {}

  /**
   * Combines the tests.
   *
   * @param evidence the tests, none for a soil of which nothing is known
   * @return what they say together
   */
  public static SoilFinding assess(List<? extends SoilEvidence> evidence) {
    return assess(evidence, Steps.none());
  }

  /**
   * As {@link #assess(List)}, with its worked steps; the last step is the mean clay share.
   *
   * @param evidence the tests, none for a soil of which nothing is known
   * @param steps receives the worked steps
   * @return what they say together
   */
  @Calculation("materials.soil.assessment")
  public static SoilFinding assess(List<? extends SoilEvidence> evidence, Steps steps) {
    return assess(evidence, TextureGrid.PUBLISHED, steps);
  }

  /** On a chosen grid, to measure the grid's error. */
  static SoilFinding assess(List<? extends SoilEvidence> evidence, TextureGrid grid, Steps steps) {
    Args.require(
        evidence.size() <= 60, "soil tests", String.valueOf(evidence.size()), "must be at most 60");
    double[][] rows = rows(evidence, grid);
    SharedPlasticity shared = new SharedPlasticity(evidence, grid);
    List<Factor> factors = factors(evidence, rows, shared);
    TexturePosterior posterior = posterior(factors, grid);
    List<String> remarks = new ArrayList<>();
    for (SoilEvidence test : evidence) {
      test.remarks().forEach(remark -> remarks.add(test.label() + ": " + remark));
    }
    if (steps.isRecording()) {
      BayesRecord.write(factors, posterior, steps);
    }
    return new SoilFinding(
        posterior,
        gravel(evidence),
        Plasticity.of(posterior, limits(evidence)),
        List.copyOf(evidence),
        conflicts(evidence, rows, shared),
        remarks);
  }

  /** What is known of the texture alone, at a fraction of the cost of a whole finding. */
  static TexturePosterior texture(List<? extends SoilEvidence> evidence) {
    TextureGrid grid = TextureGrid.PUBLISHED;
    SharedPlasticity shared = new SharedPlasticity(evidence, grid);
    return posterior(factors(evidence, rows(evidence, grid), shared), grid);
  }

  private static TexturePosterior posterior(List<Factor> factors, TextureGrid grid) {
    double[] weights = product(factors, grid.size());
    scale(weights);
    return new TexturePosterior(grid, weights);
  }

  /** Mean of all gravel shares, weighted by the inverse of their variances. */
  private static Optional<Uncertain> gravel(List<? extends SoilEvidence> evidence) {
    double weight = 0;
    double sum = 0;
    for (SoilEvidence test : evidence) {
      Optional<Uncertain> ratio = test.gravelRatio();
      if (ratio.isPresent()) {
        double one = 1 / StrictMath.pow(ratio.get().standardUncertainty(), 2);
        weight += one;
        sum += one * ratio.get().value();
      }
    }
    return weight == 0
        ? Optional.empty()
        : Optional.of(new Uncertain(sum / weight, Math.sqrt(1 / weight)));
  }

  private static Optional<ConsistencyLimits> limits(List<? extends SoilEvidence> evidence) {
    return evidence.stream()
        .filter(ConsistencyLimits.class::isInstance)
        .map(ConsistencyLimits.class::cast)
        .findFirst();
  }

  /** What the posterior is the product of: a test, or all tests of plasticity together. */
  static final class Factor {

    private final String label;
    private final Source source;
    private final double[] row;

    private Factor(String label, Source source, double[] row) {
      this.label = label;
      this.source = source;
      this.row = row;
    }

    String label() {
      return label;
    }

    Source source() {
      return source;
    }

    /** Likelihood at a cell, relative to the greatest. */
    double at(int cell) {
      return row[cell];
    }
  }

  /** Likelihood of each test at each cell; none for a test that shares the mineral with others. */
  private static double[][] rows(List<? extends SoilEvidence> evidence, TextureGrid grid) {
    double[][] rows = new double[evidence.size()][0];
    for (int i = 0; i < rows.length; i++) {
      if (!SharedPlasticity.shares(evidence.get(i))) {
        rows[i] = grid.evaluate(evidence.get(i).likelihood());
      }
    }
    return rows;
  }

  private static List<Factor> factors(
      List<? extends SoilEvidence> evidence, double[][] rows, SharedPlasticity shared) {
    List<Factor> factors = new ArrayList<>();
    List<SoilEvidence> sharing = new ArrayList<>();
    for (int i = 0; i < rows.length; i++) {
      SoilEvidence test = evidence.get(i);
      if (rows[i].length == 0) {
        sharing.add(test);
      } else {
        factors.add(factor(test.label(), test.sources().get(0), rows[i]));
      }
    }
    if (!sharing.isEmpty()) {
      factors.add(
          factor(
              sharing.stream().map(SoilEvidence::label).collect(Collectors.joining("; ")),
              sharing.size() == 1 ? sharing.get(0).sources().get(0) : SharedPlasticity.SOURCE,
              shared.together()));
    }
    return factors;
  }

  private static Factor factor(String label, Source source, double[] likelihood) {
    double greatest = 0;
    for (double value : likelihood) {
      greatest = Math.max(greatest, value);
    }
    double[] row = new double[likelihood.length];
    for (int cell = 0; cell < row.length; cell++) {
      row[cell] = likelihood[cell] / greatest;
    }
    return new Factor(label, source, row);
  }

  private static double[] product(List<Factor> factors, int size) {
    double[] weights = new double[size];
    Arrays.fill(weights, 1);
    for (Factor factor : factors) {
      for (int cell = 0; cell < size; cell++) {
        weights[cell] *= factor.at(cell);
      }
    }
    return weights;
  }

  private static void scale(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int cell = 0; cell < weights.length; cell++) {
      weights[cell] /= sum;
    }
  }

  /**
   * Mean likelihood over the triangle of the tests that are kept; rows of shared ones are empty.
   */
  private static double evidenceOf(double[][] rows, SharedPlasticity shared, IntPredicate kept) {
    int[] sharing = IntStream.range(0, rows.length).filter(i -> rows[i].length == 0).toArray();
    double[] weights = shared.together(k -> kept.test(sharing[k]));
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length > 0 && kept.test(i)) {
        times(weights, rows[i]);
      }
    }
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum / weights.length;
  }

  private static void times(double[] weights, double[] row) {
    for (int cell = 0; cell < weights.length; cell++) {
      weights[cell] *= row[cell];
    }
  }

  private static List<Conflict> conflicts(
      List<? extends SoilEvidence> evidence, double[][] rows, SharedPlasticity shared) {
    List<Conflict> conflicts = new ArrayList<>();
    if (evidence.size() < 2) {
      return conflicts;
    }
    double all = evidenceOf(rows, shared, i -> true);
    for (int i = 0; i < evidence.size(); i++) {
      int one = i;
      double support =
          all / (evidenceOf(rows, shared, k -> k != one) * evidenceOf(rows, shared, k -> k == one));
      if (support < CONFLICT) {
        String label = evidence.get(i).label();
        conflicts.add(
            new Conflict(
                label,
                support,
                label
                    + ": the other tests make this "
                    + Numbers.significant(1 / support, 2)
                    + " times less likely than for a soil of which nothing is known. Repeat it on"
                    + " a fresh sample; until then the wider range stands."));
      }
    }
    return conflicts;
  }
}
