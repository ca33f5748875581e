package io.github.seamstead.api.job;

/**
 * A strip on the ground round the base.
 *
 * @param drop how far the skirt hangs below the base edge, in metres
 * @param overlap how far the skirt goes up under the cover, in metres
 */
public record Skirt(double drop, double overlap) {}
