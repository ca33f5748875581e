package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.air.OpenTimes;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.EarthMaterials;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.diary.LayerNames;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.Plant;
import io.github.seamstead.api.job.RoundGap;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishLayer;
import io.github.seamstead.materials.floor.FloorCautions;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.FloorSteps;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.MembraneLayer;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.floor.Supply;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Builds up the floor and reckons its loads and orders. */
final class FloorPlanner {

  private FloorPlanner() {}

  static Optional<FloorPart> plan(
      Run run, Optional<FramePart> frame, Optional<SurveyPart> survey, List<MixPart> mixes) {
    Optional<Floor> stated = run.document().floor();
    if (stated.isEmpty()) {
      run.skip(Chapter.FLOOR, "the document has no floor");
      return Optional.empty();
    }
    Floor floor = stated.get();
    if (!allPlanned(run, mixes)) {
      return Optional.empty();
    }
    if (!FloorBase.isKnown(floor, frame, survey)) {
      run.skip(Chapter.FLOOR, "neither the frame nor an outline of the floor is known");
      return Optional.empty();
    }
    return run.attempt(
            "$.floor",
            () -> buildUp(run, floor, FloorBase.of(run, floor, frame, survey), fibred(run, mixes)))
        .flatMap(
            buildUp ->
                run.attempt("$.floor.doorFace", () -> sectors(run, floor, buildUp))
                    .flatMap(
                        sectors ->
                            run.require(
                                "$.plant", () -> part(run, floor, buildUp, sectors, mixes))));
  }

  /** Whether every mix that a layer calls is there; else the floor is not planned. */
  private static boolean allPlanned(Run run, List<MixPart> mixes) {
    List<String> missing =
        run.document().floor().map(Floor::layers).orElse(List.of()).stream()
            .flatMap(layer -> layer.mix().stream())
            .distinct()
            .filter(id -> mixes.stream().noneMatch(mix -> mix.spec().id().equals(id)))
            .toList();
    if (!missing.isEmpty()) {
      run.skip(
          Chapter.FLOOR,
          "no loads and no orders: there is no mix yet for " + String.join(", ", missing));
    }
    return missing.isEmpty();
  }

  /** The mixes by their names, with the straw that the document asks for. */
  private static Map<String, FloorMix> fibred(Run run, List<MixPart> mixes) {
    Map<String, FloorMix> byId = new LinkedHashMap<>();
    for (MixPart mix : mixes) {
      FloorMix plain = mix.floorMix();
      boolean straw = mix.spec().fibre() && plain.fibreShare() == 0;
      if (straw && mix.spec().straw().isEmpty()) {
        run.assume(
            "$.floor.mixes[" + mixes.indexOf(mix) + "].fibre",
            "1 %",
            "common practice: chopped straw over the dry mass of a floor mix, 0.5 to 2 %");
      }
      byId.put(
          mix.spec().id(),
          straw
              ? plain.plus(
                  io.github.seamstead.materials.floor.MixPart.choppedStraw(straw(mix.spec())))
              : plain);
    }
    return byId;
  }

  private static double straw(MixSpec spec) {
    return spec.straw().orElse(io.github.seamstead.materials.floor.MixPart.USUAL_STRAW);
  }

  private static SectorPlan sectors(Run run, Floor floor, BuildUp buildUp) {
    Footprint plan = buildUp.footprint();
    return SectorPlan.of(plan, FloorBase.doorEdge(run, floor, plan));
  }

  private static BuildUp buildUp(
      Run run, Floor floor, Footprint base, Map<String, FloorMix> mixes) {
    Footprint plan = base;
    if (floor.edging() > 0) {
      plan = plan.inset(floor.edging());
    }
    for (RoundGap gap : floor.gaps()) {
      // Each is held to all before it.
      run.goOn();
      plan = plan.withoutRound(Vector2D.of(gap.x(), gap.y()), gap.diameter());
    }
    List<Layer> layers = new ArrayList<>();
    for (FloorLayer layer : floor.layers()) {
      layers.add(layer(run, layer, mixes));
    }
    return BuildUp.level(plan, apart(layers));
  }

  /**
   * Tells layers of one name apart as a diary does. Loads, hours and what is laid are looked up by
   * layer, so that no two may be equal.
   */
  private static List<Layer> apart(List<Layer> layers) {
    List<String> names = LayerNames.numbered(layers.stream().map(Layer::name).toList());
    return IntStream.range(0, layers.size())
        .mapToObj(i -> named(layers.get(i), names.get(i)))
        .toList();
  }

  private static Layer named(Layer layer, String name) {
    if (layer.name().equals(name)) {
      return layer;
    }
    if (layer instanceof EarthLayer e) {
      return new EarthLayer(name, e.role(), e.thickness(), e.evenness(), e.mix(), e.mixed());
    }
    if (layer instanceof MembraneLayer m) {
      return new MembraneLayer(name, m.rollWidth(), m.rollLength(), m.lap(), m.upstand());
    }
    return new FinishLayer(name, ((FinishLayer) layer).rates());
  }

  private static Layer layer(Run run, FloorLayer layer, Map<String, FloorMix> mixes) {
    String name = layer.name().orElse(layer.kind().label());
    double thickness = layer.thickness().orElse(0.0);
    return switch (layer.kind()) {
      case LEVELLING -> EarthLayer.levelling(thickness, single(run, layer));
      case CAPILLARY_BREAK -> EarthLayer.capillaryBreak(thickness, single(run, layer));
      case MEMBRANE ->
          new MembraneLayer(
              name,
              layer.rollWidth().orElseThrow(),
              layer.rollLength().orElseThrow(),
              layer.lap(),
              layer.upstand());
      case DRY_PACK -> pack(name, thickness, mix(layer, mixes));
      case EARTH_COAT -> EarthLayer.coat(name, thickness, mix(layer, mixes));
      case OIL -> FinishLayer.linseedOil();
      case WAX -> FinishLayer.wax();
    };
  }

  private static EarthLayer pack(String name, double thickness, FloorMix mix) {
    EarthLayer usual = EarthLayer.dryPack(mix);
    return new EarthLayer(
        name, usual.role(), thickness, Math.min(usual.evenness(), thickness / 2), mix, true);
  }

  private static FloorMix mix(FloorLayer layer, Map<String, FloorMix> mixes) {
    String id = layer.mix().orElseThrow();
    return Optional.ofNullable(mixes.get(id))
        .orElseThrow(
            () ->
                ArgumentFault.of(
                    "layer", "the mix " + id, "must be a mix that could be proportioned", "", ""));
  }

  private static FloorMix single(Run run, FloorLayer layer) {
    String id = layer.material().orElseThrow();
    Aggregate aggregate =
        run.document().aggregates().stream()
            .filter(a -> a.id().equals(id))
            .findFirst()
            .orElseThrow();
    MixComponent component = EarthMaterials.component(aggregate);
    double largest = aggregate.largest().orElse(component.grading().diameterAt(1));
    return FloorMix.single(
        id,
        component.compactedDryDensity(),
        component.dryMassPerLooseVolume().value(),
        component.moistureRatio(),
        largest);
  }

  private static FloorPart part(
      Run run, Floor floor, BuildUp buildUp, SectorPlan sectors, List<MixPart> mixes) {
    Optional<Plant> plant = run.document().plant();
    Optional<Settlement> settlement =
        floor.softBase().map(thickness -> FloorLabour.settlement(run, thickness, buildUp));
    List<EarthQuantity> earth = buildUp.earth();
    boolean mixed = earth.stream().anyMatch(quantity -> quantity.layer().mixed());
    FloorMixing mixing = FloorMixing.of(run, mixed);
    List<BatchPlan> batches =
        earth.stream()
            .filter(quantity -> quantity.layer().mixed())
            .map(quantity -> BatchPlan.of(quantity, mixing.mixer()))
            .toList();
    FloorMixing.tooWet(run, earth);
    FloorSums.record(run, buildUp, earth, batches);
    List<JointTiming> timings =
        batches.stream()
            .map(
                b -> JointTiming.of(sectors, b, mixing.cycle(), OpenTimes.of(run, floor, b, mixes)))
            .toList();
    Optional<Trailer> trailer =
        plant.flatMap(Plant::trailer).map(t -> new Trailer(t.volume(), t.payload()));
    FloorProgress progress = new FloorProgress(run, floor, buildUp, sectors, batches);
    List<EarthQuantity> restEarth = run.done().isNothing() ? earth : progress.earth();
    List<BatchPlan> rest = FloorProgress.batches(restEarth, mixing.mixer());
    OrderList whole = orders(run, floor, buildUp, earth, batches, mixing, trailer);
    OrderList orders =
        run.done().isNothing()
            ? whole
            : progress.orders(whole, orders(run, floor, buildUp, restEarth, rest, mixing, trailer));
    FloorSums.orders(run, whole, trailer, mixing.mixer().bucketVolume(), floor.reserve());
    double heaviest =
        batches.stream()
            .flatMap(b -> b.batch().parts().stream())
            .mapToDouble(p -> p.bucketMass())
            .max()
            .orElse(0);
    run.cautions(
        Chapter.FLOOR,
        FloorCautions.forJob(heaviest, !buildUp.finishes().isEmpty(), mixed && mixing.drum()));
    trailer.ifPresent(t -> run.caution(Chapter.FLOOR, t.caution()));
    return new FloorPart(
        buildUp,
        sectors,
        batches,
        timings,
        Optional.of(orders),
        FloorLabour.work(run, restEarth, rest, mixing.rates()),
        plant
            .flatMap(Plant::barrow)
            .map(barrow -> FloorLabour.barrowTrips(run, barrow, earth, batches))
            .orElse(List.of()),
        settlement,
        mixing.clays(run, batches, mixes),
        FloorSteps.of(buildUp, sectors),
        mixing.drum(),
        run.done().isNothing() ? List.of() : progress.rest(rest),
        FloorStraw.of(run, restEarth, orders),
        PackTests.of(run, floor, buildUp));
  }

  private static OrderList orders(
      Run run,
      Floor floor,
      BuildUp buildUp,
      List<EarthQuantity> earth,
      List<BatchPlan> batches,
      FloorMixing mixing,
      Optional<Trailer> trailer) {
    return OrderList.of(
        buildUp,
        earth,
        batches,
        supplies(run, earth),
        trailer,
        mixing.mixer().bucketVolume(),
        floor.reserve());
  }

  /** The terms of what the layers use; what lies in the document unused is not ordered. */
  private static List<Supply> supplies(Run run, List<EarthQuantity> earth) {
    Set<String> used = new HashSet<>();
    earth.forEach(q -> q.layer().mix().parts().forEach(part -> used.add(part.name())));
    List<Supply> supplies = new ArrayList<>();
    for (Aggregate a : run.document().aggregates()) {
      if (used.contains(a.id())) {
        double price = a.pricePerTonne().orElse(0.0);
        supplies.add(new Supply(a.id(), EarthMaterials.moisture(a), a.deliveryStep(), price, true));
      }
    }
    for (SoilSample soil : run.document().soils()) {
      if (used.contains(soil.id())) {
        supplies.add(
            Supply.dug(soil.id(), EarthMaterials.moisture(soil), soil.pricePerTonne().orElse(0.0)));
      }
    }
    return supplies;
  }
}
