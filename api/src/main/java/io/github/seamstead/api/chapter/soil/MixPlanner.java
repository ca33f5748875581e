package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Proportions the mixes that the floor calls. */
final class MixPlanner {

  private MixPlanner() {}

  static List<MixPart> plan(Run run, List<SoilPart> soils) {
    List<MixSpec> specs = run.document().floor().map(Floor::mixes).orElse(List.of());
    if (specs.isEmpty()) {
      run.skip(Chapter.MIX, "the document has no mixes under floor");
    }
    Map<String, SoilPart> bySoil = new HashMap<>();
    soils.forEach(soil -> bySoil.put(soil.sample().id(), soil));
    Map<String, Aggregate> byAggregate = new HashMap<>();
    run.document().aggregates().forEach(a -> byAggregate.put(a.id(), a));
    List<MixPart> mixes = new ArrayList<>();
    for (int i = 0; i < specs.size(); i++) {
      MixSpec spec = specs.get(i);
      SoilPart soil = bySoil.get(spec.soil());
      Aggregate sand = byAggregate.get(spec.sand());
      if (soil != null && sand != null) {
        run.attempt("$.floor.mixes[" + i + "]", () -> mix(run, spec, soil, sand))
            .ifPresent(mixes::add);
      }
    }
    return mixes;
  }

  private static MixPart mix(Run run, MixSpec spec, SoilPart soil, Aggregate aggregate) {
    MixComponent sand = SoilPlanner.component(aggregate);
    ClayBand band = band(spec);
    ClayBlend blend =
        run.worked(
            "materials.mix.clay_blend",
            "The mix " + spec.id(),
            steps -> ClayBlend.of(soil.component(), sand, band, BucketRounding.HALF, steps));
    blend.unmet().ifPresent(what -> run.unmet(Chapter.MIX, spec.id() + ": " + what));
    return new MixPart(spec, blend, floorMix(spec, blend.rounded(), soil.sample()));
  }

  private static ClayBand band(MixSpec spec) {
    Optional<Double> least = spec.leastClay();
    Optional<Double> greatest = spec.greatestClay();
    if (least.isPresent() && greatest.isPresent()) {
      return ClayBand.of(least.get(), greatest.get());
    }
    return switch (spec.use()) {
      case FLOOR -> ClayBand.FLOOR;
      case COB -> ClayBand.COB;
      case PRESSED_BLOCK -> ClayBand.PRESSED_BLOCK;
      case RAMMED_EARTH -> ClayBand.RAMMED_EARTH;
      case PLASTER -> ClayBand.PLASTER;
    };
  }

  private static FloorMix floorMix(MixSpec spec, Recipe recipe, SoilSample soil) {
    List<io.github.seamstead.materials.floor.MixPart> parts = new ArrayList<>();
    List<Double> shares = recipe.dryMassRatios();
    for (int i = 0; i < shares.size(); i++) {
      MixComponent component = recipe.portions().get(i).component();
      if (shares.get(i) > 0) {
        parts.add(
            new io.github.seamstead.materials.floor.MixPart(
                component.name(),
                shares.get(i),
                component.dryMassPerLooseVolume().value(),
                component.moistureRatio(),
                component.name().equals(soil.id()) ? soil.stones() : 0));
      }
    }
    double spread = spec.densitySpread();
    Range density =
        new Range(spec.density() * (1 - spread), spec.density(), spec.density() * (1 + spread));
    return new FloorMix(spec.id(), parts, density, spec.placingMoisture(), spec.largestGrain());
  }
}
