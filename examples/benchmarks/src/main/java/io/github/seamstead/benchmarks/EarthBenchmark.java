package io.github.seamstead.benchmarks;

import io.github.seamstead.materials.mix.BucketRounding;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.GradingTarget;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.MixDesign;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.MixTarget;
import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.JarTest;
import io.github.seamstead.materials.soil.JarTiming;
import io.github.seamstead.materials.soil.LaboratoryTexture;
import io.github.seamstead.materials.soil.NextTest;
import io.github.seamstead.materials.soil.RibbonTest;
import io.github.seamstead.materials.soil.RollTest;
import io.github.seamstead.materials.soil.SizeLimits;
import io.github.seamstead.materials.soil.SoilAssessment;
import io.github.seamstead.materials.soil.SoilEvidence;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.Texture;
import io.github.seamstead.materials.soil.WashTest;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What a soil is from six tests, the next test, and a mix of three components. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class EarthBenchmark {

  private final List<SoilEvidence> tests =
      List.of(
          RibbonTest.ofLength(0.05),
          new BendTest(BendTest.Outcome.CRACKED_RING),
          new WashTest(WashTest.Outcome.SOAPY),
          RollTest.holding(0.0012),
          new JarTest(0.02, 0.045, 0.08, 0.16, 18, true, JarTiming.PUBLISHED),
          LaboratoryTexture.of(Texture.ofPercent(42, 28, 30), SizeLimits.ISO_14688));
  private final SoilFinding nothingKnown = SoilAssessment.assess(List.of());
  private final List<MixComponent> components =
      List.of(
          MixComponent.claySoil("pit soil", new Uncertain(0.45, 0.04)),
          MixComponent.washedSand("washed sand"),
          MixComponent.gravel("pea gravel", 0.002, 0.010));
  private final MixTarget target = MixTarget.near(ClayBand.FLOOR, new GradingTarget(0.010, 0.5));

  /** One posterior with six pieces of evidence; to stay under 20 ms. */
  @Benchmark
  public SoilFinding soilOfSixTests() {
    return SoilAssessment.assess(tests);
  }

  /** Ranking of all tests when nothing is known, the dearest case. */
  @Benchmark
  public List<NextTest> nextTest() {
    return NextTest.rank(nothingKnown);
  }

  /** One mix to a grading within a clay band, in half buckets; to stay under 20 ms. */
  @Benchmark
  public MixSolution mixToGrading() {
    return MixDesign.solve(components, target, BucketRounding.HALF);
  }
}
