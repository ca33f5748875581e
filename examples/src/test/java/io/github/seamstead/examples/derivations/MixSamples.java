package io.github.seamstead.examples.derivations;

import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.Fibre;
import io.github.seamstead.materials.mix.GradingTarget;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.MixDesign;
import io.github.seamstead.materials.mix.MixTarget;
import io.github.seamstead.materials.mix.TrialOutcome;
import io.github.seamstead.materials.mix.TrialReading;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Map;

/** Mixes, trials and straw. */
final class MixSamples {

  private MixSamples() {}

  static void addTo(Samples to) {
    to.add(
        "materials.mix.clay_blend",
        steps ->
            ClayBlend.of(SOIL, SAND, ClayBand.FLOOR, BucketRounding.HALF, steps)
                .rounded()
                .clayRatio()
                .value());
    to.add(
        "materials.mix.design",
        steps ->
            MixDesign.solve(
                    List.of(SOIL, SAND), MixTarget.of(ClayBand.FLOOR), BucketRounding.NONE, steps)
                .clayRatio());
    to.add(
        "materials.mix.clay_blend-doubt",
        steps ->
            blend()
                .rounded()
                .clayDoubt(Map.of("pit soil", new Range(0.35, 0.42, 0.5)), steps)
                .sampled()
                .high());
    to.add("materials.mix.power_curve", steps -> new GradingTarget(0.02, 0.5).finer(0.001, steps));
    to.add("materials.mix.straw", steps -> Fibre.straw(1200, 0.01, steps).mass());
    to.add(
        "materials.mix.trials",
        steps ->
            TrialReading.of(
                    TRIALS, blend(), Basis.DRY_MASS, TrialReading.FLOOR_CRACK_LIMIT, 0.5, steps)
                .probability());
  }

  private static final MixComponent SOIL =
      MixComponent.claySoil("pit soil", new Uncertain(0.42, 0.03));
  private static final MixComponent SAND = MixComponent.washedSand("washed sand");
  private static final List<TrialOutcome> TRIALS =
      List.of(
          TrialOutcome.of(1, 0.006, 0.3, TrialOutcome.Dusting.NONE),
          TrialOutcome.of(2, 0.001, 0.3, TrialOutcome.Dusting.NONE),
          TrialOutcome.of(3, 0, 0.3, TrialOutcome.Dusting.SLIGHT));

  private static ClayBlend blend() {
    return ClayBlend.of(SOIL, SAND, ClayBand.FLOOR, BucketRounding.HALF);
  }
}
