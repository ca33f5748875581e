package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixChoice;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.TrialLadder;
import io.github.seamstead.materials.mix.TrialReading;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * One mix of a soil with sand.
 *
 * @param spec the mix as the document gives it
 * @param blend its proportions as reckoned from the clay
 * @param choice the ratio that is used, by the clay, by trial samples or by hand
 * @param clay share of clay of the mix used: 5 %, likely and 95 %, by the doubt of soil and
 *     buckets; empty in a brief plan
 * @param trial what its trial samples say, if any were made
 * @param ladder the trial samples to make first, while none were made
 * @param design the mix of several aggregates, if one was asked for
 * @param composition in which way it leaves the published envelope for its use
 * @param floorMix the mix as layers use it
 */
public record MixPart(
    MixSpec spec,
    ClayBlend blend,
    MixChoice choice,
    Optional<Range> clay,
    Optional<TrialPart> trial,
    Optional<TrialLadder> ladder,
    Optional<MixSolution> design,
    List<String> composition,
    FloorMix floorMix) {

  public MixPart {
    composition = List.copyOf(composition);
  }

  /**
   * Gives the linear shrinkage that a sound trial sample of this ratio showed.
   *
   * @return ratio of the mould's length; empty if no such sample was made
   */
  public Optional<Uncertain> measuredShrinkage() {
    return trial.map(TrialPart::reading).flatMap(TrialReading::measuredShrinkage);
  }
}
