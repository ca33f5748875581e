package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;

/** The shapes of the tests of a soil that have several readings. */
final class SoilTestShapes {

  private SoilTestShapes() {}

  static Shape<JarReading> jarReading() {
    Shape<JarReading> s =
        Shape.of(
            JarReading.class,
            "a jar of soil shaken with water and left to settle: heights of the marks over the"
                + " bottom");
    Key<Double> sandTop = s.required("sandTop", Quantities.length("mm", 0, 500), "top of the sand");
    Key<Double> siltTop = s.required("siltTop", Quantities.length("mm", 0, 500), "top of the silt");
    Key<Double> total =
        s.required("total", Quantities.length("mm", 10, 500), "top of all that settled");
    Key<Double> waterDepth =
        s.required(
            "waterDepth", Quantities.length("mm", 10, 600), "depth of the water over the bottom");
    s.formerly(waterDepth, "fall");
    Key<Double> temperature =
        s.assumed(
            "temperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", 0, 40),
            "temperature of the water",
            20.0,
            "20 degC",
            "common practice: a jar that stands in a room");
    Key<Boolean> dispersed =
        s.assumed(
            "dispersed",
            Kinds.flag(),
            "whether salt, dish soap or another dispersant was used",
            false,
            "false",
            "the document does not say that one was used");
    Key<Double> sandTime =
        s.optional(
            "sandTime", Quantities.of(Dimension.TIME, "s", 20, 864000), "when the sand was marked");
    Key<Double> siltTime =
        s.optional(
            "siltTime",
            Quantities.of(Dimension.TIME, "s", 20, 8640000),
            "when the silt was marked");
    Key<Double> totalTime =
        s.optional(
            "totalTime", Quantities.of(Dimension.TIME, "s", 20, 86400000), "when all was marked");
    s.rule(
        (v, faults) -> {
          if (!(v.get(sandTop) <= v.get(siltTop)
              && v.get(siltTop) <= v.get(total)
              && v.get(total) < v.get(waterDepth))) {
            faults.note(
                "",
                "marks out of order",
                "must have sandTop <= siltTop <= total < depth of the water");
          }
          long times = List.of(sandTime, siltTime, totalTime).stream().filter(v::has).count();
          if (times != 0 && times != 3) {
            faults.note(
                "",
                times + " of three times",
                "must state sandTime, siltTime and totalTime, or none of them");
          }
        });
    return s.makes(
        v ->
            new JarReading(
                v.get(sandTop),
                v.get(siltTop),
                v.get(total),
                v.get(waterDepth),
                v.get(temperature),
                v.get(dispersed),
                v.find(sandTime),
                v.find(siltTime),
                v.find(totalTime)));
  }

  static Shape<LaboratorySheet> laboratorySheet() {
    Shape<LaboratorySheet> s =
        Shape.of(LaboratorySheet.class, "shares of clay, silt and sand from a laboratory");
    Key<Double> clay = s.required("clay", Quantities.ratio(0, 1), "share of clay in dry mass");
    Key<Double> silt = s.required("silt", Quantities.ratio(0, 1), "share of silt in dry mass");
    Key<Double> sand = s.required("sand", Quantities.ratio(0, 1), "share of sand in dry mass");
    Key<SizeSystem> limits =
        s.assumed(
            "limits",
            Kinds.choice(SizeSystem.class, SizeSystem::word),
            "the limits between clay, silt and sand",
            SizeSystem.USDA,
            "usda",
            "the sheet names no limits");
    Key<Double> uncertainty =
        s.assumed(
            "uncertainty",
            Quantities.ratio(0.01, 0.2),
            "standard uncertainty of each share",
            0.02,
            "2 %",
            "common practice: hydrometer or pipette in a routine laboratory");
    Key<Double> organicMatter =
        s.optional(
            "organicMatter", Quantities.ratio(0, 1), "organic matter as a share of dry mass");
    Key<Double> solubleSalts =
        s.optional(
            "solubleSalts",
            Quantities.ratio(0, 1),
            "salts that dissolve in water as a share of dry mass");
    s.rule(
        (v, faults) -> {
          double sum = v.get(clay) + v.get(silt) + v.get(sand);
          // Three shares rounded to whole per cents may add to 99 or 101.
          if (Math.abs(sum - 1) > 0.015) {
            faults.note(
                "",
                "shares that add to " + Numbers.significant(sum, 4),
                "must add to 1 within 0.015, which is what rounding three numbers can lose");
          }
        });
    return s.makes(
        v ->
            new LaboratorySheet(
                v.get(clay),
                v.get(silt),
                v.get(sand),
                v.get(limits),
                v.get(uncertainty),
                v.find(organicMatter),
                v.find(solubleSalts)));
  }

  private static Shape<SieveReading> sieveReading() {
    Shape<SieveReading> s = Shape.of(SieveReading.class, "the mass held by one sieve");
    Key<Double> opening =
        s.required("opening", Quantities.length("mm", 0.02, 100), "opening of the sieve");
    Key<Double> retained =
        s.required(
            "retained", Quantities.of(Dimension.MASS, "g", 0, 100000), "dry mass held by it");
    return s.makes(v -> new SieveReading(v.get(opening), v.get(retained)));
  }

  static Shape<SieveSheet> sieveSheet() {
    Shape<SieveSheet> s = Shape.of(SieveSheet.class, "a sieve analysis");
    Key<List<SieveReading>> sieves =
        s.required("sieves", Kinds.list(sieveReading(), 2, 40), "sieves, the coarsest first");
    Key<Double> pan =
        s.required("pan", Quantities.of(Dimension.MASS, "g", 0, 100000), "dry mass in the pan");
    Key<Boolean> washed =
        s.assumed(
            "washed",
            Kinds.flag(),
            "whether the fines were washed through",
            false,
            "false",
            "the sheet does not say that they were");
    return s.makes(v -> new SieveSheet(v.get(sieves), v.get(pan), v.get(washed)));
  }

  private static Shape<HydrometerReading> hydrometerReading() {
    Shape<HydrometerReading> s = Shape.of(HydrometerReading.class, "one reading of the hydrometer");
    Key<Double> time =
        s.required("time", Quantities.of(Dimension.TIME, "s", 20, 864000), "time since the start");
    Key<Double> density =
        s.required(
            "density",
            Quantities.of(Dimension.DENSITY, "kg/m3", -5, 60),
            "dry soil over volume as the hydrometer shows it; g/l is kg/m3");
    return s.makes(v -> new HydrometerReading(v.get(time), v.get(density)));
  }

  static Shape<HydrometerSheet> hydrometerSheet() {
    Shape<HydrometerSheet> s = Shape.of(HydrometerSheet.class, "a hydrometer analysis");
    Key<List<HydrometerReading>> readings =
        s.required(
            "readings", Kinds.list(hydrometerReading(), 2, 40), "readings in the order of time");
    Key<Double> soilPerVolume =
        s.required(
            "soilPerVolume",
            Quantities.of(Dimension.DENSITY, "kg/m3", 10, 120),
            "dry soil over volume of the suspension; g/l is kg/m3");
    Key<Double> temperature =
        s.assumed(
            "temperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", 15, 30),
            "temperature of the suspension",
            20.0,
            "20 degC",
            "common practice: a laboratory room");
    Key<Double> blank =
        s.assumed(
            "blank",
            Quantities.of(Dimension.DENSITY, "kg/m3", -5, 15),
            "reading in water with dispersant alone",
            0.0,
            "0 kg/m3",
            "the sheet gives no blank");
    Key<Double> particleDensity =
        s.assumed(
            "particleDensity",
            Quantities.of(Dimension.DENSITY, "kg/m3", 2400, 3000),
            "density of the grains",
            2650.0,
            "2650 kg/m3",
            "quartz");
    return s.makes(
        v ->
            new HydrometerSheet(
                v.get(readings),
                v.get(soilPerVolume),
                v.get(temperature),
                v.get(blank),
                v.get(particleDensity)));
  }

  static Shape<ShrinkageBar> shrinkageBar() {
    Shape<ShrinkageBar> s = Shape.of(ShrinkageBar.class, "a bar of wet soil dried in a mould");
    Key<Double> mould =
        s.required("mould", Quantities.length("mm", 50, 1500), "length of the mould");
    Key<Double> gap =
        s.required(
            "gap",
            Quantities.length("mm", 0, 300),
            "gap when the pieces of the dry bar are pushed together");
    s.rule(
        (v, faults) -> {
          if (v.get(gap) >= v.get(mould)) {
            faults.note("gap", "a gap as long as the mould", "must be less than mould");
          }
        });
    return s.makes(v -> new ShrinkageBar(v.get(mould), v.get(gap)));
  }
}
