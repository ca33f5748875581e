package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.MixDesignSpec;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.GradingTarget;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.MixDesign;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.MixTarget;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds a mix of a soil with several aggregates. */
final class MixDesigner {

  private MixDesigner() {}

  static MixSolution design(
      Run run,
      MixSpec spec,
      MixDesignSpec asked,
      SoilPart soil,
      ClayBand band,
      Map<String, Aggregate> aggregates) {
    List<MixComponent> components = new ArrayList<>();
    components.add(soil.component());
    components.add(MixPlanner.component(aggregates, spec.sand()));
    asked.with().forEach(id -> components.add(MixPlanner.component(aggregates, id)));
    GradingTarget grading = new GradingTarget(spec.largestGrain(), asked.exponent());
    MixTarget plain =
        switch (asked.aim()) {
          case GRADING -> MixTarget.near(band, grading);
          case CHEAPEST -> MixTarget.cheapest(band);
          case MIDDLE -> MixTarget.of(band);
        };
    MixTarget target = asked.greatestShrinkage().map(plain::withShrinkageLimit).orElse(plain);
    for (double size : grading.sizes()) {
      run.worked(
          "materials.mix.power_curve",
          "Grading aimed at by " + spec.id(),
          steps -> grading.finer(size, steps));
    }
    return run.worked(
        "materials.mix.design",
        "The mix " + spec.id() + " of several aggregates",
        steps -> MixDesign.solve(components, target, BucketRounding.HALF, steps));
  }
}
