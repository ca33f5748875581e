package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Do the ranges hold the truth as often as they claim, and how often is a verdict wrong? Virtual
 * soils, even over the triangle, are tested with the scatter that the tests state: hands that feel
 * the plasticity of one mineral in every test, limits and shrinkage that it shifts as well, jars
 * whose clay sinks in flocs, jars that are still cloudy at the last mark. Jars are settled here
 * grain by grain. The build takes 100 soils of each kind, the long run 2000 of each.
 */
class CoverageTest {

  private static final int SOILS = 100;
  private static final int MANY = 2000;
  private static final double[] LEVELS = {0.5, 0.9, 0.95};

  /** Floors are judged by the share of clay from here. */
  private static final double LEAST = SoilUse.FLOOR.leastClay();

  /** As a verdict on a floor is given, for a soil without stones or a shrinkage bar. */
  private static final MixLimits FLOOR =
      new MixLimits(
          LEAST,
          SoilUse.FLOOR.greatestClay(),
          SoilUse.FLOOR.greatestSilt(),
          SoilUse.FLOOR.greatestShrinkage(),
          1,
          Optional.empty());

  private static final double SOIL = 200;
  private static final double DEPTH = 0.2;

  private final Random random = new Random(20261128);

  private enum Kind {
    /** Five tests by feel that err together. */
    FELT,
    /** The same with a dispersed jar. */
    FELT_AND_JAR,
    /** A shrinkage bar and limits that err together by the mineral. */
    MEASURED,
    /** Five tests by feel, a shrinkage bar and limits of one mineral. */
    FELT_AND_MEASURED,
    /** The same, and a dispersed jar. */
    ALL,
    /** A jar without dispersant: 30 to 90 % of the clay sinks in flocs. */
    FLOCS,
    /** A dispersed jar; every third is still cloudy at the last mark. */
    CLOUDY,
    /** A jar in flocs whose layers are as sharp as those who read the marks straight take them. */
    SHARP
  }

  /** How often the central ranges of the clay held the truth, and what the verdicts were worth. */
  private record Tally(double[] held, int given, int wrong, int soils) {

    double wrongShare() {
      return given == 0 ? 0 : (double) wrong / given;
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void rangesHoldAndVerdictsAreSeldomWrong(Kind kind, TestReporter reporter) {
    check(kind, SOILS, reporter);
  }

  @Tag("soak")
  @ParameterizedTest
  @EnumSource(Kind.class)
  void rangesHoldOverManySoils(Kind kind, TestReporter reporter) {
    check(kind, MANY, reporter);
  }

  private void check(Kind kind, int soils, TestReporter reporter) {
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
    reporter.publishEntry(said);
    for (int i = 0; i < LEVELS.length; i++) {
      // Three points, and twice the standard deviation of a share counted in as many soils.
      double slack = 0.03 + 2 * Math.sqrt(LEVELS[i] * (1 - LEVELS[i]) / soils);
      assertThat(tally.held()[i]).as(said).isGreaterThan(LEVELS[i] - slack);
      assertThat(tally.held()[i]).as(said).isLessThan(LEVELS[i] + slack);
    }
    assertThat(tally.wrongShare()).as(said).isLessThan(1 - Suitability.REQUIRED);
  }

  private Tally tally(Kind kind, int soils) {
    double[] held = new double[LEVELS.length];
    int given = 0;
    int wrong = 0;
    for (int i = 0; i < soils; i++) {
      double a = random.nextDouble();
      double b = random.nextDouble();
      Texture truth = Texture.ofClayAndSand(Math.min(a, b), 1 - Math.max(a, b));
      TexturePosterior texture = SoilAssessment.texture(made(kind, truth));
      double below = texture.probabilityOfClay(0, truth.clayRatio());
      for (int k = 0; k < LEVELS.length; k++) {
        if (Math.abs(below - 0.5) <= LEVELS[k] / 2) {
          held[k] += 1.0 / soils;
        }
      }
      MixLimits.Chances chances = FLOOR.chances(texture);
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
      case FELT -> felt(truth, random.nextGaussian());
      case FELT_AND_JAR -> {
        List<SoilEvidence> tests = new ArrayList<>(felt(truth, random.nextGaussian()));
        tests.add(jar(truth, 0, afloat(), random.nextDouble()));
        yield tests;
      }
      case MEASURED -> measured(truth, random.nextGaussian());
      case FELT_AND_MEASURED -> plastic(truth);
      case ALL -> {
        List<SoilEvidence> tests = new ArrayList<>(plastic(truth));
        tests.add(jar(truth, 0, afloat(), random.nextDouble()));
        yield tests;
      }
      case FLOCS -> List.of(jar(truth, flocs(), 0, random.nextDouble()));
      case CLOUDY -> List.of(jar(truth, 0, afloat(), random.nextDouble()));
      case SHARP -> List.of(jar(truth, flocs(), 0, 0));
    };
  }

  private double flocs() {
    return 0.3 + 0.6 * random.nextDouble();
  }

  private double afloat() {
    return random.nextInt(3) > 0 ? 0 : random.nextDouble();
  }

  private List<SoilEvidence> plastic(Texture truth) {
    double mineral = random.nextGaussian();
    List<SoilEvidence> tests = new ArrayList<>(felt(truth, mineral));
    tests.addAll(measured(truth, mineral));
    return tests;
  }

  /** A bar and limits: the mineral shifts the index of both, and each has its own error besides. */
  private List<SoilEvidence> measured(Texture truth, double mineral) {
    double usual = ConsistencyLimits.expectedIndex(truth.clayRatio(), truth.siltRatio());
    double index = usual * Math.exp(SharedPlasticity.INDEX_DEVIATION * mineral);
    double bar =
        random.nextDouble() < 0.05
            ? Math.exp(-5 * random.nextDouble())
            : index * Math.exp(0.3 * random.nextGaussian());
    double limits =
        random.nextDouble() < 0.04
            ? Math.exp(-4 * random.nextDouble())
            : index * Math.exp(0.206 * random.nextGaussian());
    double gap = Math.min(0.4999, Math.max(0.0005 / 0.14, bar / 2.13)) * 0.14;
    return List.of(
        LinearShrinkage.ofGap(0.14, gap),
        new ConsistencyLimits(0.15 + Math.max(limits, 0.0051), 0.15));
  }

  private List<SoilEvidence> felt(Texture truth, double mineral) {
    double felt = Math.min(1, truth.clayRatio() * Math.exp(SharedPlasticity.DEVIATION * mineral));
    List<SoilEvidence> tests = new ArrayList<>();
    for (TestKind kind :
        List.of(TestKind.SQUEEZE, TestKind.DROP, TestKind.ROLL, TestKind.BEND, TestKind.RIBBON)) {
      tests.add(drawn(kind, felt, truth));
    }
    return tests;
  }

  /**
   * A jar of 200 g/L in 0.2 m of water, marked at the right minutes, in which grains of 300 sizes
   * sink one by one; part of the clay in flocs, part of what should float afloat at the last mark,
   * and of what began low only a part down before its time. Eight in a hundred mislead.
   */
  private JarTest jar(Texture truth, double flocs, double afloat, double early) {
    double factor = StrictMath.pow(1 - SOIL / JarTest.PARTICLE_DENSITY, 4.65);
    double[] times = {due(0.05e-3) / factor, due(0.002e-3) / factor, 172800};
    double[] clay = new double[3];
    double[] height = new double[3];
    for (int i = 0; i < 3; i++) {
      double fallen = 0.05e-3 * Math.sqrt(times[0] / times[i]);
      clay[i] = down(0.2e-6, 2e-6, fallen, early);
      height[i] =
          truth.siltRatio() * down(2e-6, 0.05e-3, fallen, early) / 1080
              + truth.sandRatio() * down(0.05e-3, 2e-3, fallen, early) / 1520;
    }
    clay[0] = (1 - flocs) * clay[0] + flocs * early / 3;
    clay[1] = (1 - flocs) * clay[1] + flocs;
    clay[2] = 1 - afloat * (1 - clay[2]);
    for (int i = 0; i < 3; i++) {
      height[i] += truth.clayRatio() * clay[i] / 450;
    }
    double total = Math.max(0.01, height[2] * SOIL * DEPTH);
    double deviation = Math.sqrt(0.05 * 0.05 + 0.0015 * 0.0015 / (total * total));
    double first = seen(height[0] / height[2], deviation);
    double second = seen(height[1] / height[2], deviation);
    if (random.nextDouble() < 0.08) {
      double a = random.nextDouble();
      double b = random.nextDouble();
      first = Math.min(a, b);
      second = Math.max(a, b);
    }
    return new JarTest(
        total * first,
        total * Math.max(first, second),
        total,
        DEPTH,
        20,
        flocs == 0,
        List.of(JarTiming.measured(times[0], times[1], times[2])));
  }

  private double seen(double share, double deviation) {
    return Math.min(1, Math.max(0, share + deviation * random.nextGaussian()));
  }

  private static double due(double diameter) {
    return Stokes.settlingTime(DEPTH, diameter, 20, JarTest.PARTICLE_DENSITY);
  }

  /** Speed goes with the square of the size: so high above the bottom may a grain have begun. */
  private static double down(double from, double to, double fallen, double early) {
    double sum = 0;
    for (int i = 0; i < 100; i++) {
      double size = from * StrictMath.pow(to / from, (i + 0.5) / 100);
      double reach = size * size / (fallen * fallen);
      sum += reach >= 1 ? 1 : early * reach;
    }
    return sum / 100;
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
