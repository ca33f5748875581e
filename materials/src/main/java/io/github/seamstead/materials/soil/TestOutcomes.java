package io.github.seamstead.materials.soil;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How likely each outcome of a test is in each texture. That depends on no soil and is dear to
 * calculate, so it is kept: for each kind of test at most 1326 textures, together a few megabytes.
 * Thread-safe.
 */
final class TestOutcomes {

  /** Steps of 2 % of mass. */
  static final TextureGrid GRID = new TextureGrid(50);

  private static final Map<TestKind, TestOutcomes> KEPT = new ConcurrentHashMap<>();

  private final int count;
  private final List<TextureLikelihood> alone;
  private final List<SharedPlasticity.Seen> byMineral;
  private final Map<Integer, double[]> known = new ConcurrentHashMap<>();

  private TestOutcomes(List<SoilEvidence> outcomes) {
    boolean shares = SharedPlasticity.shares(outcomes.get(0));
    count = outcomes.size();
    alone = shares ? List.of() : outcomes.stream().map(SoilEvidence::likelihood).toList();
    byMineral =
        shares
            ? outcomes.stream().map(outcome -> new SharedPlasticity.Seen(outcome, GRID)).toList()
            : List.of();
  }

  static TestOutcomes of(TestKind kind) {
    return KEPT.computeIfAbsent(kind, k -> new TestOutcomes(k.outcomes()));
  }

  /** How many outcomes there are. */
  int count() {
    return count;
  }

  /**
   * Gives the probability of each outcome.
   *
   * @param cell a cell of {@link #GRID}
   * @param shared what other tests of this soil tell of its minerals
   * @return they add to one; not to be changed
   */
  double[] in(int cell, SharedPlasticity shared) {
    return byMineral.isEmpty()
        ? known.computeIfAbsent(cell, this::alone)
        : byMineral(shared.minerals(cell), cell);
  }

  private double[] alone(int cell) {
    double[] likelihoods = new double[count];
    for (int k = 0; k < count; k++) {
      likelihoods[k] = alone.get(k).at(GRID.clay(cell), GRID.silt(cell), GRID.sand(cell));
    }
    return addTo(new double[count], likelihoods, 1);
  }

  private double[] byMineral(double[] minerals, int cell) {
    double[] sums = new double[count];
    double[] here = new double[count];
    for (int mineral = 0; mineral < minerals.length; mineral++) {
      for (int k = 0; k < count; k++) {
        here[k] = byMineral.get(k).at(cell, mineral);
      }
      addTo(sums, here, minerals[mineral]);
    }
    return sums;
  }

  /** Adds likelihoods, scaled to a sum, to what is there. */
  private static double[] addTo(double[] sums, double[] likelihoods, double sum) {
    double all = 0;
    for (double likelihood : likelihoods) {
      all += likelihood;
    }
    for (int k = 0; k < sums.length; k++) {
      sums[k] += likelihoods[k] / all * sum;
    }
    return sums;
  }
}
