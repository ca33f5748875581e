package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The air over the floor through time, in equal intervals. After the last one, the last 24 hours
 * are repeated.
 *
 * @param interval length of an interval, in seconds; 60 s to one day
 * @param states one state for each interval, from the moment the coat is laid; 1 to 100 000
 */
public record Weather(double interval, List<AirState> states) {

  /** Seconds in a day. */
  public static final double DAY = 86_400;

  private static final double HOUR = 3600;

  public Weather {
    Args.within("weather interval", interval, 60, DAY, "s");
    states = Args.notEmpty("weather", states);
    Args.within("weather intervals", states.size(), 1, 100_000);
  }

  /**
   * Makes air that never changes.
   *
   * @param air the air
   * @return the weather
   */
  public static Weather constant(AirState air) {
    return new Weather(DAY, List.of(air));
  }

  /**
   * Makes weather from one state a day.
   *
   * @param days from the day the coat is laid
   * @return the weather
   * @throws IllegalArgumentException if there is no day
   */
  public static Weather daily(List<AirState> days) {
    return new Weather(DAY, days);
  }

  /**
   * Makes weather from one state an hour.
   *
   * @param hours from the hour in which the coat is laid
   * @return the weather
   * @throws IllegalArgumentException if there is no hour
   */
  public static Weather hourly(List<AirState> hours) {
    return new Weather(HOUR, hours);
  }

  /**
   * Makes hourly weather from the lowest and highest temperature of each day: a sine with its peak
   * at 15 h and the day's vapour pressure held constant, so that nights are damp and afternoons
   * dry. The vapour pressure is the mean relative humidity × the mean saturation pressure (FAO-56,
   * eq. 19).
   *
   * @param days from midnight of the first day
   * @return hourly weather
   * @throws IllegalArgumentException if there is no day or an hour is out of range
   */
  public static Weather fromDays(List<DayWeather> days) {
    List<AirState> hours = new ArrayList<>();
    for (DayWeather day : Args.notEmpty("days", days)) {
      double vapour =
          day.meanHumidity() * Psychrometrics.meanSaturationPressure(day.highest(), day.lowest());
      double mean = (day.highest() + day.lowest()) / 2;
      double swing = (day.highest() - day.lowest()) / 2;
      for (int hour = 0; hour < 24; hour++) {
        double temperature = mean + swing * StrictMath.cos(2 * Math.PI * (hour + 0.5 - 15) / 24);
        double humidity = vapour / Psychrometrics.saturationPressure(temperature);
        hours.add(new AirState(temperature, Math.min(1, humidity), day.speed()));
      }
    }
    return hourly(hours);
  }

  /**
   * A day by its extremes.
   *
   * @param lowest in °C; more than 0, at most {@code highest}
   * @param highest in °C; at most 60 °C
   * @param meanHumidity mean relative humidity, 0 to 1
   * @param speed air speed along the floor, in m/s; 0.01 to 30 m/s
   */
  public record DayWeather(double lowest, double highest, double meanHumidity, double speed) {

    public DayWeather {
      Args.require(
          lowest <= highest,
          "day",
          "lowest "
              + Numbers.plain(lowest)
              + " degC above highest "
              + Numbers.plain(highest)
              + " degC",
          "must not be above it");
      AirState.requireNoFrost(lowest);
      AirState.requireNoFrost(highest);
      Args.within("mean relative humidity", meanHumidity, 0, 1, "");
      Args.within("air speed", speed, 0.01, 30, "m/s");
    }
  }

  /**
   * Drops what is over when a later layer is laid.
   *
   * @param days since the first interval, 0 or more
   * @return the weather from then on; the last 24 hours if the record is over by then
   * @throws IllegalArgumentException if the days are negative
   */
  public Weather after(double days) {
    Args.notNegative("days", days, "d");
    int first = (int) Math.min(states.size() - (double) repeated(), days * DAY / interval);
    return new Weather(interval, states.subList(first, states.size()));
  }

  /**
   * Gives the mean air of the record.
   *
   * @return means of temperature, relative humidity and speed
   */
  public AirState mean() {
    double n = states.size();
    return new AirState(
        states.stream().mapToDouble(AirState::temperature).sum() / n,
        Math.min(1, states.stream().mapToDouble(AirState::relativeHumidity).sum() / n),
        states.stream().mapToDouble(AirState::speed).sum() / n);
  }

  /**
   * Changes the air of all intervals, as shading, heating or opening does.
   *
   * @param temperatureShift in K, negative for shade
   * @param speedFactor more than 0; more than 1 where the cover is opened
   * @return the changed weather
   * @throws IllegalArgumentException if the change brings frost or an impossible speed
   */
  public Weather changed(double temperatureShift, double speedFactor) {
    return new Weather(
        interval, states.stream().map(a -> a.changed(temperatureShift, speedFactor)).toList());
  }

  /**
   * Gives the mean relative humidity over the last 24 hours of the record, or of all if shorter.
   *
   * @return 0 to 1
   */
  public double settledHumidity() {
    int tail = repeated();
    return states.subList(states.size() - tail, states.size()).stream()
        .mapToDouble(AirState::relativeHumidity)
        .average()
        .orElse(0);
  }

  int repeated() {
    return Math.min(states.size(), Math.max(1, (int) Math.round(DAY / interval)));
  }

  /** The state's index for an interval counted from the start. */
  int index(int intervalNumber) {
    int count = states.size();
    if (intervalNumber < count) {
      return intervalNumber;
    }
    int tail = repeated();
    return count - tail + (intervalNumber - count) % tail;
  }
}
