package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.shared.uncertainty.Uncertain;

/** What trial samples say, as data. */
final class TrialFacts {

  private TrialFacts() {}

  static Facts<TrialPart> trial() {
    return new Facts<TrialPart>()
        .text("mix", "the mix", t -> t.trials().mix())
        .number(
            "sandParts",
            "parts of sand to one of soil that suit best",
            t -> t.reading().sandParts())
        .number("probability", "probability that this is right", t -> t.reading().probability())
        .flag("decided", "whether the samples decide it", t -> t.reading().decided())
        .maybeNumber("nextSandParts", "parts of sand to try next", t -> t.reading().nextSandParts())
        .range("cracksBelow", "below these parts of sand it cracks", t -> t.reading().cracksBelow())
        .range("dustsAbove", "above these parts of sand it dusts", t -> t.reading().dustsAbove())
        .maybeNumber(
            "measuredShrinkageRatio",
            "linear shrinkage of the sound sample nearest to the ratio",
            t -> t.reading().measuredShrinkage().map(Uncertain::value))
        .texts("advice", "what to do", t -> t.reading().advice());
  }
}
