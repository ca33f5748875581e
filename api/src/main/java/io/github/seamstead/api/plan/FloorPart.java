package io.github.seamstead.api.plan;

import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.SectorPlan;
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
 */
public record FloorPart(
    BuildUp buildUp,
    SectorPlan sectors,
    List<BatchPlan> batches,
    List<JointTiming> timings,
    Optional<OrderList> orders) {

  /**
   * Copies the lists.
   *
   * @param buildUp its layers
   * @param sectors the sectors
   * @param batches the mixer loads
   * @param timings how long wet edges wait
   * @param orders what to order
   */
  public FloorPart {
    batches = List.copyOf(batches);
    timings = List.copyOf(timings);
  }
}
