package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The tools that move and mix material.
 *
 * @param mixer the mixer, if stated
 * @param bucket volume of the bucket that parts are measured with, in cubic metres
 * @param barrow the barrow, if stated
 * @param trailer the trailer that brings material, if stated
 */
public record Plant(
    Optional<PlantMixer> mixer,
    double bucket,
    Optional<PlantBarrow> barrow,
    Optional<PlantTrailer> trailer) {}
