package io.github.seamstead.api.job;

/**
 * A bucket of the material as it lies, weighed.
 *
 * @param volume volume of the material in the bucket, struck level, in cubic metres
 * @param mass mass of the material without the bucket, in kilograms
 */
public record WeighedBucket(double volume, double mass) {}
