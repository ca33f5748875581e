package io.github.seamstead.api.results;

import io.github.seamstead.api.plan.BarrowTrips;
import io.github.seamstead.api.plan.FloorPart;
import io.github.seamstead.api.plan.FloorWork;
import io.github.seamstead.api.plan.MixPart;
import io.github.seamstead.api.plan.SoilPart;
import io.github.seamstead.materials.floor.BatchPart;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.soil.TextureClass;
import java.util.Map;

/** Soils, mixes and the floor as data. */
final class EarthFacts {

  private EarthFacts() {}

  static Facts<SoilPart> soil() {
    return new Facts<SoilPart>()
        .text("id", "its name", s -> s.sample().id())
        .uncertain("clayRatio", "share of clay in dry mass", s -> s.finding().texture().clay())
        .uncertain("siltRatio", "share of silt in dry mass", s -> s.finding().texture().silt())
        .uncertain("sandRatio", "share of sand in dry mass", s -> s.finding().texture().sand())
        .range(
            "clayRange",
            "share of clay: 5 % quantile, mean, 95 % quantile",
            s -> s.finding().texture().clayRange())
        .many(
            "classes",
            "texture classes, the most probable first",
            textureClass(),
            s -> s.finding().texture().classProbabilities().entrySet().stream().toList())
        .text("floorVerdict", "whether it suits a floor", s -> s.floor().verdict().label())
        .maybeText("floorNext", "what to do before a verdict can be given", s -> s.floor().next())
        .texts("floorReasons", "why", s -> s.floor().reasons())
        .maybeText(
            "nextTest",
            "the test that would tell most for its effort",
            s -> s.nextTests().stream().findFirst().map(t -> t.kind().label()))
        .texts("remarks", "what the tests call attention to", s -> s.finding().remarks())
        .texts(
            "conflicts",
            "tests that disagree",
            s -> s.finding().conflicts().stream().map(c -> c.message()).toList());
  }

  private static Facts<Map.Entry<TextureClass, Double>> textureClass() {
    return new Facts<Map.Entry<TextureClass, Double>>()
        .text("name", "the class", e -> e.getKey().label())
        .number("probability", "its probability", Map.Entry::getValue);
  }

  static Facts<MixPart> mix() {
    return new Facts<MixPart>()
        .text("id", "its name", m -> m.spec().id())
        .number("leastClayRatio", "least share of clay aimed at", m -> m.blend().band().least())
        .number(
            "greatestClayRatio",
            "greatest share of clay aimed at",
            m -> m.blend().band().greatest())
        .number(
            "sandPerSoilDryMass",
            "dry mass of sand per dry mass of soil for the middle of the band",
            m -> m.blend().sandPerSoilDryMass())
        .text(
            "proportionByVolume",
            "proportion used, in loose volume, both sides named",
            m -> m.choice().recipe().proportion(Basis.LOOSE_VOLUME).text())
        .uncertain(
            "clayRatio", "share of clay of the mix used", m -> m.choice().recipe().clayRatio())
        .number(
            "sandParts",
            "parts of sand to one of soil that are used, by the bucket",
            m -> m.choice().sandParts())
        .text("ratioGround", "why this ratio is used", m -> m.choice().ground().label())
        .text("ratioReason", "the same in a sentence", m -> m.choice().reason())
        .texts("remarks", "what speaks against the ratio", m -> m.choice().remarks())
        .maybeText("unmet", "what the proportion cannot meet", m -> m.choice().unmet());
  }

  static Facts<FloorPart> floor() {
    return new Facts<FloorPart>()
        .number("area_m2", "area of the floor", f -> f.buildUp().footprint().area())
        .number("thickness_m", "thickness of all layers", f -> f.buildUp().thickness())
        .range("massPerArea_kgPerM2", "mass as placed", f -> f.buildUp().massPerArea())
        .many("earth", "layers of earth, sand and gravel", earth(), f -> f.buildUp().earth())
        .many("membranes", "membranes", membrane(), f -> f.buildUp().membranes())
        .many("finishes", "oil and wax", finish(), f -> f.buildUp().finishes())
        .many("sectors", "sectors round the centre", sector(), f -> f.sectors().sectors())
        .many("batches", "mixer loads of each mixed layer", batches(), FloorPart::batches)
        .maybe("orders", "what to order", orders(), FloorPart::orders)
        .maybe("work", "the crew's hours on the earth layers", work(), FloorPart::work)
        .many(
            "barrowTrips",
            "barrow trips from mixer to floor, likely",
            barrowTrips(),
            FloorPart::barrowTrips)
        .maybe("settlement", "how far soft ground sinks", settlement(), FloorPart::settlement)
        .texts("advice", "what the build-up calls attention to", f -> f.buildUp().advice());
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
        .whole("number", "its number", Sector::number)
        .whole("order", "its place in the order of laying", Sector::order)
        .number("area_m2", "its area", Sector::area);
  }

  private static Facts<BatchPlan> batches() {
    return new Facts<BatchPlan>()
        .text("layer", "the layer", b -> b.quantity().layer().name())
        .range("loads", "mixer loads", BatchPlan::count)
        .number("water_kg", "water to add to one load", b -> b.batch().water())
        .number("mass_kg", "mass of one load", b -> b.batch().mass())
        .many("parts", "what goes into one load", part(), b -> b.batch().parts());
  }

  private static Facts<BatchPart> part() {
    return new Facts<BatchPart>()
        .text("material", "the material", p -> p.part().name())
        .number("buckets", "struck buckets", BatchPart::buckets)
        .number("moistMass_kg", "mass as it lies", BatchPart::moistMass);
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
