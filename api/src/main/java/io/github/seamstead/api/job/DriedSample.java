package io.github.seamstead.api.job;

/**
 * A sample dried in an oven or a pan to tell its moisture.
 *
 * @param wet mass of the tin with the damp sample, in kilograms
 * @param dry mass of the tin with the dry sample, in kilograms
 * @param tin mass of the empty tin, in kilograms
 */
public record DriedSample(double wet, double dry, double tin) {}
