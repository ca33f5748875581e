package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.HydrometerSheet;
import io.github.seamstead.api.job.JarReading;
import io.github.seamstead.api.job.LaboratorySheet;
import io.github.seamstead.api.job.ShrinkageBar;
import io.github.seamstead.api.job.SieveSheet;
import io.github.seamstead.api.job.SizeSystem;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.ConsistencyLimits;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.HarmfulContent;
import io.github.seamstead.materials.soil.HydrometerTest;
import io.github.seamstead.materials.soil.JarTest;
import io.github.seamstead.materials.soil.JarTiming;
import io.github.seamstead.materials.soil.LaboratoryTexture;
import io.github.seamstead.materials.soil.LinearShrinkage;
import io.github.seamstead.materials.soil.NextTest;
import io.github.seamstead.materials.soil.RibbonTest;
import io.github.seamstead.materials.soil.RollTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SieveAnalysis;
import io.github.seamstead.materials.soil.SizeLimits;
import io.github.seamstead.materials.soil.SoilAssessment;
import io.github.seamstead.materials.soil.SoilEvidence;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.StonesScreened;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.materials.soil.TestReading;
import io.github.seamstead.materials.soil.Texture;
import io.github.seamstead.materials.soil.UnifiedGroup;
import io.github.seamstead.materials.soil.WarningSign;
import io.github.seamstead.materials.soil.WashTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Assesses the local soils and describes the aggregates. */
public final class SoilPlanner {

  private SoilPlanner() {}

  static List<SoilPart> plan(Run run) {
    run.attempt("$.aggregates", () -> recorded(run));
    List<SoilSample> samples = run.document().soils();
    if (samples.isEmpty()) {
      run.skip(Chapter.SOIL, "the document has no soils");
    }
    List<SoilPart> soils = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      run.goOn();
      SoilSample sample = samples.get(i);
      String path = "$.soils[" + i + "]";
      run.attempt(path, () -> assess(run, sample)).ifPresent(soils::add);
    }
    return soils;
  }

  private static boolean recorded(Run run) {
    EarthMaterials.record(run);
    return true;
  }

  /** Begins to assess every soil beside the chapters that come first. */
  static void ahead(Run run) {
    for (SoilSample sample : run.document().soils()) {
      run.beside().begin(sample, () -> known(run, evidence(sample)));
    }
  }

  private static SoilPart assess(Run run, SoilSample sample) {
    List<SoilEvidence> evidence = evidence(sample);
    Known known =
        run.beside()
            .begun(sample, Known.class)
            .orElseGet(
                () ->
                    run.recalled(
                        new KnownOf(evidence, run.isBrief()),
                        Known.class,
                        () -> known(run, evidence)));
    SoilFinding finding =
        run.worked(
            "materials.soil.assessment",
            "What the soil " + sample.id() + " is",
            steps ->
                run.options().worked() ? SoilAssessment.assess(evidence, steps) : known.finding());
    SoilSums.record(run, sample, finding);
    run.cautions(Chapter.SOIL, known.floor().cautions());
    return new SoilPart(
        sample,
        finding,
        EarthMaterials.component(run, sample, finding),
        known.floor(),
        known.next(),
        known.readings(),
        SoilSums.stoniness(run, sample.id(), finding),
        group(finding));
  }

  /** What is known of a soil depends on its tests, and on whether it is asked what to test next. */
  private record KnownOf(List<SoilEvidence> evidence, boolean brief) {}

  /**
   * What the tests of a soil tell.
   *
   * @param finding what they say together
   * @param floor how fit it is for a floor
   * @param next what to test next; none where that is not asked
   * @param readings what each test says alone
   */
  private record Known(
      SoilFinding finding, Suitability floor, List<NextTest> next, List<TestReading> readings) {}

  /** Works on any thread; a run that is cancelled is heard between the sums. */
  private static Known known(Run run, List<SoilEvidence> evidence) {
    run.goOn();
    SoilFinding finding = SoilAssessment.assess(evidence);
    run.goOn();
    Suitability floor = Suitability.of(finding, SoilUse.FLOOR);
    run.goOn();
    List<NextTest> next = run.isBrief() ? List.of() : NextTest.rank(finding);
    run.goOn();
    return new Known(finding, floor, next, TestReading.of(finding));
  }

  private static Optional<UnifiedGroup> group(SoilFinding finding) {
    return finding.evidence().stream()
        .filter(SieveAnalysis.class::isInstance)
        .map(SieveAnalysis.class::cast)
        .findFirst()
        .flatMap(sieve -> UnifiedGroup.of(sieve, SoilSums.limits(finding)));
  }

  private static List<SoilEvidence> evidence(SoilSample sample) {
    List<SoilEvidence> evidence = new ArrayList<>();
    sample.squeeze().map(SqueezeTest::new).ifPresent(evidence::add);
    sample.drop().map(DropTest::new).ifPresent(evidence::add);
    sample.thread().map(RollTest::holding).ifPresent(evidence::add);
    if (sample.cannotBeRolled()) {
      evidence.add(RollTest.cannotBeRolled());
    }
    sample.bend().map(BendTest::new).ifPresent(evidence::add);
    sample.ribbon().map(RibbonTest::ofLength).ifPresent(evidence::add);
    sample.wash().map(WashTest::new).ifPresent(evidence::add);
    sample.shine().map(ShineTest::new).ifPresent(evidence::add);
    sample.dryStrength().map(DryStrengthTest::new).ifPresent(evidence::add);
    sample.jar().map(SoilPlanner::jar).ifPresent(evidence::add);
    sample
        .laboratory()
        .ifPresent(
            sheet -> {
              evidence.add(laboratory(sheet));
              sheet
                  .organicMatter()
                  .map(r -> new HarmfulContent(HarmfulContent.Kind.ORGANIC_MATTER, r))
                  .ifPresent(evidence::add);
              sheet
                  .solubleSalts()
                  .map(r -> new HarmfulContent(HarmfulContent.Kind.SOLUBLE_SALTS, r))
                  .ifPresent(evidence::add);
            });
    sample.sieve().map(SoilPlanner::sieve).ifPresent(evidence::add);
    sample.hydrometer().map(SoilPlanner::hydrometer).ifPresent(evidence::add);
    sample
        .liquidLimit()
        .map(limit -> new ConsistencyLimits(limit, sample.plasticLimit().orElseThrow()))
        .ifPresent(evidence::add);
    sample.shrinkage().map(SoilPlanner::shrinkage).ifPresent(evidence::add);
    sample
        .screened()
        .map(heap -> new StonesScreened(heap.stones(), heap.total(), heap.opening()))
        .ifPresent(evidence::add);
    sample.signs().stream().map(WarningSign::new).forEach(evidence::add);
    return evidence;
  }

  /**
   * Reads a shrinkage bar.
   *
   * @param bar the bar
   * @return its linear shrinkage
   */
  public static LinearShrinkage shrinkage(ShrinkageBar bar) {
    return LinearShrinkage.ofGap(bar.mould(), bar.gap());
  }

  private static SieveAnalysis sieve(SieveSheet sheet) {
    return new SieveAnalysis(
        sheet.sieves().stream()
            .map(s -> new SieveAnalysis.Sieve(s.opening(), s.retained()))
            .toList(),
        sheet.pan(),
        sheet.washed());
  }

  private static HydrometerTest hydrometer(HydrometerSheet sheet) {
    return new HydrometerTest(
        sheet.readings().stream()
            .map(r -> new HydrometerTest.Reading(r.time(), r.density()))
            .toList(),
        sheet.soilPerVolume(),
        sheet.temperature(),
        sheet.blank(),
        sheet.particleDensity());
  }

  private static JarTest jar(JarReading jar) {
    List<JarTiming> timings =
        jar.sandTime().isPresent()
            ? List.of(
                JarTiming.measured(
                    jar.sandTime().get(),
                    jar.siltTime().orElseThrow(),
                    jar.totalTime().orElseThrow()))
            : JarTiming.PUBLISHED;
    return new JarTest(
        jar.sandTop(),
        jar.siltTop(),
        jar.total(),
        jar.waterDepth(),
        jar.temperature(),
        jar.dispersed(),
        timings);
  }

  private static LaboratoryTexture laboratory(LaboratorySheet sheet) {
    SizeLimits limits = sheet.limits() == SizeSystem.ISO ? SizeLimits.ISO_14688 : SizeLimits.USDA;
    return new LaboratoryTexture(
        Texture.ofPercent(sheet.clay() * 100, sheet.silt() * 100, sheet.sand() * 100),
        sheet.uncertainty(),
        limits);
  }
}
