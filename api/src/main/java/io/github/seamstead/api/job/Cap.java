package io.github.seamstead.api.job;

/**
 * The cone cap over the opening at the top.
 *
 * @param overlap how far the cap comes down over the cover, in metres
 * @param lap lap of the joints of the cap, in metres
 */
public record Cap(double overlap, double lap) {}
