package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * A jar of soil shaken with water and left to settle: heights of the marks over the bottom.
 *
 * @param sandTop top of the sand, in metres
 * @param siltTop top of the silt, in metres
 * @param total top of all that settled, in metres
 * @param fall depth of the water over the bottom, in metres
 * @param temperature temperature of the water, in degrees Celsius
 * @param dispersed whether salt, dish soap or another dispersant was used
 * @param sandTime when the sand was marked, in seconds, if stated
 * @param siltTime when the silt was marked, in seconds, if stated
 * @param totalTime when all was marked, in seconds, if stated
 */
public record JarReading(
    double sandTop,
    double siltTop,
    double total,
    double fall,
    double temperature,
    boolean dispersed,
    Optional<Double> sandTime,
    Optional<Double> siltTime,
    Optional<Double> totalTime) {}
