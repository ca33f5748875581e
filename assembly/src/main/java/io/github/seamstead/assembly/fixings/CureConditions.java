package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When an adhesive may be used and how long it waits and cures, as its maker states. Nothing here
 * is a default: adhesives differ too much.
 *
 * @param leastTemperature least temperature of cloth and air, in degrees Celsius, -40 to 80
 * @param greatestTemperature greatest temperature, in degrees Celsius, -40 to 80; {@code
 *     leastTemperature} to 80
 * @param greatestHumidity greatest relative humidity, as a part of one, greater than 0, at most 1
 * @param openTime how long a bead may wait before it is pressed, in seconds, greater than 0
 * @param cureTime how long the joint rests before it is handled, in seconds, 0 or more
 * @param statedBy where these figures stand, such as the maker's data sheet and its date; not blank
 */
public record CureConditions(
    double leastTemperature,
    double greatestTemperature,
    double greatestHumidity,
    double openTime,
    double cureTime,
    String statedBy) {

  public CureConditions {
    Args.within("least temperature of the adhesive", leastTemperature, -40, 80, "degC");
    Args.within(
        "greatest temperature of the adhesive", greatestTemperature, leastTemperature, 80, "degC");
    Args.positive("greatest humidity", greatestHumidity, "");
    Args.within("greatest humidity", greatestHumidity, 0, 1, "");
    Args.positive("open time", openTime, "s");
    Args.notNegative("cure time", cureTime, "s");
    Args.notBlank("who states the adhesive's conditions", statedBy);
  }

  /**
   * Compares a day with the conditions.
   *
   * @param clothTemperature the colder of cloth and air, in degrees Celsius, -60 to 100
   * @param humidity relative humidity, as a part of one, 0 to 1
   * @param waitTime longest time from spreading to pressing, in seconds, 0 or more
   * @return each broken limit
   * @throws IllegalArgumentException if a number is out of range
   */
  public CureVerdict judge(double clothTemperature, double humidity, double waitTime) {
    Args.within("temperature of the cloth", clothTemperature, -60, 100, "degC");
    Args.within("humidity", humidity, 0, 1, "");
    Args.notNegative("wait before pressing", waitTime, "s");
    List<String> reasons = new ArrayList<>();
    if (clothTemperature < leastTemperature) {
      reasons.add("too cold: " + pair(clothTemperature, leastTemperature, "degC", "at least"));
    }
    if (clothTemperature > greatestTemperature) {
      reasons.add("too hot: " + pair(clothTemperature, greatestTemperature, "degC", "at most"));
    }
    if (humidity > greatestHumidity) {
      reasons.add("too damp: " + pair(100 * humidity, 100 * greatestHumidity, "%", "at most"));
    }
    if (waitTime > openTime) {
      reasons.add("open too long: " + pair(waitTime, openTime, "s", "at most"));
    }
    return new CureVerdict(reasons.isEmpty(), reasons, caution());
  }

  private String pair(double given, double limit, String unit, String word) {
    return Numbers.significant(given, 4)
        + " "
        + unit
        + ", "
        + statedBy
        + " states "
        + word
        + " "
        + Numbers.significant(limit, 4)
        + " "
        + unit;
  }

  /**
   * Gives the caution that goes with a cure.
   *
   * @return cold, dirt and load before the cure
   */
  public Caution caution() {
    return new Caution(
        Hazard.STRUCTURE,
        "A joint that was glued cold, damp or dirty, or loaded before its cure, opens later under"
            + " wind.",
        "Glue within the limits of "
            + statedBy
            + ", both faces clean and dry; lift no group before its joints have cured.",
        Optional.empty());
  }
}
