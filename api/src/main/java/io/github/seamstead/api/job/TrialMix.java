package io.github.seamstead.api.job;

import java.util.List;

/**
 * Trial samples of one mix.
 *
 * @param mix the mix, by its id under floor
 * @param samples the samples
 * @param crackLimit crack width over length that is accepted, as a part of one
 * @param step the step in which parts of sand are chosen, as a part of one
 */
public record TrialMix(String mix, List<TrialSample> samples, double crackLimit, double step) {

  /**
   * Copies the lists.
   *
   * @param mix the mix, by its id under floor
   * @param samples the samples
   * @param crackLimit crack width over length that is accepted, as a part of one
   * @param step the step in which parts of sand are chosen, as a part of one
   */
  public TrialMix {
    samples = List.copyOf(samples);
  }
}
