package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
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

  private final double[] clay = new double[3];
  private final double[] silt = new double[3];
  private final double[] sand = new double[3];

  JarLayers(JarTest jar, JarTiming timing, Settled set) {
    double[] times = {timing.sandSeconds(), timing.siltSeconds(), timing.totalSeconds()};
    for (int i = 0; i < times.length; i++) {
      double d =
          Stokes.smallestSettled(
              jar.fallMetres(), times[i], jar.celsius(), JarTest.PARTICLE_DENSITY);
      clay[i] = GrainSizes.settled(GrainSizes.CLAY_FROM, GrainSizes.CLAY_TO, d) / set.clay();
      silt[i] = GrainSizes.settled(GrainSizes.CLAY_TO, GrainSizes.SILT_TO, d) / set.silt();
      sand[i] = GrainSizes.settled(GrainSizes.SILT_TO, GrainSizes.SAND_TO, d) / set.sand();
    }
  }

  /** Height for one kilogram of soil on one square metre, in metres, at mark 0, 1 or 2. */
  double heightAt(int mark, double clayRatio, double siltRatio, double sandRatio) {
    return clay[mark] * clayRatio + silt[mark] * siltRatio + sand[mark] * sandRatio;
  }
}
