package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The opening at the top of a truncated frame, by one measure.
 *
 * @param side length of one edge of the opening, in metres, if stated
 * @param radius from the axis to a corner of the opening, in metres, if stated
 * @param cutHeight height of the opening over the base, in metres, if stated
 */
public record FrameOpening(
    Optional<Double> side, Optional<Double> radius, Optional<Double> cutHeight) {}
