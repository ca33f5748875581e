package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.soil.NextTest;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.Suitability;
import java.util.List;

/**
 * One local soil.
 *
 * @param sample the soil as the document gives it
 * @param finding what its tests say
 * @param component the soil as a part of a mix
 * @param floor whether it suits an earth floor, with reasons
 * @param nextTests the tests that would tell most for their effort, the best first
 */
public record SoilPart(
    SoilSample sample,
    SoilFinding finding,
    MixComponent component,
    Suitability floor,
    List<NextTest> nextTests) {

  /**
   * Copies the list.
   *
   * @param sample the soil as the document gives it
   * @param finding what its tests say
   * @param component the soil as a part of a mix
   * @param floor whether it suits an earth floor
   * @param nextTests the tests that would tell most
   */
  public SoilPart {
    nextTests = List.copyOf(nextTests);
  }
}
