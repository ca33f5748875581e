package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WashTest;
import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of a diary's lines about soil, floor and drying. */
final class DiaryFloorShapes {

  private DiaryFloorShapes() {}

  static Shape<DiaryEntry.Laid> laid() {
    Shape<DiaryEntry.Laid> s =
        Shape.of(DiaryEntry.Laid.class, "a layer of the floor laid, or a part of it");
    Key<String> layer =
        s.required("layer", Kinds.text(), "the layer, by its name, or its kind where it has none");
    Key<Integer> sector =
        s.optional(
            "sector",
            Kinds.count(1, 500),
            "the sector by its number on the floor map; the whole layer if left out");
    Key<Double> loads =
        s.optional(
            "loads",
            Quantities.ratio(0.1, 1000),
            "how many loads went into the sector; the whole sector if left out");
    s.rule(
        (v, faults) -> {
          if (v.has(loads) && !v.has(sector)) {
            faults.note("sector", "loads without a sector", "must state the sector they went into");
          }
        });
    return s.makes(v -> new DiaryEntry.Laid(v.get(layer), v.find(sector), v.find(loads)));
  }

  private static Key<String> tile(Shape<?> s) {
    return s.required("tile", Kinds.id(), "the tile, by the name scratched into it");
  }

  static Shape<DiaryEntry.TileMade> tileMade() {
    Shape<DiaryEntry.TileMade> s =
        Shape.of(DiaryEntry.TileMade.class, "a test tile filled with the mix of a layer");
    Key<String> tile = tile(s);
    Key<String> layer = s.required("layer", Kinds.text(), "the layer whose mix it is of");
    Key<Double> thickness =
        s.required("thickness", Quantities.length("mm", 5, 150), "thickness of the tile");
    Key<Double> area =
        s.required("area", Quantities.of(Dimension.AREA, "m2", 0.0025, 1), "area of its open face");
    Key<Double> scale =
        s.required(
            "scale",
            Quantities.of(Dimension.MASS, "kg", 1e-5, 1),
            "standard uncertainty of one weighing");
    return s.makes(
        v ->
            new DiaryEntry.TileMade(
                v.get(tile), v.get(layer), v.get(thickness), v.get(area), v.get(scale)));
  }

  static Shape<DiaryEntry.TileWeighed> tileWeighed() {
    Shape<DiaryEntry.TileWeighed> s =
        Shape.of(DiaryEntry.TileWeighed.class, "a test tile weighed, tray and all");
    Key<String> tile = tile(s);
    Key<Double> mass =
        s.required("mass", Quantities.of(Dimension.MASS, "kg", 0.01, 500), "tile and tray");
    return s.makes(v -> new DiaryEntry.TileWeighed(v.get(tile), v.get(mass)));
  }

  static Shape<DiaryEntry.TileCracked> tileCracked() {
    Shape<DiaryEntry.TileCracked> s =
        Shape.of(
            DiaryEntry.TileCracked.class,
            "a test tile that cracked; later weighings do not count, for cracks dry faster");
    Key<String> tile = tile(s);
    Key<Double> crack =
        s.required("crack", Quantities.length("mm", 0.1, 100), "width of the cracks, all together");
    return s.makes(v -> new DiaryEntry.TileCracked(v.get(tile), v.get(crack)));
  }

  static Shape<DiaryEntry.TrialMade> trialMade() {
    Shape<DiaryEntry.TrialMade> s =
        Shape.of(DiaryEntry.TrialMade.class, "a trial sample of a mix made and read");
    Key<String> mix = s.required("mix", Kinds.id(), "the mix, by its name");
    Key<TrialSample> sample = s.required("sample", TrialShapes.trialSample(), "the sample");
    return s.makes(v -> new DiaryEntry.TrialMade(v.get(mix), v.get(sample)));
  }

  static Shape<DiaryEntry.WeatherSeen> weather() {
    Shape<DiaryEntry.WeatherSeen> s =
        Shape.of(DiaryEntry.WeatherSeen.class, "the weather of the day, over the floor");
    Key<Double> temperature =
        s.required(
            "temperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -40, 60),
            "mean air temperature");
    Key<Double> humidity =
        s.required("humidity", Quantities.ratio(0, 1), "mean relative humidity of the air");
    Key<Double> airSpeed =
        s.required("airSpeed", Quantities.of(Dimension.SPEED, "m/s", 0.01, 30), "mean air speed");
    Key<Integer> days =
        s.or(
            "days",
            Kinds.count(1, 60),
            "how many days it holds for, the last of them that of the line; 1 if left out",
            1);
    return s.makes(
        v ->
            new DiaryEntry.WeatherSeen(
                v.get(temperature), v.get(humidity), v.get(airSpeed), v.get(days)));
  }

  static Shape<SoilTests> soilTests() {
    Shape<SoilTests> s =
        Shape.of(SoilTests.class, "tests made of one soil; what is left out stays as stated");
    Key<String> soil = s.required("soil", Kinds.id(), "the soil, by its name");
    Key<SqueezeTest.Outcome> squeeze = SoilTestKeys.squeeze(s);
    Key<DropTest.Outcome> drop = SoilTestKeys.drop(s);
    Key<Double> thread = SoilTestKeys.thread(s);
    Key<BendTest.Outcome> bend = SoilTestKeys.bend(s);
    Key<Double> ribbon = SoilTestKeys.ribbon(s);
    Key<WashTest.Outcome> wash = SoilTestKeys.wash(s);
    Key<ShineTest.Outcome> shine = SoilTestKeys.shine(s);
    Key<DryStrengthTest.Outcome> dryStrength = SoilTestKeys.dryStrength(s);
    Key<JarReading> jar = SoilTestKeys.jar(s);
    Key<LaboratorySheet> laboratory = SoilTestKeys.laboratory(s);
    Key<SieveSheet> sieve = SoilTestKeys.sieve(s);
    Key<HydrometerSheet> hydrometer = SoilTestKeys.hydrometer(s);
    Key<ShrinkageBar> shrinkage = SoilTestKeys.shrinkage(s);
    Key<Double> moisture =
        s.optional("moisture", Quantities.ratio(0, 0.6), "water over dry mass as it lies");
    List<Key<?>> tests =
        List.of(
            squeeze,
            drop,
            thread,
            bend,
            ribbon,
            wash,
            shine,
            dryStrength,
            jar,
            laboratory,
            sieve,
            hydrometer,
            shrinkage,
            moisture);
    s.rule(
        (v, faults) -> {
          if (tests.stream().noneMatch(v::has)) {
            faults.note("", "no test", "must state at least one test");
          }
        });
    return s.makes(
        v ->
            new SoilTests(
                v.get(soil),
                v.find(squeeze),
                v.find(drop),
                v.find(thread),
                v.find(bend),
                v.find(ribbon),
                v.find(wash),
                v.find(shine),
                v.find(dryStrength),
                v.find(jar),
                v.find(laboratory),
                v.find(sieve),
                v.find(hydrometer),
                v.find(shrinkage),
                v.find(moisture)));
  }
}
