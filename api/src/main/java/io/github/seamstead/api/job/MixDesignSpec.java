package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * A mix of more than one soil and one sand, found by calculation.
 *
 * @param with the other aggregates that it may take, by their ids
 * @param aim what decides among the mixes within the band of clay
 * @param exponent exponent of the grading curve that is aimed at
 * @param greatestShrinkage greatest linear shrinkage, as a part of one, if limited
 */
public record MixDesignSpec(
    List<String> with, DesignAim aim, double exponent, Optional<Double> greatestShrinkage) {

  /**
   * Copies the lists.
   *
   * @param with the other aggregates that it may take, by their ids
   * @param aim what decides among the mixes within the band of clay
   * @param exponent exponent of the grading curve that is aimed at
   * @param greatestShrinkage greatest linear shrinkage, as a part of one, if limited
   */
  public MixDesignSpec {
    with = List.copyOf(with);
  }
}
