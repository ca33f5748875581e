package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Does the test that is recommended lower the variance of the clay more for its minutes than any
 * other? The oracle sums over the texture, the mineral that all tests of plasticity share, and all outcomes with a
 * quadrature of its own. The build takes 20 states of knowledge, the long run 200.
 */
class NextTestTest {

  private static final int STEPS = 24;
  private static final int MINERALS = 21;

  /** The recommendation is made on another grid, so near draws may fall either way. */
  private static final double NEAR = 0.93;

  private final Random random = new Random(20261129);

  @Test
  void theRecommendedTestTellsMostForItsMinutes() {
    check(20);
  }

  @Tag("soak")
  @Test
  void theRecommendedTestTellsMostInManyStates() {
    check(200);
  }

  private void check(int states) {
    int best = 0;
    for (int i = 0; i < states; i++) {
      List<SoilEvidence> made = made();
      NextTest recommended = NextTest.rank(SoilAssessment.assess(made)).get(0);
      State state = new State(made);
      List<TestKind> open = new ArrayList<>();
      for (TestKind kind : TestKind.values()) {
        if (made.stream().noneMatch(kind::done)) {
          open.add(kind);
        }
      }
      TestKind first = open.stream().max(Comparator.comparingDouble(state::rate)).orElseThrow();
      best += first == recommended.kind() ? 1 : 0;
      assertThat(state.rate(recommended.kind()))
          .as("after %s: %s, but %s", made, recommended.kind(), first)
          .isGreaterThanOrEqualTo(NEAR * state.rate(first));
    }
    assertThat(best)
        .as("recommended first, of %s states", states)
        .isGreaterThanOrEqualTo((int) (0.9 * states));
  }

  /** One to three tests of a soil drawn evenly over the triangle. */
  private List<SoilEvidence> made() {
    double a = random.nextDouble();
    double b = random.nextDouble();
    Texture truth = Texture.ofClayAndSand(Math.min(a, b), 1 - Math.max(a, b));
    List<TestKind> kinds =
        new ArrayList<>(
            List.of(
                TestKind.SQUEEZE,
                TestKind.DROP,
                TestKind.ROLL,
                TestKind.BEND,
                TestKind.RIBBON,
                TestKind.WASH,
                TestKind.SHRINKAGE,
                TestKind.JAR));
    List<SoilEvidence> made = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      made.add(likely(kinds.remove(random.nextInt(kinds.size())), truth));
    }
    return made;
  }

  private SoilEvidence likely(TestKind kind, Texture truth) {
    List<SoilEvidence> outcomes = kind.outcomes();
    double[] chances = outcomes.stream().mapToDouble(o -> at(o, truth)).toArray();
    double left = random.nextDouble() * Arrays.stream(chances).sum();
    int i = 0;
    while (i < chances.length - 1 && left > chances[i]) {
      left -= chances[i];
      i++;
    }
    return outcomes.get(i);
  }

  private static double at(SoilEvidence outcome, Texture truth) {
    return outcome.likelihood().at(truth.clayRatio(), truth.siltRatio(), truth.sandRatio());
  }

  /** What is known: a weight for each texture and mineral. */
  private static final class State {

    private final TextureGrid grid = new TextureGrid(STEPS);
    private final double[][] weights = new double[grid.size()][MINERALS];

    State(List<SoilEvidence> made) {
      List<TextureLikelihood> seen =
          made.stream()
              .filter(test -> !SharedPlasticity.shares(test))
              .map(SoilEvidence::likelihood)
              .toList();
      List<SoilEvidence> plastic = made.stream().filter(SharedPlasticity::shares).toList();
      for (int cell = 0; cell < weights.length; cell++) {
        double known = 1;
        for (TextureLikelihood test : seen) {
          known *= test.at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
        }
        for (int m = 0; m < MINERALS; m++) {
          double z = z(m);
          weights[cell][m] = known * Math.exp(-z * z / 2);
          for (SoilEvidence test : plastic) {
            weights[cell][m] *= seen(test, cell, z);
          }
        }
      }
    }

    private static double z(int mineral) {
      return -4 + 8.0 * mineral / (MINERALS - 1);
    }

    /** Chance of what a test of plasticity shows, for a mineral. */
    private double seen(SoilEvidence test, int cell, double z) {
      double clay = grid.clay(cell);
      if (test instanceof LinearShrinkage bar) {
        double usual =
            ConsistencyLimits.expectedIndex(clay, grid.silt(cell)) / 2.13 * Math.exp(0.4 * z);
        double off = Math.log(bar.ratio() / usual) / 0.3;
        return 0.95 * Math.exp(-off * off / 2) / (0.3 * Math.sqrt(2 * Math.PI)) + 0.05 / 5;
      }
      double felt = Math.min(1, clay * Math.exp(SharedPlasticity.DEVIATION * z));
      return ((ClayLikelihood) test.likelihood()).ofClay(felt);
    }

    /** Expected cut of the variance of the clay, for each second of effort. */
    double rate(TestKind kind) {
      List<SoilEvidence> outcomes = kind.outcomes();
      List<TextureLikelihood> likelihoods =
          outcomes.stream().map(SoilEvidence::likelihood).toList();
      boolean plastic = SharedPlasticity.shares(outcomes.get(0));
      int count = outcomes.size();
      double[] probability = new double[count];
      double[] clay = new double[count];
      double all = 0;
      double mean = 0;
      double square = 0;
      double[] chances = new double[count];
      for (int cell = 0; cell < weights.length; cell++) {
        double c = grid.clay(cell);
        int place = cell;
        if (!plastic) {
          chances(i -> at(likelihoods.get(i), place), chances);
        }
        for (int m = 0; m < MINERALS; m++) {
          double w = weights[cell][m];
          if (plastic && w > 0) {
            double z = z(m);
            chances(i -> seen(outcomes.get(i), place, z), chances);
          }
          all += w;
          mean += w * c;
          square += w * c * c;
          for (int i = 0; i < count; i++) {
            probability[i] += w * chances[i];
            clay[i] += w * chances[i] * c;
          }
        }
      }
      mean /= all;
      double variance = square / all - mean * mean;
      double between = 0;
      for (int i = 0; i < count; i++) {
        if (probability[i] > 0) {
          double after = clay[i] / probability[i];
          between += probability[i] / all * (after - mean) * (after - mean);
        }
      }
      return between / variance / kind.effortSeconds();
    }

    private double at(TextureLikelihood likelihood, int cell) {
      return likelihood.at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
    }

    private static void chances(IntToDoubleFunction likelihood, double[] chances) {
      double sum = 0;
      for (int i = 0; i < chances.length; i++) {
        chances[i] = likelihood.applyAsDouble(i);
        sum += chances[i];
      }
      for (int i = 0; i < chances.length; i++) {
        chances[i] /= sum;
      }
    }
  }
}
