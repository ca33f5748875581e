package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;

/**
 * The mix found.
 *
 * @param target what was aimed at
 * @param exact the mix found, one tonne of dry mass
 * @param rounded the same in rounded buckets, one bucket standing for one cubic metre
 * @param clayRatio clay share of the exact mix
 * @param shrinkage linear shrinkage expected of the exact mix ({@link Shrinkage#ofMix}); empty if a
 *     component with clay does not tell its own
 * @param gradingMisfit root mean square distance to the grading target; empty without one
 * @param pricePerDryTonne price of a dry tonne of the exact mix; empty without prices
 * @param clayShift clay share of the rounded mix less that of the exact one
 * @param priceShiftPerDryTonne price of a dry tonne of the rounded mix less that of the exact one
 * @param unmet targets that cannot be met, each with the nearest that can; empty if all are met
 */
public record MixSolution(
    MixTarget target,
    Recipe exact,
    Recipe rounded,
    double clayRatio,
    Optional<Range> shrinkage,
    Optional<Double> gradingMisfit,
    Optional<Double> pricePerDryTonne,
    double clayShift,
    Optional<Double> priceShiftPerDryTonne,
    List<String> unmet) {

  public MixSolution {
    unmet = List.copyOf(unmet);
  }
}
