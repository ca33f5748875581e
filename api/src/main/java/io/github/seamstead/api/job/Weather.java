package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The weather while the floor dries.
 *
 * @param temperature mean air temperature, in degrees Celsius
 * @param humidity mean relative humidity of the air, as a part of one
 * @param airSpeed mean air speed over the floor, in metres per second
 * @param horizon how far the forecast looks, in seconds
 * @param airChanges how often the air under the cover is renewed in a day; as often as keeps it at
 *     that humidity if left out, if stated
 * @param roomVolume volume of the air under the cover, in cubic metres; that of the frame if left
 *     out, if stated
 */
public record Weather(
    double temperature,
    double humidity,
    double airSpeed,
    double horizon,
    Optional<Integer> airChanges,
    Optional<Double> roomVolume) {}
