package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.FloorStep;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.mix.Fibre;
import java.util.List;
import java.util.Optional;

/**
 * The earthen floor.
 *
 * @param buildUp its layers over its plan
 * @param sectors the sectors round the centre, in the order of laying
 * @param batches the loads of each mixed layer, of the mixer or on a tarpaulin
 * @param timings how long wet edges wait, for each entry of {@code batches}
 * @param orders what to order
 * @param work the crew's hours; empty without a crew
 * @param barrowTrips to the floor, for each earth layer; empty without a barrow
 * @param settlement how far soft ground left under the floor sinks; empty if none is stated
 * @param clays what rounding to buckets does to the clay, for each entry of {@code batches}; the
 *     clay of each load
 * @param steps the work, from the ground up
 * @param drum true if the loads turn in a mixer, false if they are trodden on a tarpaulin
 * @param rest what is left of each layer, from the ground up; empty for a job without a diary.
 *     Orders and hours are those of the rest, loads and sectors those of the whole
 * @param straw the straw of all layers, if any has some
 * @param packs compaction tests of the packs
 */
public record FloorPart(
    BuildUp buildUp,
    SectorPlan sectors,
    List<BatchPlan> batches,
    List<JointTiming> timings,
    Optional<OrderList> orders,
    Optional<FloorWork> work,
    List<BarrowTrips> barrowTrips,
    Optional<Settlement> settlement,
    List<BatchClay> clays,
    List<FloorStep> steps,
    boolean drum,
    List<LayerRest> rest,
    Optional<Fibre> straw,
    List<PackControl> packs) {

  public FloorPart {
    batches = List.copyOf(batches);
    timings = List.copyOf(timings);
    barrowTrips = List.copyOf(barrowTrips);
    clays = List.copyOf(clays);
    steps = List.copyOf(steps);
    rest = List.copyOf(rest);
    packs = List.copyOf(packs);
  }

  /**
   * Gives what is left of a layer.
   *
   * @param layer one of the build-up's layers
   * @return what is left; empty for a job without a diary
   */
  public Optional<LayerRest> restOf(Layer layer) {
    return rest.isEmpty()
        ? Optional.empty()
        : Optional.of(rest.get(buildUp.layers().indexOf(layer)));
  }

  /**
   * Tells whether a layer is laid whole.
   *
   * @param layer one of the build-up's layers
   * @return true if a diary says so
   */
  public boolean isLaid(Layer layer) {
    return restOf(layer).filter(LayerRest::isDone).isPresent();
  }
}
