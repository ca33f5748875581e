package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.SoilPlanner;
import io.github.seamstead.api.chapter.soil.TrialPart;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.materials.drying.CrackChange;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.materials.mix.Shrinkage;
import io.github.seamstead.materials.mix.TrialReading;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Forecasts the cracks of coats from the soil's bar and from trial samples of the mix. */
final class CrackPlanner {

  private final Run run;
  private final List<SoilPart> soils;
  private final List<MixPart> mixes;
  private final List<TrialPart> trials;

  CrackPlanner(Run run, List<SoilPart> soils, List<MixPart> mixes, List<TrialPart> trials) {
    this.run = run;
    this.soils = soils;
    this.mixes = mixes;
    this.trials = trials;
  }

  /** The cracks of a coat; a sample of the mix as it is laid counts more than the forecast. */
  Optional<Cracking> of(EarthLayer layer) {
    if (layer.role() != LayerRole.EARTH_COAT) {
      return Optional.empty();
    }
    MixPart mix = mixOf(layer);
    Optional<Cracking> forecast = forecast(layer, mix);
    Optional<TrialSample> sample = sample(layer, mix);
    if (sample.isEmpty()) {
      if (forecast.isEmpty()) {
        run.skip(
            Chapter.DRYING,
            "cracks of "
                + layer.name()
                + ": the soil "
                + mix.spec().soil()
                + " has no shrinkage bar and the mix no trial sample");
      }
      return forecast;
    }
    double crack = sample.get().crack();
    double length = sample.get().mould();
    return Optional.of(
        forecast
            .map(f -> f.measuredBy(crack, length))
            .orElseGet(() -> Cracking.ofSample(crack, length)));
  }

  /** Keeps the sums of the cracks and of the slip that fills them. */
  void record(EarthLayer layer, Cracking cracking, double area) {
    run.workedOnly(
        "materials.drying.crack-width",
        "Cracks of " + layer.name() + " by the soil's bar",
        steps ->
            Cracking.widthPerMetre(
                cracking.freeShrinkage().likely(),
                cracking.restraint().likely(),
                cracking.stretch().likely(),
                steps));
    run.workedOnly(
        "materials.drying.crack-width-doubt",
        "How sure are the cracks of " + layer.name() + "?",
        cracking::forecastDoubt);
    run.workedOnly(
        "materials.drying.slip",
        "Slip for " + layer.name(),
        steps ->
            SlipRepair.volume(
                cracking.crackShare().likely(),
                area,
                layer.thickness(),
                SlipRepair.USUAL_SKIM,
                steps));
  }

  /** What each change of a coat would do to its cracks. */
  List<CrackChange> changes(EarthLayer layer, Cracking cracking) {
    MixPart mix = mixOf(layer);
    return CrackChange.of(
        cracking,
        part(layer, mix.spec().soil()).map(p -> p.dryMassShare()).orElse(1.0),
        mix.choice().sandParts(),
        layer.mix().fibreShare() > 0,
        layer.thickness());
  }

  private MixPart mixOf(EarthLayer layer) {
    String id = layer.mix().name();
    return mixes.stream().filter(m -> m.spec().id().equals(id)).findFirst().orElseThrow();
  }

  private Optional<Cracking> forecast(EarthLayer layer, MixPart mix) {
    Optional<SoilPart> soil =
        soils.stream().filter(s -> s.sample().id().equals(mix.spec().soil())).findFirst();
    double share = part(layer, mix.spec().soil()).map(p -> p.dryMassShare()).orElse(0.0);
    return soil.flatMap(s -> s.sample().shrinkage())
        .map(bar -> SoilPlanner.shrinkage(bar).ratio())
        .map(
            shrinkage -> {
              Range free = Shrinkage.ofMix(shrinkage, share);
              return Cracking.of(
                  free,
                  Cracking.ROUGH_BASE,
                  layer.mix().fibreShare() > 0 ? Cracking.WITH_FIBRE : Cracking.WITHOUT_FIBRE);
            });
  }

  private Optional<TrialSample> sample(EarthLayer layer, MixPart mix) {
    double soil = looseVolume(layer, mix.spec().soil());
    if (soil <= 0) {
      return Optional.empty();
    }
    double parts =
        layer.mix().parts().stream()
                .filter(p -> !p.isFibre() && !p.name().equals(mix.spec().soil()))
                .mapToDouble(p -> p.dryMassShare() / p.looseDryDensity())
                .sum()
            / soil;
    return trials.stream()
        .filter(t -> t.trials().mix().equals(mix.spec().id()))
        .flatMap(t -> t.trials().samples().stream())
        .filter(s -> Math.abs(s.sandParts() - parts) <= TrialReading.SAME_PARTS)
        .min(Comparator.comparingDouble(s -> Math.abs(s.sandParts() - parts)));
  }

  private static double looseVolume(EarthLayer layer, String material) {
    return part(layer, material).map(p -> p.dryMassShare() / p.looseDryDensity()).orElse(0.0);
  }

  private static Optional<io.github.seamstead.materials.floor.MixPart> part(
      EarthLayer layer, String material) {
    return layer.mix().parts().stream().filter(p -> p.name().equals(material)).findFirst();
  }
}
