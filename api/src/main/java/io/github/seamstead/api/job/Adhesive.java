package io.github.seamstead.api.job;

/**
 * What the maker of the adhesive states.
 *
 * @param openTime how long a bead may wait before it is pressed, in seconds
 * @param cureTime how long a joint rests before it is handled, in seconds
 * @param leastTemperature least temperature of cloth and air, in degrees Celsius
 * @param greatestTemperature greatest temperature of cloth and air, in degrees Celsius
 * @param greatestHumidity greatest relative humidity, as a part of one
 * @param source where these figures stand, such as the maker's data sheet and its date
 */
public record Adhesive(
    double openTime,
    double cureTime,
    double leastTemperature,
    double greatestTemperature,
    double greatestHumidity,
    String source) {}
