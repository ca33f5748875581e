package io.github.seamstead.api.chapter.air;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.WeatherWeek;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.Evaporation;
import io.github.seamstead.materials.drying.Psychrometrics;
import io.github.seamstead.materials.drying.Weather;
import io.github.seamstead.shared.derivation.Steps;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The air over the floor as the document gives it. */
public final class FloorAir {

  private static final int WEEK = 7;

  private FloorAir() {}

  /**
   * Reads the weather.
   *
   * @param stated the weather of the document
   * @return its air through time, from the laying of the lowest mixed layer
   */
  public static Weather of(io.github.seamstead.api.job.Weather stated) {
    if (stated.weeks().isEmpty()) {
      double temperature = stated.temperature().orElseThrow();
      double humidity =
          stated.humidity().orElseGet(() -> humidity(temperature, stated.wetBulb().orElseThrow()));
      return Weather.constant(new AirState(temperature, humidity, stated.airSpeed().orElseThrow()));
    }
    List<Weather.DayWeather> days = new ArrayList<>();
    for (WeatherWeek week : stated.weeks()) {
      Weather.DayWeather day =
          new Weather.DayWeather(week.lowest(), week.highest(), week.humidity(), week.airSpeed());
      days.addAll(Collections.nCopies(WEEK * week.weeks(), day));
    }
    return Weather.fromDays(days);
  }

  /**
   * Gives the humidity by a wet bulb, at sea level.
   *
   * @param temperature of the air, in degrees Celsius
   * @param wetBulb in degrees Celsius
   * @return 0 to 1
   */
  public static double humidity(double temperature, double wetBulb) {
    return Math.min(
        1,
        Psychrometrics.relativeHumidity(vapour(temperature, wetBulb, Steps.none()), temperature));
  }

  private static double vapour(double temperature, double wetBulb, Steps steps) {
    return Psychrometrics.vapourPressureFromWetBulb(
        temperature, wetBulb, Psychrometrics.airPressure(0), steps);
  }

  /**
   * Keeps the sum of a wet bulb.
   *
   * @param run the run
   * @param where what stands in that air
   * @param temperature of the air, in degrees Celsius
   * @param wetBulb in degrees Celsius
   */
  public static void record(Run run, String where, double temperature, double wetBulb) {
    run.workedOnly(
        "materials.drying.wet-bulb",
        "Vapour in the air over " + where + ", by the wet bulb",
        steps -> vapour(temperature, wetBulb, steps));
  }

  /**
   * Keeps the sums of the air.
   *
   * @param run the run
   * @param stated the weather of the document
   * @param mean the mean of it
   */
  public static void record(Run run, io.github.seamstead.api.job.Weather stated, AirState mean) {
    stated
        .wetBulb()
        .ifPresent(bulb -> record(run, "the floor", stated.temperature().orElseThrow(), bulb));
    run.workedOnly(
        "materials.drying.saturation-pressure",
        "Vapour that the air can hold",
        steps -> Psychrometrics.saturationPressure(mean.temperature(), steps));
    run.workedOnly(
        "materials.drying.evaporation",
        "Water that the wet floor gives off",
        steps -> Evaporation.wetFloor(mean, steps));
  }

  /**
   * Gives the day on which the lowest mixed layer is laid.
   *
   * @param run the run
   * @return that of the weather, else that of the site
   */
  public static Optional<LocalDate> laid(Run run) {
    return run.document()
        .weather()
        .flatMap(io.github.seamstead.api.job.Weather::laid)
        .or(() -> run.document().site().flatMap(Site::start));
  }
}
