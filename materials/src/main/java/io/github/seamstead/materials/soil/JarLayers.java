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

  private final double[] clay = new double[3];
  private final double[] silt = new double[3];
  private final double[] sand = new double[3];

  /** How the clay is taken to have sunk. */
  private enum ClaySinks {
    /** Grain by grain, of all sizes alike; what floats at the last mark floats. */
    SINGLY,
    /** Grain by grain, all down at the last mark. */
    SINGLY_TO_THE_END,
    /** All too fine to be down at the silt mark, down at the last. */
    FINE
  }

  /** Part of the clay in flocs without a dispersant: 30 to 90 % (common practice). */
  private static final double[] FLOC_SHARES = {0.3, 0.5, 0.7, 0.9};

  /** Part of the flocs that is down at the sand mark already: none to a third. */
  private static final double[] EARLY_FLOCS = {0, 1 / 3.0};

  private JarLayers(JarTest jar, JarTiming timing, Settled set, ClaySinks sinks) {
    double[] times = {timing.sandSeconds(), timing.siltSeconds(), timing.totalSeconds()};
    for (int i = 0; i < times.length; i++) {
      double d = jar.smallestSettled(times[i]);
      clay[i] = GrainSizes.settled(GrainSizes.CLAY_FROM, GrainSizes.CLAY_TO, d) / set.clay();
      silt[i] = GrainSizes.settled(GrainSizes.CLAY_TO, GrainSizes.SILT_TO, d) / set.silt();
      sand[i] = GrainSizes.settled(GrainSizes.SILT_TO, GrainSizes.SAND_TO, d) / set.sand();
    }
    if (sinks == ClaySinks.FINE) {
      clay[0] = 0;
      clay[1] = 0;
    }
    if (sinks != ClaySinks.SINGLY) {
      clay[LAST] = 1 / set.clay();
    }
  }

  /** The same with a part of the clay in flocs, which are down at the silt mark. */
  private JarLayers(JarTest jar, JarTiming timing, Settled set, double flocs, double early) {
    this(jar, timing, set, ClaySinks.SINGLY_TO_THE_END);
    clay[0] = (1 - flocs) * clay[0] + flocs * early / set.clay();
    clay[1] = (1 - flocs) * clay[1] + flocs / set.clay();
  }

  /** All readings that the doubt of a jar is averaged over. */
  static JarLayers[] readings(JarTest jar) {
    List<JarLayers> list = new ArrayList<>();
    for (JarTiming timing : jar.timings()) {
      for (Settled set : SETS) {
        if (jar.dispersed()) {
          for (ClaySinks sinks : ClaySinks.values()) {
            list.add(new JarLayers(jar, timing, set, sinks));
          }
          continue;
        }
        for (double flocs : FLOC_SHARES) {
          for (double early : EARLY_FLOCS) {
            list.add(new JarLayers(jar, timing, set, flocs, early));
          }
        }
      }
    }
    return list.toArray(new JarLayers[0]);
  }

  /** Height for one kilogram of soil on one square metre, in metres, at mark 0, 1 or 2. */
  double heightAt(int mark, double clayRatio, double siltRatio, double sandRatio) {
    return clay[mark] * clayRatio + silt[mark] * siltRatio + sand[mark] * sandRatio;
  }
}
