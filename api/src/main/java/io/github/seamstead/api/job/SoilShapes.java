package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WarningSign;
import io.github.seamstead.materials.soil.WashTest;
import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of soils and aggregates. */
final class SoilShapes {

  private SoilShapes() {}

  private static Key<String> id(Shape<?> s) {
    return s.required("id", Kinds.id(), "its name, by which mixes and layers call it");
  }

  private static Key<Double> pricePerTonne(Shape<?> s) {
    return s.optional(
        "pricePerTonne", Quantities.money(), "price of a tonne, in the money of the site");
  }

  private static Key<DriedSample> dried(Shape<?> s) {
    return s.optional(
        "dried", EarthTestShapes.driedSample(), "a sample dried to tell its moisture");
  }

  private static Key<WeighedBucket> weighed(Shape<?> s) {
    return s.optional(
        "weighed",
        EarthTestShapes.weighedBucket(),
        "a weighed bucket of it; tells how much a bucket holds");
  }

  static Shape<SoilSample> soilSample() {
    Shape<SoilSample> s =
        Shape.of(SoilSample.class, "a local soil and the tests that were made of it");
    Key<String> id = id(s);
    Key<String> note = s.optional("note", Kinds.text(), "where it was dug");
    Key<SqueezeTest.Outcome> squeeze = SoilTestKeys.squeeze(s);
    Key<DropTest.Outcome> drop = SoilTestKeys.drop(s);
    Key<Double> thread = SoilTestKeys.thread(s);
    Key<Boolean> cannotBeRolled =
        s.or("cannotBeRolled", Kinds.flag(), "true if no thread holds", false);
    Key<BendTest.Outcome> bend = SoilTestKeys.bend(s);
    Key<Double> ribbon = SoilTestKeys.ribbon(s);
    Key<WashTest.Outcome> wash = SoilTestKeys.wash(s);
    Key<ShineTest.Outcome> shine = SoilTestKeys.shine(s);
    Key<DryStrengthTest.Outcome> dryStrength = SoilTestKeys.dryStrength(s);
    Key<JarReading> jar = SoilTestKeys.jar(s);
    Key<LaboratorySheet> laboratory = SoilTestKeys.laboratory(s);
    Key<SieveSheet> sieve = SoilTestKeys.sieve(s);
    Key<HydrometerSheet> hydrometer = SoilTestKeys.hydrometer(s);
    Key<Double> liquidLimit = s.optional("liquidLimit", Quantities.ratio(0.05, 5), "liquid limit");
    Key<Double> plasticLimit =
        s.optional("plasticLimit", Quantities.ratio(0.02, 5), "plastic limit");
    Key<ShrinkageBar> shrinkage = SoilTestKeys.shrinkage(s);
    Key<List<WarningSign.Kind>> signs =
        s.or(
            "signs",
            Kinds.list(Kinds.constant(WarningSign.Kind.class), 1, 3),
            "warning signs noticed",
            List.of());
    Key<Double> moisture =
        s.assumed(
            "moisture",
            Quantities.ratio(0, 0.6),
            "water over dry mass as it lies",
            0.12,
            "12 %",
            "common practice: dug soil that crumbles in the hand");
    Key<Double> bulking =
        s.assumed(
            "bulking",
            Quantities.ratio(0, 1),
            "how much more room it takes as it lies than dry",
            0.0,
            "0",
            "measured loose as it lies");
    Key<Double> stones =
        s.assumed(
            "stones",
            Quantities.ratio(0, 0.9),
            "share of the raw soil that is screened out",
            0.0,
            "0",
            "no stones reported");
    Key<DriedSample> dried = dried(s);
    Key<WeighedBucket> weighed = weighed(s);
    Key<ScreenedHeap> screened =
        s.optional(
            "screened",
            EarthTestShapes.screenedHeap(),
            "a weighed heap that was screened; tells stones");
    Key<Double> pricePerTonne = pricePerTonne(s);
    s.either(moisture, dried);
    s.either(bulking, weighed);
    s.either(stones, screened);
    s.rule(
        (v, faults) -> {
          if (v.has(liquidLimit) != v.has(plasticLimit)) {
            faults.note(
                "", "one of two limits", "must state liquidLimit and plasticLimit, or neither");
          } else if (v.has(liquidLimit)
              && v.find(plasticLimit).orElse(0.0) > v.find(liquidLimit).orElse(0.0)) {
            faults.note(
                "plasticLimit",
                "a plastic limit above the liquid limit",
                "must be at most liquidLimit");
          }
          if (v.get(cannotBeRolled) && v.has(thread)) {
            faults.note(
                "thread",
                "a thread of a soil that cannot be rolled",
                "must state thread or cannotBeRolled, not both");
          }
        });
    return s.makes(
        v ->
            new SoilSample(
                v.get(id),
                v.find(note),
                v.find(squeeze),
                v.find(drop),
                v.find(thread),
                v.get(cannotBeRolled),
                v.find(bend),
                v.find(ribbon),
                v.find(wash),
                v.find(shine),
                v.find(dryStrength),
                v.find(jar),
                v.find(laboratory),
                v.find(sieve),
                v.find(hydrometer),
                v.find(liquidLimit),
                v.find(plasticLimit),
                v.find(shrinkage),
                v.get(signs),
                v.get(moisture),
                v.get(bulking),
                v.get(stones),
                v.find(dried),
                v.find(weighed),
                v.find(screened),
                v.find(pricePerTonne)));
  }

  static Shape<Aggregate> aggregate() {
    Shape<Aggregate> s = Shape.of(Aggregate.class, "sand or gravel that is bought or screened");
    Key<String> id = id(s);
    Key<AggregateKind> kind =
        s.required(
            "kind", Kinds.choice(AggregateKind.class, AggregateKind::word), "sand or gravel");
    Key<Double> smallest =
        s.optional("smallest", Quantities.length("mm", 0.01, 100), "smallest grain of a gravel");
    Key<Double> largest = s.optional("largest", Quantities.length("mm", 0.1, 200), "largest grain");
    Key<Double> moisture =
        s.assumed(
            "moisture",
            Quantities.ratio(0, 0.3),
            "water over dry mass as it lies",
            0.04,
            "4 %",
            "common practice: washed sand that stands in a heap");
    Key<Double> deliveryStep =
        s.assumed(
            "deliveryStep",
            Quantities.of(Dimension.MASS, "kg", 1, 20000),
            "mass in which it is sold",
            100.0,
            "100 kg",
            "common practice: loose at the quarry or yard");
    Key<Double> clay =
        s.optional(
            "clay",
            Quantities.ratio(0, 0.3),
            "share of clay in its dry mass, as pit sand has; none if left out");
    Key<Double> clayUncertainty =
        s.assumed(
            "clayUncertainty",
            Quantities.ratio(0.001, 0.1),
            "standard uncertainty of that share",
            0.02,
            "2 %",
            "common practice: a jar test of the sand");
    Key<BulkingTin> tin =
        s.optional(
            "bulkingTin",
            EarthTestShapes.bulkingTin(),
            "the sand in a tin, damp and flooded; tells its bulking");
    Key<DriedSample> dried = dried(s);
    Key<WeighedBucket> weighed = weighed(s);
    Key<Double> pricePerTonne = pricePerTonne(s);
    s.either(moisture, dried);
    s.onlyWith(clayUncertainty, clay);
    s.rule(
        (v, faults) -> {
          if (v.has(tin) && v.get(kind) == AggregateKind.GRAVEL) {
            faults.note("bulkingTin", "a tin of gravel", "must be left out: gravel does not bulk");
          }
          if (v.get(kind) == AggregateKind.GRAVEL && !(v.has(smallest) && v.has(largest))) {
            faults.note("", "a gravel without its sizes", "must state smallest and largest");
          }
        });
    return s.makes(
        v ->
            new Aggregate(
                v.get(id),
                v.get(kind),
                v.find(smallest),
                v.find(largest),
                v.get(moisture),
                v.get(deliveryStep),
                v.find(clay),
                v.get(clayUncertainty),
                v.find(tin),
                v.find(dried),
                v.find(weighed),
                v.find(pricePerTonne)));
  }
}
