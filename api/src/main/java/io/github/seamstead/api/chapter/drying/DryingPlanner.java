package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.SoilPlanner;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Shrinkage;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Forecasts how the mixed layers dry and crack. */
final class DryingPlanner {

  /** Plastic limit of a sandy floor mix where no test of the mix is stated (common practice). */
  private static final double MIX_PLASTIC_LIMIT = 0.14;

  /** Thickness of a skim of slip over the mended coat, in metres (common practice). */
  private static final double SKIM = 0.001;

  /** Air over the floor beyond which no more of it is advised, in m/s (Beaufort 8, from memory). */
  private static final double GALE = 17.2;

  private DryingPlanner() {}

  static List<DryingPart> plan(
      Run run, Optional<FloorPart> floor, List<SoilPart> soils, List<MixPart> mixes) {
    if (floor.isEmpty()) {
      return List.of();
    }
    Optional<Weather> weather = run.document().weather();
    if (weather.isEmpty()) {
      run.skip(Chapter.DRYING, "the document has no weather");
      return List.of();
    }
    run.assume(
        "$.floor.mixes[*].plasticLimit",
        "14 %",
        "common practice: a sandy floor mix is firm at its plastic limit");
    List<DryingPart> parts = new ArrayList<>();
    for (EarthQuantity quantity : floor.get().buildUp().earth()) {
      if (quantity.layer().mixed()) {
        run.attempt("$.weather", () -> part(run, quantity, weather.get(), soils, mixes))
            .ifPresent(parts::add);
      }
    }
    return parts;
  }

  private static DryingPart part(
      Run run, EarthQuantity quantity, Weather stated, List<SoilPart> soils, List<MixPart> mixes) {
    EarthLayer layer = quantity.layer();
    DryingSlab slab =
        DryingSlab.sealed(
            layer.thickness(),
            layer.mix().compactedDryDensity().likely(),
            layer.mix().placingMoisture(),
            EarthMoisture.sandyMix());
    io.github.seamstead.materials.drying.Weather weather =
        io.github.seamstead.materials.drying.Weather.constant(
            new AirState(stated.temperature(), stated.humidity(), stated.airSpeed()));
    double firm = Math.min(MIX_PLASTIC_LIMIT, layer.mix().placingMoisture());
    DryingCriteria criteria = DryingCriteria.ofPlasticLimit(firm);
    double days = stated.horizon() / io.github.seamstead.materials.drying.Weather.DAY;
    Optional<DryingForecast.Comparison> aired =
        stated.airSpeed() * DryingPart.AIRED > GALE
            ? Optional.empty()
            : Optional.of(
                DryingForecast.compare(
                    slab,
                    weather,
                    weather.changed(0, DryingPart.AIRED),
                    criteria,
                    DryingDoubt.published(),
                    days));
    DryingForecast forecast =
        aired
            .map(DryingForecast.Comparison::asIs)
            .orElseGet(
                () -> DryingForecast.of(slab, weather, criteria, DryingDoubt.published(), days));
    Optional<Cracking> cracking = cracking(run, layer, soils, mixes);
    return new DryingPart(
        layer,
        forecast,
        cracking,
        cracking.map(c -> c.slip(quantity.area(), layer.thickness(), SKIM, layer.mix())),
        aired);
  }

  private static Optional<Cracking> cracking(
      Run run, EarthLayer layer, List<SoilPart> soils, List<MixPart> mixes) {
    if (layer.role() != LayerRole.EARTH_COAT) {
      return Optional.empty();
    }
    MixPart mix =
        mixes.stream().filter(m -> m.floorMix().equals(layer.mix())).findFirst().orElseThrow();
    SoilPart soil =
        soils.stream()
            .filter(s -> s.sample().id().equals(mix.spec().soil()))
            .findFirst()
            .orElseThrow();
    if (soil.sample().shrinkage().isEmpty()) {
      run.skip(
          Chapter.DRYING,
          "cracks of "
              + layer.name()
              + ": the soil "
              + mix.spec().soil()
              + " has no shrinkage bar");
      return Optional.empty();
    }
    double shrinkage = SoilPlanner.shrinkage(soil.sample().shrinkage().get()).ratio();
    double share = mix.blend().rounded().dryMassRatios().get(0);
    Range free = Shrinkage.ofMix(shrinkage, share);
    return Optional.of(
        Cracking.of(
            free,
            Cracking.ROUGH_BASE,
            mix.spec().fibre() ? Cracking.WITH_FIBRE : Cracking.WITHOUT_FIBRE));
  }
}
