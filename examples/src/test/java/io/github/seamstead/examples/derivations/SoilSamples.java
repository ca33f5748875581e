package io.github.seamstead.examples.derivations;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.HydrometerTest;
import io.github.seamstead.materials.soil.LinearShrinkage;
import io.github.seamstead.materials.soil.PlasticityChart;
import io.github.seamstead.materials.soil.RibbonTest;
import io.github.seamstead.materials.soil.RockFragments;
import io.github.seamstead.materials.soil.SieveAnalysis;
import io.github.seamstead.materials.soil.SoilAssessment;
import io.github.seamstead.materials.soil.Stokes;
import java.util.List;

/** Soil tests. */
final class SoilSamples {

  private SoilSamples() {}

  static void addTo(Samples to) {
    to.add(
        "materials.soil.assessment",
        steps ->
            SoilAssessment.assess(
                    List.of(RibbonTest.ofLength(0.04), new BendTest(BendTest.Outcome.HALF_RING)),
                    steps)
                .texture()
                .clay()
                .value());
    to.add(
        "materials.soil.settling_time", steps -> Stokes.settlingTime(0.1, 2e-5, 20, 2650, steps));
    to.add(
        "materials.soil.smallest_settled_grain",
        steps -> Stokes.smallestSettled(0.1, 60, 20, 2650, steps));
    to.add(
        "materials.soil.hydrometer_diameter",
        steps -> HYDROMETER.diameter(HYDROMETER.readings().get(0), steps));
    to.add(
        "materials.soil.hydrometer_finer",
        steps -> HYDROMETER.finerRatio(HYDROMETER.readings().get(0), steps));
    to.add("materials.soil.sieve_analysis", steps -> last(SIEVES.finerRatios(steps)));
    to.add(
        "materials.soil.plasticity_chart",
        steps -> aboveLine(PlasticityChart.of(0.42, 0.2, steps)));
    to.add(
        "materials.soil.linear_shrinkage", steps -> LinearShrinkage.ofGap(0.6, 0.012).ratio(steps));
    to.add(
        "materials.soil.stones_by_volume",
        steps -> RockFragments.volumeRatio(0.2, 2650, 1300, steps));
  }

  private static final HydrometerTest HYDROMETER =
      new HydrometerTest(
          List.of(new HydrometerTest.Reading(60, 40), new HydrometerTest.Reading(3600, 25)),
          50,
          23,
          5,
          2650);
  private static final SieveAnalysis SIEVES =
      new SieveAnalysis(
          List.of(new SieveAnalysis.Sieve(0.004, 0.2), new SieveAnalysis.Sieve(0.002, 0.1)),
          0.7,
          true);

  private static double last(List<Double> values) {
    return values.get(values.size() - 1);
  }

  private static double aboveLine(PlasticityChart chart) {
    return chart.plasticityIndex() - chart.aLine();
  }
}
