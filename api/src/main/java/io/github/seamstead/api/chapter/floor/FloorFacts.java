package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPart;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.mix.Fibre;
import io.github.seamstead.shared.quantity.Numbers;
import java.time.LocalDate;

/** The floor as data. */
final class FloorFacts {

  private FloorFacts() {}

  static Facts<FloorPart> floor() {
    return new Facts<FloorPart>()
        .number("area_m2", "area of the floor", f -> f.buildUp().footprint().area())
        .number("thickness_m", "thickness of all layers", f -> f.buildUp().thickness())
        .range("massPerArea_kgPerM2", "mass as placed", f -> f.buildUp().massPerArea())
        .many("earth", "layers of earth, sand and gravel", earth(), f -> f.buildUp().earth())
        .many("membranes", "membranes", membrane(), f -> f.buildUp().membranes())
        .many("finishes", "oil and wax", finish(), f -> f.buildUp().finishes())
        .many("sectors", "sectors round the centre", sector(), f -> f.sectors().sectors())
        .many("batches", "loads of each mixed layer", batches(), FloorPart::batches)
        .many("batchClay", "what rounding to buckets does to them", clay(), FloorPart::clays)
        .many("steps", "the work, from the ground up", FloorStepFacts.step(), FloorPart::steps)
        .many("joints", "how long wet edges wait, by mixed layer", timing(), FloorPart::timings)
        .maybe("orders", "what to order", orders(), FloorPart::orders)
        .maybe("work", "the crew's hours on the earth layers", work(), FloorPart::work)
        .many(
            "barrowTrips",
            "barrow trips to the floor for each earth layer, likely",
            barrowTrips(),
            FloorPart::barrowTrips)
        .maybe("settlement", "how far soft ground sinks", settlement(), FloorPart::settlement)
        .maybe("straw", "the straw of all layers", straw(), FloorPart::straw)
        .many("packs", "compaction tests of the packs", PackFacts.pack(), FloorPart::packs)
        .texts("advice", "what the build-up calls attention to", f -> f.buildUp().advice())
        .many(
            "rest",
            "what is left of each layer, if there is a diary; orders and hours are those of the"
                + " rest",
            rest(),
            FloorPart::rest);
  }

  private static Facts<LayerRest> rest() {
    return new Facts<LayerRest>()
        .text("layer", "its name in the diary", LayerRest::layer)
        .number("laid_ratio", "the share of its area that is laid", LayerRest::laidShare)
        .numbers(
            "sectorsLeft",
            "the sectors not laid whole, by their place in the order of laying",
            r -> r.sectorsLeft().stream().map(Integer::doubleValue).toList())
        .range("loadsLeft", "loads yet to lay", LayerRest::loadsLeft)
        .maybeText(
            "laidOn",
            "the day on which the last of it was laid",
            r -> r.laidOn().map(LocalDate::toString));
  }

  private static Facts<Fibre> straw() {
    return new Facts<Fibre>()
        .number("mass_kg", "its mass", Fibre::mass)
        .range("looseVolume_m3", "chopped and loose", Fibre::looseVolume)
        .range("bales", "two-string bales", Fibre::bales);
  }

  private static Facts<FloorWork> work() {
    return new Facts<FloorWork>()
        .many("layers", "each earth layer", layerWork(), FloorWork::layers)
        .range("personHours_h", "work of all hands together", FloorWork::personHours)
        .range("clockHours_h", "by the clock", FloorWork::clockHours)
        .range("days_d", "working days of the crew", FloorWork::days);
  }

  private static Facts<FloorWork.LayerWork> layerWork() {
    return new Facts<FloorWork.LayerWork>()
        .text("layer", "its name", FloorWork.LayerWork::layer)
        .range("personHours_h", "work of all hands together", w -> w.time().personHours())
        .range("clockHours_h", "by the clock", w -> w.time().elapsedHours());
  }

  private static Facts<BarrowTrips> barrowTrips() {
    return new Facts<BarrowTrips>()
        .text("layer", "the layer", BarrowTrips::layer)
        .whole("trips", "barrow trips", BarrowTrips::trips);
  }

  private static Facts<Settlement> settlement() {
    return new Facts<Settlement>()
        .range("squeeze_m", "by the floor's weight", Settlement::squeeze)
        .range("decay_m", "by roots and humus that rot away", Settlement::decay)
        .range("total_m", "both", Settlement::total)
        .texts("advice", "what to do", Settlement::advice);
  }

  private static Facts<EarthQuantity> earth() {
    return new Facts<EarthQuantity>()
        .text("layer", "its name", e -> e.layer().name())
        .number("thickness_m", "compacted thickness", e -> e.layer().thickness())
        .range("compactedVolume_m3", "volume in the floor", EarthQuantity::compactedVolume)
        .range("looseVolume_m3", "loose volume of the parts", EarthQuantity::looseVolume)
        .range("dryMass_kg", "dry mass", EarthQuantity::dryMass);
  }

  private static Facts<MembraneQuantity> membrane() {
    return new Facts<MembraneQuantity>()
        .text("layer", "its name", m -> m.layer().name())
        .whole("rolls", "rolls to buy", MembraneQuantity::rolls)
        .number("areaWithLaps_m2", "area with laps and upstands", MembraneQuantity::areaWithLaps);
  }

  private static Facts<FinishQuantity> finish() {
    return new Facts<FinishQuantity>()
        .text("layer", "its name", f -> f.layer().name())
        .range("volume_L", "litres of all coats", FinishQuantity::litres);
  }

  private static Facts<Sector> sector() {
    return new Facts<Sector>()
        .whole("side", "the side it lies at, counter-clockwise", Sector::number)
        .whole("order", "its number: its place in the order of laying", Sector::order)
        .number("area_m2", "its area", Sector::area);
  }

  private static Facts<BatchPlan> batches() {
    return new Facts<BatchPlan>()
        .text("layer", "the layer", b -> b.quantity().layer().name())
        .range("loads", "mixer loads", BatchPlan::count)
        .number("water_kg", "water to add to one load", b -> b.batch().water())
        .number("excessWater_kg", "water too much in its parts", b -> b.batch().excessWater())
        .number("moisture", "water over dry mass as it is laid", b -> b.batch().moisture())
        .number("mass_kg", "mass of one load", b -> b.batch().mass())
        .many("parts", "what goes into one load", part(), b -> b.batch().parts());
  }

  private static Facts<BatchClay> clay() {
    return new Facts<BatchClay>()
        .text("mix", "its name", c -> c.batch().mix().name())
        .number("wanted", "share of clay of the recipe", BatchClay::wanted)
        .number("batched", "share of clay of the load in buckets", BatchClay::batched)
        .maybeText(
            "refusal",
            "why the load must not be mixed, and what would be right",
            c -> c.refusal(v -> Numbers.significant(v * 1000, 3) + " L"));
  }

  private static Facts<BatchPart> part() {
    return new Facts<BatchPart>()
        .text("material", "the material", p -> p.part().name())
        .number("buckets", "struck buckets", BatchPart::buckets)
        .number("moistMass_kg", "mass as it lies", BatchPart::moistMass);
  }

  private static Facts<JointTiming> timing() {
    return new Facts<JointTiming>()
        .number("longestWait_s", "longest wait of an open edge", JointTiming::longestWait)
        .range("openTime_s", "how long an edge stays wet enough to join", JointTiming::openTime)
        .maybeText("warning", "what to do about it", JointTiming::warning);
  }

  private static Facts<OrderList> orders() {
    return new Facts<OrderList>()
        .many("lines", "one line for each material", line(), OrderList::lines)
        .whole("trips", "trailer trips", OrderList::trips)
        .number("cost", "cost in the money of the site", OrderList::cost);
  }

  private static Facts<OrderLine> line() {
    return new Facts<OrderLine>()
        .text("material", "the material", OrderLine::material)
        .range("dryNeed_kg", "dry mass needed", OrderLine::dryNeed)
        .number("ordered_kg", "mass to order, damp", OrderLine::ordered)
        .number("looseVolume_m3", "its loose volume", OrderLine::looseVolume)
        .whole("trips", "trailer trips", OrderLine::trips)
        .number("cost", "cost in the money of the site", OrderLine::cost);
  }
}
