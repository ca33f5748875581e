package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.AggregateKind;
import io.github.seamstead.api.job.JarReading;
import io.github.seamstead.api.job.LaboratorySheet;
import io.github.seamstead.api.job.SizeSystem;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.mix.BulkingCurve;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.soil.JarTest;
import io.github.seamstead.materials.soil.JarTiming;
import io.github.seamstead.materials.soil.LaboratoryTexture;
import io.github.seamstead.materials.soil.RibbonTest;
import io.github.seamstead.materials.soil.SizeLimits;
import io.github.seamstead.materials.soil.SoilAssessment;
import io.github.seamstead.materials.soil.SoilEvidence;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.Texture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Assesses the local soils and describes the aggregates. */
final class SoilPlanner {

  private SoilPlanner() {}

  static List<SoilPart> plan(Run run) {
    List<SoilSample> samples = run.document().soils();
    if (samples.isEmpty()) {
      run.skip(Chapter.SOIL, "the document has no soils");
    }
    List<SoilPart> soils = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      SoilSample sample = samples.get(i);
      String path = "$.soils[" + i + "]";
      run.attempt(path, () -> assess(run, sample)).ifPresent(soils::add);
    }
    return soils;
  }

  private static SoilPart assess(Run run, SoilSample sample) {
    List<SoilEvidence> evidence = evidence(sample);
    SoilFinding finding =
        run.worked(
            "materials.soil.assessment",
            "What the soil " + sample.id() + " is",
            steps -> SoilAssessment.assess(evidence, steps));
    MixComponent component =
        MixComponent.claySoil(sample.id(), finding.texture().clay())
            .damp(sample.moisture(), sample.bulking());
    if (sample.linearShrinkage().isPresent()) {
      component = component.withLinearShrinkage(sample.linearShrinkage().get());
    }
    if (sample.pricePerTonne().isPresent()) {
      component = component.withPricePerTonne(sample.pricePerTonne().get());
    }
    return new SoilPart(sample, finding, component);
  }

  private static List<SoilEvidence> evidence(SoilSample sample) {
    List<SoilEvidence> evidence = new ArrayList<>();
    sample.ribbon().ifPresent(length -> evidence.add(RibbonTest.ofLength(length)));
    sample.jar().ifPresent(jar -> evidence.add(jar(jar)));
    sample.laboratory().ifPresent(sheet -> evidence.add(laboratory(sheet)));
    return evidence;
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
        jar.fall(),
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

  /** Describes an aggregate as a part of a mix. */
  static MixComponent component(Aggregate aggregate) {
    MixComponent component =
        aggregate.kind() == AggregateKind.SAND
            ? MixComponent.washedSand(aggregate.id())
            : MixComponent.gravel(
                aggregate.id(),
                aggregate.smallest().orElseThrow(),
                aggregate.largest().orElseThrow());
    double bulking =
        aggregate.kind() == AggregateKind.SAND && aggregate.moisture() <= 0.05
            ? BulkingCurve.published(aggregate.moisture())
            : 0;
    component = component.damp(aggregate.moisture(), bulking);
    Optional<Double> price = aggregate.pricePerTonne();
    return price.isPresent() ? component.withPricePerTonne(price.get()) : component;
  }
}
