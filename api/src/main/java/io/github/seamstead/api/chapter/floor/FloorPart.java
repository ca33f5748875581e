package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.materials.floor.Settlement;
import java.util.List;
import java.util.Optional;

/**
 * The earthen floor.
 *
 * @param buildUp its layers over its plan
 * @param sectors the sectors round the centre, in the order of laying
 * @param batches the mixer loads of each mixed layer; empty without a mixer
 * @param timings how long wet edges wait, for each entry of {@code batches}
 * @param orders what to order; empty without a mixer
 * @param work the crew's hours; empty without a mixer or a crew
 * @param barrowTrips from mixer to floor, for each entry of {@code batches}; empty without a barrow
 * @param settlement how far soft ground left under the floor sinks; empty if none is stated
 */
public record FloorPart(
    BuildUp buildUp,
    SectorPlan sectors,
    List<BatchPlan> batches,
    List<JointTiming> timings,
    Optional<OrderList> orders,
    Optional<FloorWork> work,
    List<BarrowTrips> barrowTrips,
    Optional<Settlement> settlement) {

  /**
   * Copies the lists.
   *
   * @param buildUp its layers
   * @param sectors the sectors
   * @param batches the mixer loads
   * @param timings how long wet edges wait
   * @param orders what to order
   * @param work the crew's hours
   * @param barrowTrips from mixer to floor
   * @param settlement how far soft ground sinks
   */
  public FloorPart {
    batches = List.copyOf(batches);
    timings = List.copyOf(timings);
    barrowTrips = List.copyOf(barrowTrips);
  }
}
