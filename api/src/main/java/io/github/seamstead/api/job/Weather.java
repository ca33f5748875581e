package io.github.seamstead.api.job;

/**
 * The weather while the floor dries.
 *
 * @param temperature mean air temperature, in degrees Celsius
 * @param humidity mean relative humidity of the air, as a part of one
 * @param airSpeed mean air speed over the floor, in metres per second
 * @param horizon how far the forecast looks, in seconds
 */
public record Weather(double temperature, double humidity, double airSpeed, double horizon) {}
