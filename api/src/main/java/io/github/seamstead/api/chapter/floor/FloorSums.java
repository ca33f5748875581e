package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorOutline;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.GroundWork;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.materials.water.Saturation;
import java.util.List;
import java.util.Optional;

/** Keeps the sums of area, layers, loads and orders. */
final class FloorSums {

  private FloorSums() {}

  static void record(Run run, BuildUp buildUp, List<EarthQuantity> earth, List<BatchPlan> batches) {
    run.workedOnly("materials.floor.area", "Area of the floor", buildUp.footprint()::area);
    outline(run)
        .ifPresent(
            outline ->
                run.workedOnly(
                    "materials.floor.regular-area",
                    "Area of the outline",
                    steps ->
                        Footprint.regularArea(
                            outline.sides().orElseThrow(), outline.side().orElseThrow(), steps)));
    run.workedOnly(
        "materials.floor.dig",
        "Hole for the floor",
        steps -> GroundWork.bank(buildUp.footprint().grossArea(), buildUp.thickness(), steps));
    for (EarthQuantity quantity : earth) {
      String layer = quantity.layer().name();
      run.workedOnly(
          "materials.floor.loose-volume", "Loose volume of " + layer, quantity::looseVolume);
      run.workedOnly(
          "materials.floor.loose-volume-doubt",
          "How sure is the loose volume of " + layer + "?",
          quantity::looseVolumeDoubt);
      if (quantity.layer().mixed()) {
        run.workedOnly(
            "materials.water.saturation",
            "Water that fills the pores of " + layer,
            steps ->
                Saturation.moisture(
                    quantity.layer().mix().compactedDryDensity().likely(),
                    Saturation.GRAINS,
                    steps));
      }
    }
    for (BatchPlan plan : batches) {
      String layer = plan.quantity().layer().name();
      run.workedOnly(
          "materials.floor.batch-water", "Water in a load of " + layer, plan.batch()::waterBalance);
      run.workedOnly("materials.floor.batches", "Loads of " + layer, plan::likelyCount);
      run.workedOnly(
          "materials.floor.batches-doubt",
          "How sure are the loads of " + layer + "?",
          plan::countDoubt);
    }
  }

  private static Optional<FloorOutline> outline(Run run) {
    return run.document()
        .floor()
        .flatMap(Floor::outline)
        .filter(outline -> outline.sides().isPresent());
  }

  static void orders(
      Run run, OrderList orders, Optional<Trailer> trailer, double bucketVolume, double reserve) {
    for (OrderLine line : orders.lines()) {
      run.workedOnly(
          "materials.floor.order",
          "Order of " + line.material(),
          steps ->
              OrderList.order(
                  line.dryNeed().likely(),
                  reserve,
                  line.screenedOut(),
                  line.supply().deliveryMoisture(),
                  line.supply().deliveryStep(),
                  steps));
      if (line.trips() > 0 && trailer.isPresent()) {
        run.workedOnly(
            "materials.floor.trips",
            "Trips for " + line.material(),
            steps ->
                trailer
                    .get()
                    .trips(line.looseVolume(), line.looseMoistDensity(), bucketVolume, steps));
      }
    }
  }
}
