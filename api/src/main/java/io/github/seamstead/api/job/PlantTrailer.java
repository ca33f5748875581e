package io.github.seamstead.api.job;

/**
 * The trailer that brings material.
 *
 * @param volume volume of the load bed, in cubic metres
 * @param payload legal payload, in kilograms
 */
public record PlantTrailer(double volume, double payload) {}
