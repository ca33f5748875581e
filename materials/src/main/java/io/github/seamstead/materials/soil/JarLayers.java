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

  /**
   * Takes one reading of the jar.
   *
   * @param clayAllDown whether all clay is on the bottom at the last mark, as when it sank in flocs
   *     and the water is clear; else each grain sinks by itself, and the finest stays afloat
   */
  JarLayers(JarTest jar, JarTiming timing, Settled set, boolean clayAllDown) {
    double[] times = {timing.sandSeconds(), timing.siltSeconds(), timing.totalSeconds()};
    for (int i = 0; i < times.length; i++) {
      double d =
          Stokes.smallestSettled(
              jar.fallMetres(), times[i], jar.celsius(), JarTest.PARTICLE_DENSITY);
      clay[i] = GrainSizes.settled(GrainSizes.CLAY_FROM, GrainSizes.CLAY_TO, d) / set.clay();
      silt[i] = GrainSizes.settled(GrainSizes.CLAY_TO, GrainSizes.SILT_TO, d) / set.silt();
      sand[i] = GrainSizes.settled(GrainSizes.SILT_TO, GrainSizes.SAND_TO, d) / set.sand();
    }
    if (clayAllDown) {
      clay[LAST] = 1 / set.clay();
    }
  }

  /** All readings that the doubt of a jar is averaged over. */
  static JarLayers[] readings(JarTest jar) {
    List<JarLayers> list = new ArrayList<>();
    for (JarTiming timing : jar.timings()) {
      for (Settled set : SETS) {
        list.add(new JarLayers(jar, timing, set, true));
        if (jar.dispersed()) {
          list.add(new JarLayers(jar, timing, set, false));
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
