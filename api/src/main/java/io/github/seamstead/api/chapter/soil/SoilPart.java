package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.soil.NextTest;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.materials.soil.TestReading;
import io.github.seamstead.materials.soil.UnifiedGroup;
import java.util.List;
import java.util.Optional;

/**
 * One local soil.
 *
 * @param sample the soil as the document gives it
 * @param finding what its tests say
 * @param component the soil as a part of a mix
 * @param floor whether it suits an earth floor, with reasons
 * @param nextTests the tests that would tell most for their effort, the best first
 * @param readings what each test says alone
 * @param stoniness the word that stones add to the texture class, if they are many
 * @param group its group by sieve and limits, if those were measured
 */
public record SoilPart(
    SoilSample sample,
    SoilFinding finding,
    MixComponent component,
    Suitability floor,
    List<NextTest> nextTests,
    List<TestReading> readings,
    Optional<String> stoniness,
    Optional<UnifiedGroup> group) {

  public SoilPart {
    nextTests = List.copyOf(nextTests);
    readings = List.copyOf(readings);
  }
}
