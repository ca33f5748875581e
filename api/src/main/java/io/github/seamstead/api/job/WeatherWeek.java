package io.github.seamstead.api.job;

/**
 * Weeks of like weather.
 *
 * @param weeks how many weeks it lasts
 * @param lowest temperature of the night, in degrees Celsius
 * @param highest temperature of the afternoon, in degrees Celsius
 * @param humidity mean relative humidity, as a part of one
 * @param airSpeed mean air speed over the floor, in metres per second
 */
public record WeatherWeek(
    int weeks, double lowest, double highest, double humidity, double airSpeed) {}
