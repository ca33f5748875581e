package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.AggregateKind;
import io.github.seamstead.api.job.BulkingTin;
import io.github.seamstead.api.job.DriedSample;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.api.job.WeighedBucket;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.water.Moisture;
import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Optional;

/** Soils and aggregates as parts of a mix, as damp and as loose as they lie. */
public final class EarthMaterials {

  private EarthMaterials() {}

  /**
   * Gives the moisture of a soil as it lies.
   *
   * @param soil the soil
   * @return water over dry mass, from a dried sample if there is one
   */
  public static double moisture(SoilSample soil) {
    return dried(soil.dried(), Steps.none()).orElse(soil.moisture());
  }

  /**
   * Gives the moisture of an aggregate as it lies.
   *
   * @param aggregate the aggregate
   * @return water over dry mass, from a dried sample if there is one
   */
  public static double moisture(Aggregate aggregate) {
    return dried(aggregate.dried(), Steps.none()).orElse(aggregate.moisture());
  }

  /**
   * Gives the share of the raw soil that is screened out.
   *
   * @param soil the soil
   * @return share of the mass, from a screened heap if there is one
   */
  static double stones(SoilSample soil) {
    return soil.screened().map(heap -> heap.stones() / heap.total()).orElse(soil.stones());
  }

  /**
   * Describes a soil as a part of a mix, without its stones.
   *
   * @param run the run, which may suppose other numbers than the likely ones
   * @param soil the soil
   * @param finding what its tests say
   * @return the part
   */
  static MixComponent component(Run run, SoilSample soil, SoilFinding finding) {
    Uncertain clay = finding.texture().clay();
    MixComponent likely =
        run.supposed().clay() == 0
            ? MixComponent.claySoil(soil.id(), finding.texture().mean(), clay.standardUncertainty())
            : MixComponent.claySoil(soil.id(), clay.moved(run.supposed().clay(), 0, 1));
    MixComponent component =
        likely
            .withLooseDensityMoved(run.supposed().looseSoil())
            .damp(moisture(soil), soil.bulking());
    if (soil.shrinkage().isPresent()) {
      component =
          component.withLinearShrinkage(SoilPlanner.shrinkage(soil.shrinkage().get()).ratio());
    }
    return priced(weighed(component, soil.weighed()), soil.pricePerTonne());
  }

  /**
   * Describes an aggregate as a part of a mix.
   *
   * @param aggregate the aggregate
   * @return the part, as damp as it lies
   */
  public static MixComponent component(Aggregate aggregate) {
    double moisture = moisture(aggregate);
    boolean sand = aggregate.kind() == AggregateKind.SAND;
    MixComponent component =
        sand
            ? sand(aggregate)
            : MixComponent.gravel(
                aggregate.id(),
                aggregate.smallest().orElseThrow(),
                aggregate.largest().orElseThrow());
    double bulking = sand ? bulking(aggregate, moisture) : 0;
    return priced(
        weighed(component.damp(moisture, bulking), aggregate.weighed()), aggregate.pricePerTonne());
  }

  private static MixComponent sand(Aggregate sand) {
    return sand.clay()
        .map(clay -> MixComponent.pitSand(sand.id(), new Uncertain(clay, sand.clayUncertainty())))
        .orElseGet(() -> MixComponent.washedSand(sand.id()));
  }

  private static double bulking(Aggregate sand, double moisture) {
    return sand.bulkingTin()
        .map(tin -> SandBulking.ofTin(tin.damp(), tin.flooded(), moisture))
        .orElseGet(SandBulking::published)
        .at(moisture)
        .likely();
  }

  private static MixComponent weighed(MixComponent component, Optional<WeighedBucket> bucket) {
    return bucket.map(b -> component.weighed(b.volume(), b.mass())).orElse(component);
  }

  private static MixComponent priced(MixComponent component, Optional<Double> price) {
    return price.map(component::withPricePerTonne).orElse(component);
  }

  private static Optional<Double> dried(Optional<DriedSample> sample, Steps steps) {
    return sample.map(s -> Moisture.ofTin(s.wet(), s.dry(), s.tin(), steps));
  }

  /** Keeps the sums of what was weighed and measured of the materials. */
  static void record(Run run) {
    for (SoilSample soil : run.document().soils()) {
      recordDried(run, soil.id(), soil.dried());
    }
    for (Aggregate aggregate : run.document().aggregates()) {
      recordDried(run, aggregate.id(), aggregate.dried());
      aggregate.bulkingTin().ifPresent(tin -> recordTin(run, aggregate.id(), tin));
      if (aggregate.kind() == AggregateKind.SAND) {
        MixComponent sand = component(aggregate);
        run.worked(
            "materials.water.bulked-density",
            "Dry mass in a loose cubic metre of " + aggregate.id(),
            steps ->
                SandBulking.bulkedDensity(
                    sand.looseDryDensity().value(), sand.bulkingRatio(), steps));
      }
    }
  }

  private static void recordDried(Run run, String id, Optional<DriedSample> sample) {
    if (sample.isPresent()) {
      run.worked("materials.water.tin", "Moisture of " + id, steps -> dried(sample, steps));
    }
  }

  private static void recordTin(Run run, String id, BulkingTin tin) {
    run.worked(
        "materials.water.bulking",
        "Bulking of " + id,
        steps -> SandBulking.tin(tin.damp(), tin.flooded(), steps));
  }
}
