package io.github.seamstead.api.job;

/**
 * One reading of the hydrometer.
 *
 * @param time time since the start, in seconds
 * @param density dry soil over volume as the hydrometer shows it; g/l is kg/m3, in kilograms per
 *     cubic metre
 */
public record HydrometerReading(double time, double density) {}
