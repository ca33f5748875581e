package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A test that a builder may do next, with its effort (hands-on minutes, common practice). */
public enum TestKind {
  /** Squeeze test. */
  SQUEEZE("squeeze test", 2, 0),
  /** Drop test. */
  DROP("drop test", 5, 0),
  /** Shine test. */
  SHINE("shine test", 4, 0),
  /** Wash test. */
  WASH("wash test", 3, 0),
  /** Roll test. */
  ROLL("roll test", 8, 0),
  /** Roll and bend test. */
  BEND("roll and bend test", 8, 0),
  /** Ribbon test. */
  RIBBON("ribbon test", 8, 0),
  /** Dry strength of pats. */
  DRY_STRENGTH("dry strength of pats", 10, 48),
  /** Jar test with times taken. */
  JAR("jar test with the times written down", 20, 48),
  /** Shrinkage bar. */
  SHRINKAGE("shrinkage bar in a short mould", 30, 96),
  /** Wash through a fine sieve. */
  SIEVE("washing through a 0.063 mm sieve", 60, 24),
  /** Laboratory sheet, with sampling and posting. */
  LABORATORY("laboratory sheet of clay, silt and sand", 90, 240);

  private static final double WAIT_SHARE = 0.02;

  private final String label;
  private final double minutes;
  private final double waitingHours;

  TestKind(String label, double minutes, double waitingHours) {
    this.label = label;
    this.minutes = minutes;
    this.waitingHours = waitingHours;
  }

  /**
   * Names the test.
   *
   * @return a few words
   */
  public String label() {
    return label;
  }

  /**
   * Gives the hands-on time.
   *
   * @return seconds
   */
  public double handsOnTime() {
    return minutes * 60;
  }

  /**
   * Gives the time until it can be read.
   *
   * @return seconds
   */
  public double waitingTime() {
    return waitingHours * 3600;
  }

  /**
   * Gives the effort that tests are compared by: hands-on time plus a fiftieth of the waiting.
   *
   * @return seconds
   */
  public double effort() {
    return handsOnTime() + WAIT_SHARE * waitingTime();
  }

  /** Whether a piece of evidence is of this kind, or tells the same and more. */
  boolean done(SoilEvidence evidence) {
    return switch (this) {
      case SQUEEZE -> evidence instanceof SqueezeTest;
      case DROP -> evidence instanceof DropTest;
      case SHINE -> evidence instanceof ShineTest;
      case WASH -> evidence instanceof WashTest;
      case ROLL -> evidence instanceof RollTest;
      case BEND -> evidence instanceof BendTest;
      case RIBBON -> evidence instanceof RibbonTest;
      case DRY_STRENGTH -> evidence instanceof DryStrengthTest;
      case JAR -> evidence instanceof JarTest;
      case SHRINKAGE ->
          evidence instanceof LinearShrinkage || evidence instanceof ConsistencyLimits;
      case SIEVE -> evidence instanceof SieveAnalysis;
      case LABORATORY ->
          evidence instanceof LaboratoryTexture || evidence instanceof HydrometerTest;
    };
  }

  /** What the test could show, as evidence; their likelihoods are scaled to one at each texture. */
  List<SoilEvidence> outcomes() {
    return switch (this) {
      case SQUEEZE -> all(Stream.of(SqueezeTest.Outcome.values()).map(SqueezeTest::new));
      case DROP -> all(Stream.of(DropTest.Outcome.values()).map(DropTest::new));
      case SHINE -> all(Stream.of(ShineTest.Outcome.values()).map(ShineTest::new));
      case WASH -> all(Stream.of(WashTest.Outcome.values()).map(WashTest::new));
      case ROLL ->
          all(Stream.of(0.007, 0.004, 0.003, 0.002, 0.0013, 0.001, 0.0005).map(RollTest::holding));
      case BEND -> all(Stream.of(BendTest.Outcome.values()).map(BendTest::new));
      case RIBBON ->
          all(IntStream.rangeClosed(0, 20).mapToObj(tens -> RibbonTest.ofLength(0.01 * tens)));
      case DRY_STRENGTH ->
          all(Stream.of(DryStrengthTest.Outcome.values()).map(DryStrengthTest::new));
      case JAR -> jars();
      case SHRINKAGE ->
          all(
              Stream.of(0.002, 0.004, 0.007, 0.012, 0.02, 0.035, 0.06, 0.1, 0.17, 0.29, 0.49)
                  .map(gap -> LinearShrinkage.ofGap(0.14, gap * 0.14)));
      case SIEVE -> sieves();
      case LABORATORY -> sheets();
    };
  }

  private static List<SoilEvidence> all(Stream<? extends SoilEvidence> outcomes) {
    return List.copyOf(outcomes.toList());
  }

  private static List<SoilEvidence> jars() {
    List<SoilEvidence> list = new ArrayList<>();
    JarTiming due = JarTiming.measured(60, 43000, 259200);
    for (int sand = 0; sand <= 8; sand++) {
      for (int silt = sand; silt <= 8; silt++) {
        list.add(new JarTest(0.01 * sand, 0.01 * silt, 0.08, 0.15, 20, true, List.of(due)));
      }
    }
    return list;
  }

  private static List<SoilEvidence> sieves() {
    List<SoilEvidence> list = new ArrayList<>();
    for (int pan = 0; pan <= 25; pan++) {
      list.add(
          new SieveAnalysis(
              List.of(
                  new SieveAnalysis.Sieve(0.002, 0),
                  new SieveAnalysis.Sieve(0.063e-3, 1 - 0.04 * pan)),
              0.04 * pan,
              true));
    }
    return list;
  }

  private static List<SoilEvidence> sheets() {
    List<SoilEvidence> list = new ArrayList<>();
    int steps = 20;
    for (int clay = 0; clay <= steps; clay++) {
      for (int sand = 0; sand <= steps - clay; sand++) {
        list.add(
            new LaboratoryTexture(
                Texture.ofClayAndSand((double) clay / steps, (double) sand / steps),
                0.025,
                SizeLimits.USDA));
      }
    }
    return list;
  }
}
