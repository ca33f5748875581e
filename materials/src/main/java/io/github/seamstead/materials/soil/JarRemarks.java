package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** Says which marks of a jar were made too early or too late, by Stokes' law. */
final class JarRemarks {

  private static final double SLACK = 1.15;

  private JarRemarks() {}

  static List<String> of(JarTest jar, JarTiming timing) {
    List<String> list = new ArrayList<>();
    String at =
        " ("
            + Numbers.significant(jar.fall() * 1000, 3)
            + " mm of water at "
            + Numbers.significant(jar.celsius(), 3)
            + " degC)";
    double sandGrain = grain(jar, timing.sandTime());
    double sandDue = due(jar, GrainSizes.SILT_TO);
    if (sandGrain > GrainSizes.SILT_TO * SLACK) {
      list.add(
          "Sand mark after "
              + time(timing.sandTime())
              + " is too early: sand down to 0.05 mm"
              + " needs "
              + time(sandDue)
              + at
              + ".");
    } else if (sandGrain < GrainSizes.SILT_TO / SLACK) {
      list.add(
          "Sand mark after "
              + time(timing.sandTime())
              + " is late: silt down to "
              + micrometres(sandGrain)
              + " lies in the sand layer; the due time is "
              + time(sandDue)
              + at
              + ".");
    }
    double siltGrain = grain(jar, timing.siltTime());
    double siltDue = due(jar, GrainSizes.CLAY_TO);
    if (siltGrain > GrainSizes.CLAY_TO * SLACK) {
      list.add(
          "Silt mark after "
              + time(timing.siltTime())
              + " is too early: only grains above "
              + micrometres(siltGrain)
              + " have fallen the whole depth, and silt down to 2"
              + " micrometres needs "
              + time(siltDue)
              + at
              + "; finer silt is above the mark and would be taken for clay.");
    }
    if (timing.totalTime() < siltDue) {
      list.add(
          "Last mark after "
              + time(timing.totalTime())
              + " is too early: even the silt needs "
              + time(siltDue)
              + at
              + "; the clay is still afloat.");
    }
    return list;
  }

  /** One sentence for a jar whose times were not written down. */
  static String ofUnknownTimes(JarTest jar) {
    double earliest = Double.POSITIVE_INFINITY;
    double latest = 0;
    for (JarTiming timing : jar.timings()) {
      earliest = Math.min(earliest, timing.siltTime());
      latest = Math.max(latest, timing.siltTime());
    }
    return "The times of the marks are not known; "
        + jar.timings().size()
        + " timings, with the silt mark after "
        + time(earliest)
        + " to "
        + time(latest)
        + ", are averaged. Here sand down to 0.05 mm needs "
        + time(due(jar, GrainSizes.SILT_TO))
        + " and silt down to 2 micrometres "
        + time(due(jar, GrainSizes.CLAY_TO))
        + ": shake the jar again and mark at those times.";
  }

  private static double grain(JarTest jar, double seconds) {
    return jar.smallestSettled(seconds, 1);
  }

  private static double due(JarTest jar, double diameter) {
    return Stokes.settlingTime(jar.fall(), diameter, jar.celsius(), JarTest.PARTICLE_DENSITY)
        / jar.settlingFactor();
  }

  private static String micrometres(double metres) {
    return Numbers.significant(metres * 1e6, 2) + " micrometres";
  }

  static String time(double seconds) {
    if (seconds < 100) {
      return Numbers.fixed(seconds, 0) + " s";
    }
    long minutes = Math.round(seconds / 60);
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
  }
}
