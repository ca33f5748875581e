package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/** Settled heights at the three marks of a jar as linear functions of the three shares. */
final class JarLayers {

  /** Dry density of freshly settled, always submerged layers, kg/m3. */
  record Settled(double clay, double silt, double sand, Source source) {}

  /** Two published sets; 26 against 30 lb/ft3 for clay shows the spread. */
  static final List<Settled> SETS =
      List.of(
          new Settled(
              481,
              1041,
              1490,
              Source.fromMemory(
                  "Lane and Koelzer",
                  "Density of Sediments Deposited in Reservoirs",
                  "1943",
                  "always submerged: 30, 65, 93 lb/ft3")),
          new Settled(
              416,
              1121,
              1554,
              Source.fromMemory(
                  "Lara and Pemberton",
                  "Initial Unit Weight of Deposited Sediments",
                  "1963",
                  "always submerged: 26, 70, 97 lb/ft3")));

  private static final int LAST = 2;

  /** Two points that stand for a part which may be anything from none to all (Gauss, Legendre). */
  private static final double[] ANY_PART = {
    (1 - 1 / Math.sqrt(3)) / 2, (1 + 1 / Math.sqrt(3)) / 2,
  };

  /** Least and greatest part of the clay in flocs without a dispersant (common practice). */
  private static final double LEAST_FLOCS = 0.3;

  private static final double MOST_FLOCS = 0.9;

  /** Into how many the range of flocs is cut, each with two points. */
  private static final int FLOC_CELLS = 2;

  /** Greatest part of the flocs that is down at the sand mark already (common practice). */
  private static final double MOST_EARLY_FLOCS = 1 / 3.0;

  /**
   * Probability that a dispersed jar is clear at its last mark, as it should be (common practice).
   */
  private static final double CLEAR = 2 / 3.0;

  private final double weight;
  private final double[] clay = new double[3];
  private final double[] silt = new double[3];
  private final double[] sand = new double[3];

  /**
   * How a jar may have settled.
   *
   * @param early how much of what began low has come down before its size is due, and how much of
   *     the soil hinders sand that sinks: 1 from water stirred evenly in which all of it stays, 0
   *     for layers as sharp as those who read the marks straight take them
   * @param flocs part of the clay that sinks in flocs, which are down at the silt mark
   * @param afloat part of the clay that by Stokes' law alone is up at the last mark and still is
   */
  private record Sinking(double early, double flocs, double afloat) {}

  private JarLayers(JarTest jar, JarTiming timing, Settled set, Sinking sinks, double weight) {
    this.weight = weight;
    double[] times = {timing.sandTime(), timing.siltTime(), timing.totalTime()};
    for (int i = 0; i < times.length; i++) {
      double d = jar.smallestSettled(times[i], 1);
      // Sand is the first to leave the water, and what has left it hinders no more.
      double coarse = jar.smallestSettled(times[i], sinks.early);
      clay[i] = clayDown(i, d, sinks) / set.clay();
      silt[i] = down(GrainSizes.CLAY_TO, GrainSizes.SILT_TO, d, sinks) / set.silt();
      sand[i] = down(GrainSizes.SILT_TO, GrainSizes.SAND_TO, coarse, sinks) / set.sand();
    }
  }

  private static double clayDown(int mark, double justFallen, Sinking sinks) {
    double singly = down(GrainSizes.CLAY_FROM, GrainSizes.CLAY_TO, justFallen, sinks);
    return switch (mark) {
      case 0 -> (1 - sinks.flocs) * singly + sinks.flocs * sinks.early * MOST_EARLY_FLOCS;
      case LAST -> 1 - sinks.afloat * (1 - singly);
      default -> (1 - sinks.flocs) * singly + sinks.flocs;
    };
  }

  private static double down(double from, double to, double justFallen, Sinking sinks) {
    return GrainSizes.settled(from, to, justFallen, sinks.early);
  }

  /** All readings that the doubt of a jar is averaged over; their weights add to one. */
  static JarLayers[] readings(JarTest jar) {
    List<Sinking> ways = jar.dispersed() ? singly() : inFlocs();
    double each = 1.0 / (jar.timings().size() * SETS.size());
    List<JarLayers> list = new ArrayList<>();
    for (JarTiming timing : jar.timings()) {
      for (Settled set : SETS) {
        for (Sinking way : ways) {
          list.add(new JarLayers(jar, timing, set, way, each * odds(jar, way)));
        }
      }
    }
    return list.toArray(new JarLayers[0]);
  }

  private static double odds(JarTest jar, Sinking way) {
    if (!jar.dispersed()) {
      return 1.0 / (FLOC_CELLS * ANY_PART.length * ANY_PART.length);
    }
    return way.afloat == 0
        ? CLEAR / ANY_PART.length
        : (1 - CLEAR) / (ANY_PART.length * ANY_PART.length);
  }

  private static List<Sinking> singly() {
    List<Sinking> ways = new ArrayList<>();
    for (double early : ANY_PART) {
      ways.add(new Sinking(early, 0, 0));
      for (double afloat : ANY_PART) {
        ways.add(new Sinking(early, 0, afloat));
      }
    }
    return ways;
  }

  private static List<Sinking> inFlocs() {
    List<Sinking> ways = new ArrayList<>();
    double width = (MOST_FLOCS - LEAST_FLOCS) / FLOC_CELLS;
    for (int cell = 0; cell < FLOC_CELLS; cell++) {
      for (double part : ANY_PART) {
        for (double early : ANY_PART) {
          ways.add(new Sinking(early, LEAST_FLOCS + width * (cell + part), 0));
        }
      }
    }
    return ways;
  }

  /** Probability of this reading. */
  double weight() {
    return weight;
  }

  /** Height for one kilogram of soil on one square metre, in metres, at mark 0, 1 or 2. */
  double heightAt(int mark, double clayRatio, double siltRatio, double sandRatio) {
    return clay[mark] * clayRatio + silt[mark] * siltRatio + sand[mark] * sandRatio;
  }
}
