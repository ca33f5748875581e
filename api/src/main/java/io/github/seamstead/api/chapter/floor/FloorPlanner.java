package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPlanner;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.Plant;
import io.github.seamstead.api.job.RoundGap;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.FinishLayer;
import io.github.seamstead.materials.floor.FloorCautions;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.MembraneLayer;
import io.github.seamstead.materials.floor.Mixer;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.PlanPoint;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.floor.Supply;
import io.github.seamstead.materials.floor.Trailer;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Builds up the floor and reckons its loads and orders. */
final class FloorPlanner {

  /** The step in which dug soil is reckoned, in kg. */
  private static final double DUG_STEP = 100;

  /** In kg/m³, wet (common practice). */
  private static final double DENSEST_MIX = 2200;

  private FloorPlanner() {}

  static Optional<FloorPart> plan(
      Run run, Optional<FramePart> frame, Optional<SurveyPart> survey, List<MixPart> mixes) {
    Optional<Floor> stated = run.document().floor();
    if (stated.isEmpty()) {
      run.skip(Chapter.FLOOR, "the document has no floor");
      return Optional.empty();
    }
    if (frame.isEmpty() && survey.isEmpty()) {
      run.skip(Chapter.FLOOR, "the frame is not known");
      return Optional.empty();
    }
    return run.attempt("$.floor", () -> buildUp(run, stated.get(), base(run, frame, survey), mixes))
        .flatMap(floor -> run.require("$.plant", () -> part(run, stated.get(), floor)));
  }

  /** The base as surveyed, else the ideal one. Edge i lies under face i + 1 in both. */
  private static Footprint base(Run run, Optional<FramePart> frame, Optional<SurveyPart> survey) {
    if (survey.isEmpty()) {
      RegularPyramid pyramid = frame.orElseThrow().pyramid();
      return Footprint.regular(pyramid.sides(), pyramid.baseSide());
    }
    int sides = run.document().frame().orElseThrow().sides();
    Adjustment adjustment = survey.get().report().accepted();
    List<PlanPoint> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      Vector3D corner = adjustment.position(Node.base(i == 0 ? sides : i));
      corners.add(new PlanPoint(corner.getX(), corner.getY()));
    }
    return Footprint.of(corners);
  }

  private static BuildUp buildUp(Run run, Floor floor, Footprint base, List<MixPart> mixes) {
    Footprint plan = base;
    if (floor.edging() > 0) {
      plan = plan.inset(floor.edging());
    }
    for (RoundGap gap : floor.gaps()) {
      plan = plan.withoutRound(new PlanPoint(gap.x(), gap.y()), gap.diameter());
    }
    List<Layer> layers = new ArrayList<>();
    for (FloorLayer layer : floor.layers()) {
      layers.add(layer(run, layer, mixes));
    }
    return BuildUp.level(plan, layers);
  }

  private static Layer layer(Run run, FloorLayer layer, List<MixPart> mixes) {
    String name = layer.name().orElse(layer.kind().word());
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

  private static FloorMix mix(FloorLayer layer, List<MixPart> mixes) {
    String id = layer.mix().orElseThrow();
    return mixes.stream()
        .filter(mix -> mix.spec().id().equals(id))
        .map(MixPart::floorMix)
        .findFirst()
        .orElseThrow(
            () ->
                ArgumentFault.of(
                    "layer: given the mix " + id + ", must be a mix that could be proportioned"));
  }

  private static FloorMix single(Run run, FloorLayer layer) {
    String id = layer.material().orElseThrow();
    Aggregate aggregate =
        run.document().aggregates().stream()
            .filter(a -> a.id().equals(id))
            .findFirst()
            .orElseThrow();
    MixComponent component = SoilPlanner.component(aggregate);
    double largest = aggregate.largest().orElse(component.grading().diameterAt(1));
    return FloorMix.single(
        id,
        component.compactedDryDensity(),
        component.looseDryDensity().value(),
        component.moistureRatio(),
        largest);
  }

  private static FloorPart part(Run run, Floor floor, BuildUp buildUp) {
    SectorPlan sectors = SectorPlan.of(buildUp.footprint(), doorEdge(run, floor));
    Optional<Plant> plant = run.document().plant();
    Optional<Settlement> settlement =
        floor.softBase().map(thickness -> FloorLabour.settlement(run, thickness, buildUp));
    boolean oiled = !buildUp.finishes().isEmpty();
    if (plant.flatMap(Plant::mixer).isEmpty()) {
      run.skip(Chapter.FLOOR, "loads and orders: the document has no mixer under plant");
      run.cautions(Chapter.FLOOR, FloorCautions.forJob(0, oiled));
      return new FloorPart(
          buildUp,
          sectors,
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          settlement);
    }
    Mixer mixer = mixer(run, plant.get());
    double cycle = plant.get().mixer().orElseThrow().cycle();
    Range openTime =
        new Range(
            floor.shortestOpenTime(),
            (floor.shortestOpenTime() + floor.longestOpenTime()) / 2,
            floor.longestOpenTime());
    List<BatchPlan> batches =
        buildUp.earth().stream()
            .filter(quantity -> quantity.layer().mixed())
            .map(quantity -> BatchPlan.of(quantity, mixer))
            .toList();
    List<JointTiming> timings =
        batches.stream().map(b -> JointTiming.of(sectors, b, cycle, openTime)).toList();
    Optional<Trailer> trailer =
        plant.get().trailer().map(t -> new Trailer(t.volume(), t.payload()));
    OrderList orders =
        OrderList.of(
            buildUp, batches, supplies(run), trailer, mixer.bucketVolume(), floor.reserve());
    double heaviest =
        batches.stream()
            .flatMap(b -> b.batch().parts().stream())
            .mapToDouble(p -> p.bucketMass())
            .max()
            .orElse(0);
    run.cautions(Chapter.FLOOR, FloorCautions.forJob(heaviest, oiled));
    trailer.ifPresent(t -> run.caution(Chapter.FLOOR, t.caution()));
    return new FloorPart(
        buildUp,
        sectors,
        batches,
        timings,
        Optional.of(orders),
        FloorLabour.work(run, buildUp, batches, cycle),
        plant
            .get()
            .barrow()
            .map(barrow -> FloorLabour.barrowTrips(run, barrow, batches))
            .orElse(List.of()),
        settlement);
  }

  private static Mixer mixer(Run run, Plant plant) {
    var mixer = plant.mixer().orElseThrow();
    double limit =
        mixer
            .massLimit()
            .orElseGet(() -> densest(run, "$.plant.mixer.massLimit", mixer.workingVolume()));
    return Mixer.of(mixer.workingVolume(), limit, plant.bucket());
  }

  /** Assumes that a vessel may hold whatever fits into it. */
  static double densest(Run run, String path, double volume) {
    double heaviest = volume * DENSEST_MIX;
    run.assume(
        path,
        Math.round(heaviest) + " kg",
        "no limit stated: the mass of the densest wet mix, "
            + Numbers.plain(DENSEST_MIX)
            + " kg/m3, that the volume holds");
    return heaviest;
  }

  private static List<Supply> supplies(Run run) {
    List<Supply> supplies = new ArrayList<>();
    for (Aggregate a : run.document().aggregates()) {
      double price = a.pricePerTonne().orElse(0.0);
      supplies.add(new Supply(a.id(), a.moisture(), a.deliveryStep(), price, true));
    }
    for (SoilSample soil : run.document().soils()) {
      // Dug on the site: no trailer fetches it.
      double price = soil.pricePerTonne().orElse(0.0);
      supplies.add(new Supply(soil.id(), soil.moisture(), DUG_STEP, price, false));
    }
    return supplies;
  }

  private static int doorEdge(Run run, Floor floor) {
    Optional<Integer> face =
        floor
            .doorFace()
            .or(() -> run.document().cover().flatMap(Cover::door).map(FaceOpening::face));
    if (face.isEmpty()) {
      run.assume("$.floor.doorFace", "1", "the document states no door");
    }
    return face.orElse(1) - 1;
  }
}
