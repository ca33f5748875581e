package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The cap over the opening at the top.
 *
 * @param overlap how far the cap comes down over the cover, in metres
 * @param slope slope of the cap; the slope of the faces if left out, in radians, if stated
 */
public record Cap(double overlap, Optional<Double> slope) {}
