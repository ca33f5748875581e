package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The mixer.
 *
 * @param workingVolume volume that the drum mixes in one batch, in cubic metres
 * @param massLimit the most that the drum may hold, in kilograms, if stated
 * @param cycle time for one batch: fill, mix, empty, in seconds
 */
public record PlantMixer(double workingVolume, Optional<Double> massLimit, double cycle) {}
