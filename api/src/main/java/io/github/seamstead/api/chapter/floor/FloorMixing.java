package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.job.Plant;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.materials.floor.Batch;
import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.CrewRates;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Mixer;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the layers are mixed in: the mixer of the document, or a tarpaulin where there is none.
 *
 * @param mixer the mixer, or the tarpaulin as one
 * @param drum true for a mixer that turns
 * @param rates how fast a crew mixes; its people are those of the site, or two
 */
record FloorMixing(Mixer mixer, boolean drum, CrewRates rates) {

  private static final double MINUTE = 60;

  static FloorMixing of(Run run, boolean mixed) {
    Optional<Plant> plant = run.document().plant();
    int people = run.document().site().flatMap(Site::crew).map(crew -> crew.people()).orElse(2);
    if (plant.flatMap(Plant::mixer).isPresent()) {
      double cycle = plant.get().mixer().orElseThrow().cycle();
      return new FloorMixing(
          drum(run, plant.get()),
          true,
          CrewRates.beginners(people).withUsualMinutesPerLoad(cycle / MINUTE));
    }
    if (plant.isEmpty() && mixed) {
      run.assume("$.plant.bucket", "10 l", "common practice: a builder's bucket");
    }
    if (mixed) {
      assumeTarpaulin(run);
    }
    return new FloorMixing(
        Mixer.tarpaulin(plant.map(Plant::bucket).orElse(Mixer.USUAL_BUCKET)),
        false,
        CrewRates.onTarpaulin(people));
  }

  private static void assumeTarpaulin(Run run) {
    run.assume(
        "$.plant.mixer",
        "heaps of 40 l on a tarpaulin",
        "no mixer stated: two people turn and tread each heap for 10 to 25 min (common practice)");
  }

  private static Mixer drum(Run run, Plant plant) {
    var mixer = plant.mixer().orElseThrow();
    double limit =
        mixer
            .massLimit()
            .orElseGet(() -> densest(run, "$.plant.mixer.massLimit", mixer.workingVolume()));
    return Mixer.of(mixer.workingVolume(), limit, plant.bucket());
  }

  /** Assumes that a vessel may hold whatever fits into it. */
  static double densest(Run run, String path, double volume) {
    double heaviest = volume * Mixer.DENSEST_WET_MIX;
    run.assume(
        path,
        Math.round(heaviest) + " kg",
        "no limit stated: the mass of the densest wet mix, "
            + Numbers.plain(Mixer.DENSEST_WET_MIX)
            + " kg/m3, that the volume holds");
    return heaviest;
  }

  /** Seconds from load to load. */
  double cycle() {
    return rates.minutesPerLoad().likely() * MINUTE;
  }

  /** What rounding to buckets does to the clay of each load; loads out of the band are refused. */
  List<BatchClay> clays(Run run, List<BatchPlan> batches, List<MixPart> mixes) {
    return batches.stream().map(plan -> clay(run, plan, mixes)).toList();
  }

  private BatchClay clay(Run run, BatchPlan plan, List<MixPart> mixes) {
    Batch batch = plan.batch();
    MixPart mix =
        mixes.stream()
            .filter(m -> m.spec().id().equals(batch.mix().name()))
            .findFirst()
            .orElseThrow();
    Map<String, Double> clays = new HashMap<>();
    mix.choice()
        .recipe()
        .portions()
        .forEach(p -> clays.put(p.component().name(), p.component().clayRatio().value()));
    BatchClay clay = BatchClay.of(batch, mixer, clays, mix.blend().band());
    String layer = plan.quantity().layer().name();
    run.workedOnly(
        "materials.floor.batch-clay",
        "Clay of a load of " + layer,
        steps -> BatchClay.clay(List.of(batch), clays, steps));
    clay.refusal(volume -> litres(run, volume))
        .ifPresent(text -> run.unmet(Chapter.FLOOR, layer + ": " + text));
    return clay;
  }

  /** Says which layers the materials are too wet for, and what has to dry first. */
  static void tooWet(Run run, List<EarthQuantity> earth) {
    for (EarthQuantity quantity : earth) {
      FloorMix mix = quantity.layer().mix();
      if (quantity.layer().mixed()
          && mix.moistureOfParts() > mix.placingMoisture() + FloorMix.WET_BEYOND) {
        run.unmet(
            Chapter.FLOOR,
            quantity.layer().name()
                + ": the parts as they lie bring "
                + percent(mix.moistureOfParts())
                + " of water, and "
                + percent(mix.placingMoisture())
                + " is wanted; "
                + mix.dryFirst()
                    .map(d -> "dry " + d.part().name() + " to " + percent(d.moisture()) + " first")
                    .orElse("dry all of its parts first"));
      }
    }
  }

  private static String percent(double share) {
    return Numbers.fixed(share * 100, 1) + " %";
  }

  private static String litres(Run run, double volume) {
    boolean imperial = run.document().units() == UnitSystem.IMPERIAL;
    return imperial
        ? QuantityText.write(volume, Dimension.VOLUME, "US gal", 1)
        : Numbers.significant(volume * 1000, 3) + " l";
  }
}
