package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Do the ranges hold the truth as often as they claim, and how often is a verdict wrong? Virtual
 * soils, even over the triangle, are tested with the scatter that the tests state: hands that feel
 * the plasticity of one mineral in every test, jars whose clay sinks in flocs, jars that are still
 * cloudy at the last mark. The build takes 200 soils, 50 of each kind, the long run 2000.
 */
class CoverageTest {

  private static final int SOILS = 50;
  private static final int MANY = 500;
  private static final double[] LEVELS = {0.5, 0.9, 0.95};

  /** Floors are judged by the share of clay from here. */
  private static final double LEAST = SoilUse.FLOOR.leastClay();

  private final Random random = new Random(20261128);

  private enum Kind {
    /** Five tests by feel that err together. */
    FELT,
    /** The same with a dispersed jar. */
    FELT_AND_JAR,
    /** A jar without dispersant: 30 to 90 % of the clay sinks in flocs. */
    FLOCS,
    /** A dispersed jar, half of them with up to half of the clay still afloat at the last mark. */
    TURBID
  }

  /** How often the central ranges of the clay held the truth, and what the verdicts were worth. */
  private record Tally(double[] held, int given, int wrong, int soils) {

    double wrongShare() {
      return given == 0 ? 0 : (double) wrong / given;
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void rangesHoldAndVerdictsAreSeldomWrong(Kind kind) {
    check(kind, SOILS);
  }

  @Tag("soak")
  @ParameterizedTest
  @EnumSource(Kind.class)
  void rangesHoldOverManySoils(Kind kind) {
    check(kind, MANY);
  }

  private void check(Kind kind, int soils) {
    Tally tally = tally(kind, soils);
    String said =
        kind
            + ": 50 / 90 / 95 % ranges hold "
            + Arrays.stream(tally.held())
                .mapToObj(held -> Numbers.fixed(100 * held, 1) + " %")
                .collect(Collectors.joining(", "))
            + "; "
            + tally.given()
            + " of "
            + soils
            + " verdicts given, wrong "
            + Numbers.fixed(100 * tally.wrongShare(), 1)
            + " %";
    for (int i = 0; i < LEVELS.length; i++) {
      // Three points, and twice the standard deviation of a share counted in as many soils.
      double slack = 0.03 + 2 * Math.sqrt(LEVELS[i] * (1 - LEVELS[i]) / soils);
      assertThat(tally.held()[i]).as(said).isGreaterThan(LEVELS[i] - slack);
      assertThat(tally.held()[i]).as(said).isLessThan(widest(kind, i) + slack);
    }
    assertThat(tally.wrongShare()).as(said).isLessThan(1 - Suitability.REQUIRED);
  }

  /** What the ranges may hold at most; a jar allows for more ways of sinking than it has. */
  private static double widest(Kind kind, int level) {
    return kind == Kind.FELT ? LEVELS[level] : 1;
  }

  private Tally tally(Kind kind, int soils) {
    double[] held = new double[LEVELS.length];
    int given = 0;
    int wrong = 0;
    for (int i = 0; i < soils; i++) {
      double a = random.nextDouble();
      double b = random.nextDouble();
      Texture truth = Texture.ofClayAndSand(Math.min(a, b), 1 - Math.max(a, b));
      SoilFinding finding = SoilAssessment.assess(made(kind, truth));
      double below = finding.texture().probabilityOfClay(0, truth.clayRatio());
      for (int k = 0; k < LEVELS.length; k++) {
        if (Math.abs(below - 0.5) <= LEVELS[k] / 2) {
          held[k] += 1.0 / soils;
        }
      }
      // As Suitability judges, but without its search for the next test, which costs most.
      MixLimits.Chances chances =
          MixLimits.of(finding, SoilUse.FLOOR, LEAST, SoilUse.FLOOR.greatestClay())
              .chances(finding.texture());
      if (chances.asItIs() + chances.withSand() >= Suitability.REQUIRED) {
        given++;
        wrong += truth.clayRatio() < LEAST ? 1 : 0;
      } else if (chances.lean() >= Suitability.REQUIRED) {
        given++;
        wrong += truth.clayRatio() >= LEAST ? 1 : 0;
      }
    }
    return new Tally(held, given, wrong, soils);
  }

  private List<SoilEvidence> made(Kind kind, Texture truth) {
    return switch (kind) {
      case FELT -> felt(truth);
      case FELT_AND_JAR -> {
        List<SoilEvidence> tests = new ArrayList<>(felt(truth));
        tests.add(jar(truth, 0, 0, true));
        yield tests;
      }
      case FLOCS -> List.of(jar(truth, 0.3 + 0.6 * random.nextDouble(), 0, false));
      case TURBID ->
          List.of(jar(truth, 0, random.nextBoolean() ? 0 : 0.5 * random.nextDouble(), true));
    };
  }

  private List<SoilEvidence> felt(Texture truth) {
    double felt =
        Math.min(
            1, truth.clayRatio() * Math.exp(SharedPlasticity.DEVIATION * random.nextGaussian()));
    List<SoilEvidence> tests = new ArrayList<>();
    for (TestKind kind :
        List.of(TestKind.SQUEEZE, TestKind.DROP, TestKind.ROLL, TestKind.BEND, TestKind.RIBBON)) {
      tests.add(drawn(kind, felt, truth));
    }
    return tests;
  }

  /** A jar with part of the clay down before the silt mark, and part afloat at the last. */
  private JarTest jar(Texture truth, double flocs, double afloat, boolean dispersed) {
    double clay = truth.clayRatio() / 450;
    double silt = truth.siltRatio() / 1080;
    double sand = truth.sandRatio() / 1520;
    double total = (1 - afloat) * clay + silt + sand;
    double last = Math.max(0, 1 - flocs - afloat) * clay;
    double first = sand / total + 0.05 * random.nextGaussian();
    double second = 1 - last / total + 0.05 * random.nextGaussian();
    first = Math.min(1, Math.max(0, first));
    second = Math.min(1, Math.max(first, second));
    return new JarTest(
        0.08 * first,
        0.08 * second,
        0.08,
        0.2,
        20,
        dispersed,
        List.of(JarTiming.measured(140, 140 * 625, 4e5)));
  }

  /** An outcome drawn by the test's own likelihood. */
  private SoilEvidence drawn(TestKind kind, double clay, Texture truth) {
    List<SoilEvidence> outcomes = kind.outcomes();
    double[] chances = new double[outcomes.size()];
    double sum = 0;
    double rest = (1 - clay) / Math.max(1e-9, 1 - truth.clayRatio());
    for (int i = 0; i < chances.length; i++) {
      chances[i] =
          outcomes.get(i).likelihood().at(clay, truth.siltRatio() * rest, truth.sandRatio() * rest);
      sum += chances[i];
    }
    double left = random.nextDouble() * sum;
    int i = 0;
    while (i < chances.length - 1 && left > chances[i]) {
      left -= chances[i];
      i++;
    }
    return outcomes.get(i);
  }
}
