package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.job.TrialMix;
import io.github.seamstead.materials.mix.TrialReading;

/**
 * What the trial samples of a mix say.
 *
 * @param trials the samples as the document gives them
 * @param reading the ratio they decide for, or the next to try
 */
public record TrialPart(TrialMix trials, TrialReading reading) {}
