package io.github.seamstead.examples.derivations;

import io.github.seamstead.materials.floor.Batch;
import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.CrewRates;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.GroundWork;
import io.github.seamstead.materials.floor.Mixer;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.materials.floor.WorkTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Floor quantities. */
final class FloorSamples {

  private FloorSamples() {}

  static void addTo(Samples to) {
    to.add("materials.floor.regular-area", steps -> Footprint.regularArea(9, 2.2, steps));
    to.add("materials.floor.area", steps -> Footprint.regular(9, 2.2).inset(0.1).area(steps));
    to.add("materials.floor.loose-volume", steps -> pack().looseVolume(steps));
    to.add("materials.floor.batches", steps -> BatchPlan.of(pack(), MIXER).likelyCount(steps));
    to.add("materials.floor.batch-water", steps -> Batch.of(MIX, MIXER).waterBalance(steps));
    to.add(
        "materials.floor.work",
        steps ->
            WorkTime.likelyHours(
                pack(), Optional.of(BatchPlan.of(pack(), MIXER)), CrewRates.beginners(3), steps));
    to.add(
        "materials.floor.batch-clay",
        steps -> BatchClay.clay(List.of(Batch.of(MIX, MIXER)), Map.of("earth mix", 0.16), steps));
    to.add("materials.floor.dig", steps -> GroundWork.bank(27, 0.195, steps));
    to.add("materials.floor.order", steps -> OrderList.order(1500, 0.1, 0.05, 0.04, 50, steps));
    to.add("materials.floor.trips", steps -> new Trailer(1.2, 600).trips(2.2, 1400, 0.01, steps));
    to.add(
        "materials.floor.loose-volume-doubt",
        steps -> pack().looseVolumeDoubt(steps).sampled().high());
    to.add(
        "materials.floor.batches-doubt",
        steps -> BatchPlan.of(pack(), MIXER).countDoubt(steps).sampled().high());
    to.add(
        "materials.floor.work-doubt",
        steps ->
            WorkTime.hoursDoubt(
                    pack(), Optional.of(BatchPlan.of(pack(), MIXER)), CrewRates.beginners(3), steps)
                .sampled()
                .high());
    to.add(
        "materials.floor.settlement-doubt",
        steps -> Settlement.doubt(0.08, 350, steps).sampled().high());
    to.add("materials.floor.settlement", steps -> Settlement.squeeze(0.08, 350, 1e-6, steps));
  }

  private static final FloorMix MIX = FloorMix.single("earth mix", 1900, 1300, 0.05, 0.01);
  private static final Mixer MIXER = Mixer.of(0.09, 160, 0.01);

  private static EarthQuantity pack() {
    return BuildUp.level(Footprint.regular(9, 2.2), List.of(EarthLayer.dryPack(MIX)))
        .earth()
        .get(0);
  }
}
