package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The barrow.
 *
 * @param volume volume that the barrow carries, in cubic metres
 * @param payload the most that it may carry, in kilograms, if stated
 */
public record PlantBarrow(double volume, Optional<Double> payload) {}
