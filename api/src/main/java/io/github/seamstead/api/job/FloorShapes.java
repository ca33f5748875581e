package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of the floor section. */
final class FloorShapes {

  private FloorShapes() {}

  static Shape<MixSpec> mixSpec() {
    Shape<MixSpec> s = Shape.of(MixSpec.class, "a mix of a soil with sand");
    Key<String> id = s.required("id", Kinds.id(), "its name, by which layers call it");
    Key<String> soil = s.required("soil", Kinds.id(), "the soil, by its id");
    Key<String> sand = s.required("sand", Kinds.id(), "the sand, by its id");
    Key<MixUse> use =
        s.assumed(
            "use",
            Kinds.choice(MixUse.class, MixUse::word),
            "what the mix is for",
            MixUse.FLOOR,
            "floor",
            "it is listed under floor");
    Key<Double> leastClay =
        s.optional(
            "leastClay",
            Quantities.ratio(0, 1),
            "least share of clay aimed at; instead of the usual one for the use");
    Key<Double> greatestClay =
        s.optional("greatestClay", Quantities.ratio(0, 1), "greatest share of clay aimed at");
    Key<Double> sandParts =
        s.optional(
            "sandParts",
            Quantities.of(Dimension.RATIO, "1", 0, 20),
            "parts of sand to one part of soil by the bucket, fixed by hand; left out, trial"
                + " samples decide, else the clay");
    Key<Double> placingMoisture =
        s.required(
            "placingMoisture",
            Quantities.ratio(0, 1),
            "water over dry mass as the mix goes into the floor");
    Key<Double> largestGrain =
        s.required(
            "largestGrain", Quantities.length("mm", 0.01, 100), "largest grain after screening");
    Key<Boolean> fibre = s.or("fibre", Kinds.flag(), "whether chopped straw is mixed in", false);
    Key<Double> straw =
        s.optional(
            "straw",
            Quantities.ratio(0.001, 0.05),
            "chopped straw over dry mass; 1 % if fibre is true and this is left out");
    Key<Double> plasticLimit =
        s.optional(
            "plasticLimit",
            Quantities.ratio(0.05, 0.6),
            "plastic limit of the mix: water over dry mass at which a 3 mm thread breaks");
    Key<MixDesignSpec> design =
        s.optional(
            "design",
            EarthTestShapes.design(),
            "a mix with other aggregates as well, found by calculation; in place of sandParts");
    Key<Double> density =
        s.assumed(
            "density",
            Quantities.of(Dimension.DENSITY, "kg/m3", 800, 2400),
            "dry mass over compacted volume",
            1800.0,
            "1800 kg/m3",
            "common practice: earth and sand compacted by hand");
    Key<Double> densitySpread =
        s.assumed(
            "densitySpread",
            Quantities.ratio(0, 0.3),
            "half width of the range of that density",
            0.06,
            "6 %",
            "common practice: compaction by hand differs from day to day");
    s.rule(
        (v, faults) -> {
          if (v.has(leastClay) != v.has(greatestClay)) {
            faults.note(
                "",
                "one end of a band of clay",
                "must state leastClay and greatestClay, or neither");
          } else if (v.has(leastClay)
              && !(v.find(leastClay).orElse(0.0) < v.find(greatestClay).orElse(0.0))) {
            faults.note(
                "leastClay",
                "a least share of clay that is not below the greatest",
                "must be below greatestClay");
          }
          if (v.has(sandParts) && v.has(design)) {
            faults.note("design", "a design and sandParts", "must state one of them, not both");
          }
        });
    return s.makes(
        v ->
            new MixSpec(
                v.get(id),
                v.get(soil),
                v.get(sand),
                v.get(use),
                v.find(leastClay),
                v.find(greatestClay),
                v.find(sandParts),
                v.get(placingMoisture),
                v.get(largestGrain),
                v.get(fibre) || v.has(straw),
                v.find(straw),
                v.find(plasticLimit),
                v.find(design),
                v.get(density),
                v.get(densitySpread)));
  }

  static Shape<FloorLayer> floorLayer() {
    Shape<FloorLayer> s = Shape.of(FloorLayer.class, "one layer of the floor");
    Key<LayerKind> kind =
        s.required("kind", Kinds.choice(LayerKind.class, LayerKind::word), "what the layer is");
    Key<String> name =
        s.optional("name", Kinds.text(), "what the crew calls it; its kind if left out");
    Key<Double> thickness =
        s.optional("thickness", Quantities.length("mm", 1, 1000), "compacted thickness");
    Key<String> material =
        s.optional(
            "material",
            Kinds.id(),
            "the aggregate of a levelling layer or capillary break, by its id");
    Key<String> mix =
        s.optional("mix", Kinds.id(), "the mix of a dry pack or an earth coat, by its id");
    Key<Double> rollWidth =
        s.optional(
            "rollWidth", Quantities.length("m", 0.1, 20), "width of the membrane on the roll");
    Key<Double> rollLength =
        s.optional(
            "rollLength", Quantities.length("m", 0.5, 500), "length of the membrane on the roll");
    Key<Double> lap =
        s.assumed(
            "lap",
            Quantities.length("mm", 0, 2000),
            "lap of the membrane",
            0.2,
            "200 mm",
            "common practice: sheet under a floor, not taped");
    Key<Double> upstand =
        s.assumed(
            "upstand",
            Quantities.length("mm", 0, 2000),
            "height of the membrane at the edge",
            0.1,
            "100 mm",
            "common practice: up to the finished floor");
    s.onlyWith(lap, rollWidth);
    s.onlyWith(upstand, rollWidth);
    Key<CompactionTest> compaction =
        s.optional(
            "compaction",
            EarthTestShapes.compactionTest(),
            "how a dry pack compacts, and how dense it was rammed");
    s.rule(
        (v, faults) -> {
          FloorRules.layer(
              v.get(kind),
              v.has(thickness),
              v.has(material),
              v.has(mix),
              v.has(rollWidth) && v.has(rollLength),
              faults);
          if (v.has(compaction) && v.get(kind) != LayerKind.DRY_PACK) {
            faults.note(
                "compaction",
                "compaction of a layer of kind " + v.get(kind).word(),
                "must be left out");
          }
        });
    return s.makes(
        v ->
            new FloorLayer(
                v.get(kind),
                v.find(name),
                v.find(thickness),
                v.find(material),
                v.find(mix),
                v.find(rollWidth),
                v.find(rollLength),
                v.get(lap),
                v.get(upstand),
                v.find(compaction)));
  }

  static Shape<RoundGap> roundGap() {
    Shape<RoundGap> s = Shape.of(RoundGap.class, "a round place without floor, such as a post");
    Key<Double> x = s.required("x", Quantities.length("m", -100, 100), "from the centre");
    Key<Double> y = s.required("y", Quantities.length("m", -100, 100), "from the centre");
    Key<Double> diameter =
        s.required("diameter", Quantities.length("m", 0.005, 20), "its diameter");
    return s.makes(v -> new RoundGap(v.get(x), v.get(y), v.get(diameter)));
  }

  static Shape<Floor> floor() {
    Shape<Floor> s = Shape.of(Floor.class, "the earthen floor");
    Key<Double> edging =
        s.assumed(
            "edging",
            Quantities.length("mm", 0, 5000),
            "how far the floor stays inside the base line",
            0.0,
            "0 mm",
            "the floor goes to the base line");
    Key<List<RoundGap>> gaps =
        s.or("gaps", Kinds.list(roundGap(), 1, 50), "places without floor", List.of());
    Key<Integer> doorFace =
        s.optional(
            "doorFace",
            Kinds.count(1, 64),
            "the face with the door, towards which the floor is laid; that of cover.door if left"
                + " out. Of an outline the side, of a round room one of 16, counter-clockwise from"
                + " the side nearest the reader");
    Key<List<FloorLayer>> layers =
        s.required("layers", Kinds.list(floorLayer(), 1, 20), "layers from the bottom to the top");
    Key<List<MixSpec>> mixes =
        s.or("mixes", Kinds.list(mixSpec(), 1, 20), "the mixes of the layers", List.of());
    Key<Double> shortestOpenTime =
        s.optional(
            "shortestOpenTime",
            Quantities.of(Dimension.TIME, "min", 1, 1440),
            "shortest time in which a wet edge still joins; reckoned from the weather, else 30 min,"
                + " if left out");
    Key<Double> longestOpenTime =
        s.optional(
            "longestOpenTime",
            Quantities.of(Dimension.TIME, "min", 1, 2880),
            "longest time in which a wet edge still joins; stated together with the shortest");
    Key<Double> reserve =
        s.assumed(
            "reserve",
            Quantities.ratio(0, 1),
            "material ordered over the need",
            0.1,
            "10 %",
            "common practice: spill and uneven ground");
    Key<Double> softBase =
        s.optional(
            "softBase",
            Quantities.length("mm", 0, 2000),
            "thickness of turf and topsoil left under the floor; 0 mm if stripped to the subsoil");
    Key<FloorOutline> outline =
        s.optional(
            "outline",
            OutlineShapes.outline(),
            "the floor's outline; the base of the frame if left out");
    s.rule(
        (v, faults) -> {
          if (v.has(shortestOpenTime) != v.has(longestOpenTime)) {
            faults.note(
                "",
                "one of two open times",
                "must state shortestOpenTime and longestOpenTime, or neither");
          } else if (v.has(shortestOpenTime) && v.get(shortestOpenTime) > v.get(longestOpenTime)) {
            faults.note(
                "shortestOpenTime",
                "a shortest open time above the longest",
                "must be at most longestOpenTime");
          }
          FloorRules.mixes(v.get(layers), v.get(mixes), faults);
        });
    return s.makes(
        v ->
            new Floor(
                v.get(edging),
                v.get(gaps),
                v.find(doorFace),
                v.get(layers),
                v.get(mixes),
                v.find(shortestOpenTime),
                v.find(longestOpenTime),
                v.get(reserve),
                v.find(softBase),
                v.find(outline)));
  }
}
