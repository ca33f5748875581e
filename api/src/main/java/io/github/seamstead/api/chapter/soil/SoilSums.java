package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.soil.ConsistencyLimits;
import io.github.seamstead.materials.soil.HydrometerTest;
import io.github.seamstead.materials.soil.JarTest;
import io.github.seamstead.materials.soil.PlasticityChart;
import io.github.seamstead.materials.soil.RockFragments;
import io.github.seamstead.materials.soil.SieveAnalysis;
import io.github.seamstead.materials.soil.SoilEvidence;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Optional;

/** Keeps the sums of a soil's tests. */
final class SoilSums {

  private SoilSums() {}

  static void record(Run run, SoilSample sample, SoilFinding finding) {
    sample
        .shrinkage()
        .ifPresent(
            bar ->
                run.worked(
                    "materials.soil.linear_shrinkage",
                    "Linear shrinkage of " + sample.id(),
                    SoilPlanner.shrinkage(bar)::ratio));
    for (SoilEvidence test : finding.evidence()) {
      record(run, sample.id(), test);
    }
  }

  private static void record(Run run, String id, SoilEvidence test) {
    if (test instanceof JarTest jar) {
      run.worked(
          "materials.soil.settling_time", "When the sand of " + id + " is down", jar::sandDue);
      run.worked(
          "materials.soil.smallest_settled_grain",
          "What of " + id + " is down at the silt mark",
          jar::settledAtSiltMark);
    } else if (test instanceof SieveAnalysis sieve) {
      run.worked("materials.soil.sieve_analysis", "Sieves of " + id, sieve::finerRatios);
    } else if (test instanceof HydrometerTest hydrometer) {
      HydrometerTest.Reading last = hydrometer.readings().get(hydrometer.readings().size() - 1);
      run.worked(
          "materials.soil.hydrometer_diameter",
          "Grain of the last hydrometer reading of " + id,
          steps -> hydrometer.diameter(last, steps));
      run.worked(
          "materials.soil.hydrometer_finer",
          "Share finer at the last hydrometer reading of " + id,
          steps -> hydrometer.finerRatio(last, steps));
    } else if (test instanceof ConsistencyLimits limits) {
      run.worked(
          "materials.soil.plasticity_chart",
          "Place of " + id + " in the plasticity chart",
          steps -> PlasticityChart.of(limits.liquidLimit(), limits.plasticLimit(), steps));
    }
  }

  static Optional<ConsistencyLimits> limits(SoilFinding finding) {
    return finding.evidence().stream()
        .filter(ConsistencyLimits.class::isInstance)
        .map(ConsistencyLimits.class::cast)
        .findFirst();
  }

  /** The word that stones add to the texture class; empty without stones measured, or with few. */
  static Optional<String> stoniness(Run run, String id, SoilFinding finding) {
    Optional<Double> gravel = finding.gravelRatio().map(Uncertain::value);
    if (gravel.isEmpty()) {
      return Optional.empty();
    }
    double volume =
        run.worked(
            "materials.soil.stones_by_volume",
            "Stones of " + id + " by volume",
            steps ->
                RockFragments.volumeRatio(
                    gravel.get(), RockFragments.STONE, RockFragments.FINE_EARTH, steps));
    return Optional.of(RockFragments.modifier(volume)).filter(word -> !word.isEmpty());
  }
}
