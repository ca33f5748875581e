package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Comparator;

/**
 * How long the open edge of a wet coat can wait for the next sector: until its skin of 2 mm has
 * dried to the plastic limit, after which fresh mix no longer knits to it (common practice).
 */
public final class OpenTime {

  /** Depth of the skin that must stay plastic, in metres. */
  public static final double SKIN = 0.002;

  private static final Source PRACTICE =
      Source.commonPractice("a joint knits while the skin of the edge is plastic");

  /** Open time where the air is not known: from a warm dry day to a cool damp one, in seconds. */
  public static final Range USUAL = new Range(1800, 4500, 7200);

  private OpenTime() {}

  /**
   * Gives the open time with the scatter of evaporation formulas, ± 40 %.
   *
   * @param air over the floor
   * @param dryDensity of the coat, in kg/m³
   * @param moisture as laid, water over dry mass, more than the plastic limit
   * @param plasticLimit of the mix, water over dry mass
   * @return in seconds; at most a day, since saturated air never dries the edge
   * @throws IllegalArgumentException if the mix is laid at or below its plastic limit
   */
  public static Range of(AirState air, double dryDensity, double moisture, double plasticLimit) {
    double likely = of(air, dryDensity, moisture, plasticLimit, Steps.none());
    return new Range(
        likely / Evaporation.SCATTER,
        likely,
        Math.max(likely, Math.min(Weather.DAY, likely * Evaporation.SCATTER)));
  }

  /**
   * Gives the open time on the day on which a coat is laid: by the hour that dries most, and no
   * longer than {@link #USUAL}, since the pack below draws water too.
   *
   * @param weather from the moment the coat is laid
   * @param dryDensity of the coat, in kg/m³
   * @param moisture as laid, water over dry mass, more than the plastic limit
   * @param plasticLimit of the mix, water over dry mass
   * @return in seconds
   * @throws IllegalArgumentException if the mix is laid at or below its plastic limit
   */
  public static Range onTheDay(
      Weather weather, double dryDensity, double moisture, double plasticLimit) {
    Range open = of(driest(weather), dryDensity, moisture, plasticLimit);
    double most = USUAL.high();
    return new Range(
        Math.min(most, open.low()), Math.min(most, open.likely()), Math.min(most, open.high()));
  }

  /**
   * Finds the air that dries most on the first day.
   *
   * @param weather from the moment the coat is laid
   * @return the state with the greatest evaporation
   */
  public static AirState driest(Weather weather) {
    return weather.states().subList(0, weather.repeated()).stream()
        .max(Comparator.comparingDouble(air -> Evaporation.wetFloor(air, Steps.none())))
        .orElseThrow();
  }

  /**
   * Computes the likely open time: ρ_d δ (w − PL) / E, at most a day.
   *
   * @param air over the floor
   * @param dryDensity of the coat, 300 to 2600 kg/m³
   * @param moisture as laid, water over dry mass, more than the plastic limit
   * @param plasticLimit of the mix, water over dry mass, greater than 0
   * @param steps receives the evaporation, the water to lose and the time
   * @return in seconds
   * @throws IllegalArgumentException if the mix is laid at or below its plastic limit
   */
  @Calculation("materials.drying.open-time")
  public static double of(
      AirState air, double dryDensity, double moisture, double plasticLimit, Steps steps) {
    Args.within("dry density", dryDensity, 300, 2600, "kg/m3");
    Args.positive("plastic limit", plasticLimit, "");
    Args.require(
        moisture > plasticLimit && moisture <= 1,
        "moisture as laid",
        Numbers.plain(moisture),
        "must be above the plastic limit of " + Numbers.plain(plasticLimit) + " and at most 1",
        "a stiffer mix has no open time, ram it instead");
    double rate = Evaporation.wetFloor(air, steps);
    double water =
        steps
            .step("m", "water that the skin may lose")
            .formula("rho_d * delta * (w - PL)")
            .with("rho_d", dryDensity, "kg/m3")
            .with("delta", SKIN, "m")
            .with("w", moisture, "")
            .with("PL", plasticLimit, "")
            .from(PRACTICE)
            .gives(dryDensity * SKIN * (moisture - plasticLimit), "kg/m2");
    double least = water / Weather.DAY;
    return steps
        .step("t", "open time, at most a day")
        .formula("m / max(E, m / 86400)")
        .with("m", water, "kg/m2")
        .with("E", rate, "kg/(m2 s)")
        .gives(water / Math.max(rate, least), "s");
  }
}
