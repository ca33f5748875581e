package io.github.seamstead.api.job;

/**
 * Stones screened out of a weighed heap.
 *
 * @param stones mass that the screen held, in kilograms
 * @param total mass before screening, in kilograms
 * @param opening opening of the screen, in metres
 */
public record ScreenedHeap(double stones, double total, double opening) {}
