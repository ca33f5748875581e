package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.LaidWork;
import io.github.seamstead.api.diary.LayerNames;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.Mixer;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.SectorBatches;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.shared.uncertainty.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is laid of the floor, and so what is left of its layers, loads and orders. */
final class FloorProgress {

  private final Done done;
  private final BuildUp buildUp;
  private final SectorPlan sectors;
  private final List<BatchPlan> batches;
  private final List<String> names;

  FloorProgress(
      Run run, Floor floor, BuildUp buildUp, SectorPlan sectors, List<BatchPlan> batches) {
    this.done = run.done();
    this.names = LayerNames.of(floor);
    this.buildUp = buildUp;
    this.sectors = sectors;
    this.batches = batches;
  }

  /** The share of a sector that is laid, 0 to 1. */
  private double laid(Layer layer, Sector sector) {
    double share = 0;
    for (LaidWork work : done.laid()) {
      if (!work.layer().equals(name(layer))
          || (work.sector().isPresent() && work.sector().get() != sector.order())) {
        continue;
      }
      share += work.loads().isEmpty() ? 1 : work.loads().get() / loads(layer, sector);
    }
    return Math.min(1, share);
  }

  private String name(Layer layer) {
    return names.get(buildUp.layers().indexOf(layer));
  }

  private double loads(Layer layer, Sector sector) {
    return batches.stream()
        .filter(b -> b.quantity().layer().equals(layer))
        .flatMap(b -> sectors.batches(b).stream())
        .filter(row -> row.sector().number() == sector.number())
        .mapToDouble(SectorBatches::loads)
        .findFirst()
        .orElse(1);
  }

  private double laidShare(Layer layer) {
    return sectors.sectors().stream().mapToDouble(s -> laid(layer, s) * s.area()).sum()
        / sectors.area();
  }

  /** What is left of each layer, from the ground up. */
  List<LayerRest> rest(List<BatchPlan> left) {
    List<LayerRest> rest = new ArrayList<>();
    for (Layer layer : buildUp.layers()) {
      List<Integer> open =
          sectors.inOrder().stream().filter(s -> laid(layer, s) < 1).map(Sector::order).toList();
      Range loads =
          left.stream()
              .filter(b -> b.quantity().layer().equals(layer))
              .map(BatchPlan::count)
              .findFirst()
              .orElse(Range.exactly(0));
      rest.add(
          new LayerRest(
              name(layer),
              laidShare(layer),
              open,
              loads,
              open.isEmpty() ? last(name(layer)) : Optional.empty()));
    }
    return rest;
  }

  private Optional<LocalDate> last(String layer) {
    return done.laid().stream()
        .filter(w -> w.layer().equals(layer))
        .map(LaidWork::date)
        .reduce((a, b) -> b);
  }

  /** The quantities of what is not laid. */
  List<EarthQuantity> earth() {
    return buildUp.earth().stream()
        .map(q -> q.part(Math.max(0, 1 - laidShare(q.layer()))))
        .toList();
  }

  /** The loads of what is not laid. */
  static List<BatchPlan> batches(List<EarthQuantity> earth, Mixer mixer) {
    return earth.stream()
        .filter(quantity -> quantity.layer().mixed())
        .map(quantity -> BatchPlan.of(quantity, mixer))
        .toList();
  }

  /** The orders of the rest, less what came and is not laid yet. */
  OrderList orders(OrderList whole, OrderList rest) {
    List<OrderLine> lines = new ArrayList<>();
    Map<String, Double> delivered = done.delivered();
    for (OrderLine line : rest.lines()) {
      double used =
          whole.lines().stream()
                  .filter(w -> w.material().equals(line.material()))
                  .mapToDouble(w -> w.rawNeed().likely())
                  .sum()
              - line.rawNeed().likely();
      double onSite = delivered.getOrDefault(line.material(), 0.0) - used;
      lines.add(line.less(Math.max(0, onSite)));
    }
    return new OrderList(
        lines,
        rest.membranes().stream().filter(m -> laidShare(m.layer()) < 1).toList(),
        rest.finishes().stream().filter(f -> laidShare(f.layer()) < 1).toList());
  }
}
