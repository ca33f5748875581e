package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.CompositionRange;
import io.github.seamstead.materials.mix.MixCautions;
import io.github.seamstead.materials.mix.MixChoice;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.materials.mix.TrialLadder;
import io.github.seamstead.materials.soil.SoilEvidence;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Proportions the mixes that the floor calls. */
final class MixPlanner {

  private static final int MOST_SAMPLES = 5;

  private MixPlanner() {}

  static List<MixPart> plan(Run run, List<SoilPart> soils) {
    List<MixSpec> specs = run.document().floor().map(Floor::mixes).orElse(List.of());
    if (specs.isEmpty()) {
      run.skip(Chapter.MIX, "the document has no mixes under floor");
    }
    Map<String, SoilPart> bySoil = new HashMap<>();
    soils.forEach(soil -> bySoil.put(soil.sample().id(), soil));
    Map<String, Aggregate> byAggregate = new HashMap<>();
    run.document().aggregates().forEach(a -> byAggregate.put(a.id(), a));
    List<MixPart> mixes = new ArrayList<>();
    MixRefusals refusals = new MixRefusals();
    for (int i = 0; i < specs.size(); i++) {
      MixSpec spec = specs.get(i);
      SoilPart soil = bySoil.get(spec.soil());
      if (soil != null && byAggregate.containsKey(spec.sand())) {
        run.attempt("$.floor.mixes[" + i + "]", () -> mix(run, spec, soil, byAggregate, refusals))
            .flatMap(mix -> mix)
            .ifPresent(mixes::add);
      }
    }
    refusals.tell(run);
    if (!mixes.isEmpty()) {
      run.cautions(Chapter.MIX, MixCautions.of(false));
    }
    return mixes;
  }

  /** The mix; empty if the soil does not suit or is not known well enough. */
  private static Optional<MixPart> mix(
      Run run,
      MixSpec spec,
      SoilPart soil,
      Map<String, Aggregate> aggregates,
      MixRefusals refusals) {
    ClayBand band = band(spec);
    Suitability judged = judged(run, soil.finding(), SoilUse.valueOf(spec.use().name()), band);
    if (judged.verdict() == Suitability.Verdict.NOT_ADVISED) {
      refusals.add(spec, soil, judged);
      return Optional.empty();
    }
    MixComponent sand =
        component(aggregates, spec.sand()).withLooseDensityMoved(run.supposed().looseSand());
    ClayBlend blend =
        run.worked(
            "materials.mix.clay_blend",
            "The mix " + spec.id(),
            steps -> ClayBlend.of(soil.component(), sand, band, BucketRounding.HALF, steps));
    Optional<TrialPart> trial = TrialPlanner.read(run, spec, blend);
    boolean measured =
        spec.sandParts().isPresent() || trial.filter(t -> t.reading().decided()).isPresent();
    boolean open =
        judged.verdict() == Suitability.Verdict.NO_MIX_YET
            || judged.verdict() == Suitability.Verdict.OTHER_SOIL;
    if (open && !measured) {
      refusals.add(spec, soil, judged);
      trial.ifPresent(
          t -> t.reading().advice().forEach(a -> run.unmet(Chapter.MIX, spec.id() + ": " + a)));
      return Optional.empty();
    }
    Optional<MixSolution> design =
        spec.design().map(asked -> MixDesigner.design(run, spec, asked, soil, band, aggregates));
    MixChoice choice =
        design
            .map(MixChoice::designed)
            .orElseGet(() -> MixChoice.of(blend, trial.map(TrialPart::reading), spec.sandParts()));
    // The doubt is drawn, and takes a tenth of a second on a cold machine.
    run.goOn();
    Optional<Range> clay =
        run.isBrief()
            ? Optional.empty()
            : Optional.of(
                run.worked(
                        "materials.mix.clay_blend-doubt",
                        "How sure is the clay of the mix " + spec.id() + "?",
                        steps -> choice.recipe().clayDoubt(clay(soil), steps))
                    .sampled());
    run.goOn();
    choice.unmet().ifPresent(what -> run.unmet(Chapter.MIX, spec.id() + ": " + what));
    return Optional.of(
        new MixPart(
            spec,
            blend,
            choice,
            clay,
            trial,
            run.isBrief() ? Optional.empty() : ladder(soil, blend, choice),
            design,
            composition(spec, choice),
            floorMix(spec, choice.recipe(), soil.sample())));
  }

  /** The clay of the soil as its tests leave it, on the whole of its dry mass. */
  private static Map<String, Range> clay(SoilPart soil) {
    Range fine = soil.finding().texture().clayRange();
    double whole = soil.component().clayRatio().value();
    return fine.likely() > 0
        ? Map.of(soil.component().name(), fine.times(whole / fine.likely()))
        : Map.of();
  }

  private static Suitability judged(Run run, SoilFinding finding, SoilUse use, ClayBand band) {
    return run.recalled(
        new JudgedOf(finding.evidence(), use, band.least(), band.greatest()),
        Suitability.class,
        () -> Suitability.of(finding, use, band.least(), band.greatest(), Suitability.REQUIRED));
  }

  /** What the fitness for a use depends on. */
  private record JudgedOf(
      List<SoilEvidence> evidence, SoilUse use, double least, double greatest) {}

  static MixComponent component(Map<String, Aggregate> aggregates, String id) {
    return EarthMaterials.component(Optional.ofNullable(aggregates.get(id)).orElseThrow());
  }

  /** In which way the grading leaves the published envelope for the use. */
  private static List<String> composition(MixSpec spec, MixChoice choice) {
    return CompositionRange.of(SoilUse.valueOf(spec.use().name()))
        .map(range -> range.outside(choice.recipe().grading()))
        .orElse(List.of());
  }

  private static Optional<TrialLadder> ladder(SoilPart soil, ClayBlend blend, MixChoice choice) {
    if (choice.ground() != MixChoice.Ground.CALCULATED || choice.unmet().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        TrialLadder.design(
            blend.exact().portions().get(0).component(),
            blend.exact().portions().get(1).component(),
            blend.band(),
            Basis.LOOSE_VOLUME,
            1,
            MOST_SAMPLES,
            limit ->
                limit < 1 ? soil.finding().texture().probabilityOfClay(Math.max(0, limit), 1) : 0));
  }

  private static ClayBand band(MixSpec spec) {
    Optional<Double> least = spec.leastClay();
    Optional<Double> greatest = spec.greatestClay();
    if (least.isPresent() && greatest.isPresent()) {
      return ClayBand.of(least.get(), greatest.get());
    }
    return switch (spec.use()) {
      case FLOOR -> ClayBand.FLOOR;
      case COB -> ClayBand.COB;
      case PRESSED_BLOCK -> ClayBand.PRESSED_BLOCK;
      case RAMMED_EARTH -> ClayBand.RAMMED_EARTH;
      case PLASTER -> ClayBand.PLASTER;
    };
  }

  private static FloorMix floorMix(MixSpec spec, Recipe recipe, SoilSample soil) {
    List<io.github.seamstead.materials.floor.MixPart> parts = new ArrayList<>();
    List<Double> shares = recipe.dryMassRatios();
    for (int i = 0; i < shares.size(); i++) {
      MixComponent component = recipe.portions().get(i).component();
      if (shares.get(i) > 0) {
        parts.add(
            new io.github.seamstead.materials.floor.MixPart(
                component.name(),
                shares.get(i),
                component.dryMassPerLooseVolume().value(),
                component.moistureRatio(),
                component.name().equals(soil.id()) ? EarthMaterials.stones(soil) : 0));
      }
    }
    double spread = spec.densitySpread();
    Range density =
        new Range(spec.density() * (1 - spread), spec.density(), spec.density() * (1 + spread));
    return new FloorMix(spec.id(), parts, density, spec.placingMoisture(), spec.largestGrain());
  }
}
