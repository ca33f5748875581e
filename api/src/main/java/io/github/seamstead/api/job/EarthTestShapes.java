package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of what a builder weighs and measures of soils, sands and rammed packs. */
final class EarthTestShapes {

  private EarthTestShapes() {}

  private static Kind<Double> mass(String unit, double least, double greatest) {
    return Quantities.of(Dimension.MASS, unit, least, greatest);
  }

  static Kind<Double> moisture() {
    return Quantities.ratio(0, 0.6);
  }

  static Shape<DriedSample> driedSample() {
    Shape<DriedSample> s =
        Shape.of(DriedSample.class, "a sample dried in an oven or a pan to tell its moisture");
    Key<Double> wet = s.required("wet", mass("g", 1, 10000), "tin with the damp sample");
    Key<Double> dry = s.required("dry", mass("g", 1, 10000), "tin with the dry sample");
    Key<Double> tin = s.required("tin", mass("g", 0, 5000), "the empty tin");
    s.rule(
        (v, faults) -> {
          if (!(v.get(tin) < v.get(dry) && v.get(dry) <= v.get(wet))) {
            faults.note("", "masses out of order", "must have tin < dry <= wet");
          }
        });
    return s.makes(v -> new DriedSample(v.get(wet), v.get(dry), v.get(tin)));
  }

  static Shape<BulkingTin> bulkingTin() {
    Shape<BulkingTin> s =
        Shape.of(BulkingTin.class, "a straight tin of damp sand, flooded and stirred");
    Key<Double> damp =
        s.required("damp", Quantities.length("mm", 10, 1000), "height of the damp sand");
    Key<Double> flooded =
        s.required("flooded", Quantities.length("mm", 10, 1000), "height when flooded");
    s.rule(
        (v, faults) -> {
          if (v.get(flooded) > v.get(damp) || v.get(damp) > 2 * v.get(flooded)) {
            faults.note(
                "flooded",
                "a height that does not go with the damp one",
                "must be from half of damp to damp");
          }
        });
    return s.makes(v -> new BulkingTin(v.get(damp), v.get(flooded)));
  }

  static Shape<WeighedBucket> weighedBucket() {
    Shape<WeighedBucket> s =
        Shape.of(WeighedBucket.class, "a bucket of the material as it lies, struck level");
    Key<Double> volume =
        s.required(
            "volume", Quantities.of(Dimension.VOLUME, "l", 0.2, 1000), "volume of the material");
    Key<Double> mass =
        s.required("mass", mass("kg", 0.1, 3000), "mass of the material without the bucket");
    return s.makes(v -> new WeighedBucket(v.get(volume), v.get(mass)));
  }

  static Shape<ScreenedHeap> screenedHeap() {
    Shape<ScreenedHeap> s = Shape.of(ScreenedHeap.class, "stones screened out of a weighed heap");
    Key<Double> stones = s.required("stones", mass("kg", 0, 5000), "mass that the screen held");
    Key<Double> total = s.required("total", mass("kg", 0.1, 5000), "mass before screening");
    Key<Double> opening =
        s.required("opening", Quantities.length("mm", 2, 100), "opening of the screen");
    s.rule(
        (v, faults) -> {
          if (v.get(stones) > 0.9 * v.get(total)) {
            faults.note("stones", "almost all of the heap", "must be at most 0.9 of total");
          }
        });
    return s.makes(v -> new ScreenedHeap(v.get(stones), v.get(total), v.get(opening)));
  }

  private static Shape<CompactionPoint> point() {
    Shape<CompactionPoint> s = Shape.of(CompactionPoint.class, "one cylinder of a compaction test");
    Key<Double> wetMass =
        s.required("wetMass", mass("g", 100, 20000), "compacted earth without the mould");
    Key<Double> moisture = s.required("moisture", moisture(), "its water over dry mass");
    return s.makes(v -> new CompactionPoint(v.get(wetMass), v.get(moisture)));
  }

  private static Shape<SandCone> sandCone() {
    Shape<SandCone> s =
        Shape.of(SandCone.class, "a hole in the laid pack, refilled with sand of known density");
    Key<Double> poured = s.required("poured", mass("g", 100, 30000), "sand that left the jug");
    Key<Double> inCone =
        s.required("inCone", mass("g", 0, 10000), "sand that fills the cone alone");
    Key<Double> sandDensity =
        s.required(
            "sandDensity",
            Quantities.of(Dimension.DENSITY, "kg/m3", 1000, 2200),
            "density of that sand as it is poured");
    Key<Double> dug = s.required("dug", mass("g", 100, 30000), "damp earth dug out");
    Key<Double> moisture = s.required("moisture", moisture(), "its water over dry mass");
    s.rule(
        (v, faults) -> {
          if (v.get(inCone) >= v.get(poured)) {
            faults.note("inCone", "as much as was poured", "must be less than poured");
          }
        });
    return s.makes(
        v ->
            new SandCone(
                v.get(poured), v.get(inCone), v.get(sandDensity), v.get(dug), v.get(moisture)));
  }

  static Shape<CompactionTest> compactionTest() {
    Shape<CompactionTest> s =
        Shape.of(CompactionTest.class, "how a pack compacts, and how dense it was rammed");
    Key<Double> mould =
        s.assumed(
            "mould",
            Quantities.of(Dimension.VOLUME, "ml", 100, 10000),
            "volume of the mould",
            944e-6,
            "944 ml",
            "the 4 inch mould of the standard compaction test");
    Key<List<CompactionPoint>> points =
        s.required("points", Kinds.list(point(), 3, 20), "cylinders at different moistures");
    Key<Double> particleDensity =
        s.assumed(
            "particleDensity",
            Quantities.of(Dimension.DENSITY, "kg/m3", 2400, 3000),
            "density of the grains",
            2650.0,
            "2650 kg/m3",
            "common practice: sandy soils");
    Key<List<SandCone>> cones =
        s.or("cones", Kinds.list(sandCone(), 1, 20), "places of the laid pack", List.of());
    s.rule(
        (v, faults) -> {
          long kinds = v.get(points).stream().map(CompactionPoint::moisture).distinct().count();
          if (kinds < v.get(points).size()) {
            faults.note("points", "two cylinders of one moisture", "must differ in moisture");
          }
        });
    return s.makes(
        v -> new CompactionTest(v.get(mould), v.get(points), v.get(particleDensity), v.get(cones)));
  }

  static Shape<MixDesignSpec> design() {
    Shape<MixDesignSpec> s =
        Shape.of(
            MixDesignSpec.class,
            "a mix of the soil, the sand and other aggregates, found by calculation");
    Key<List<String>> with =
        s.required("with", Kinds.list(Kinds.id(), 1, 4), "the other aggregates, by their ids");
    Key<DesignAim> aim =
        s.assumed(
            "aim",
            Kinds.choice(DesignAim.class, DesignAim::word),
            "what decides among the mixes within the band of clay",
            DesignAim.GRADING,
            "grading",
            "common practice: a dense grading shrinks least");
    Key<Double> exponent =
        s.assumed(
            "exponent",
            Quantities.of(Dimension.RATIO, "1", 0.2, 0.8),
            "exponent of the grading curve that is aimed at",
            0.5,
            "0.5",
            "the classic power curve");
    Key<Double> greatestShrinkage =
        s.optional(
            "greatestShrinkage", Quantities.ratio(0.001, 0.3), "greatest linear shrinkage of it");
    return s.makes(
        v ->
            new MixDesignSpec(v.get(with), v.get(aim), v.get(exponent), v.find(greatestShrinkage)));
  }
}
