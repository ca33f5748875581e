package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * How far a value of the job may be off, as whoever measured it says: a standard uncertainty, or
 * the ends between which it lies.
 *
 * @param of where the value stands in the job document, such as {@code site.designWind} or {@code
 *     floor.layers[3].thickness}
 * @param standard its standard uncertainty, with a unit, if stated
 * @param low the least that it may be, with a unit, if ends are stated
 * @param high the most that it may be, with a unit, if ends are stated
 */
public record ValueDoubt(
    String of, Optional<String> standard, Optional<String> low, Optional<String> high) {}
