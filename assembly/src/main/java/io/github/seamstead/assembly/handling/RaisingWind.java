package io.github.seamstead.assembly.handling;

import io.github.seamstead.assembly.anchor.AirDensity;
import io.github.seamstead.assembly.anchor.Beaufort;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * The wind above which a cover is not raised: the lower of a published limit for large sheets and
 * the gust whose pull the crew can still hold.
 *
 * <p>The published limit is the roofing trade's: take care from 7.6 m/s mean or gusts of 11.6, stop
 * at 10.3 m/s mean or gusts of 15.6. A cover is larger than any roofing sheet: it is not begun from
 * the first pair on. The crew's gust follows from {@code n F = rho v^2 / 2 c A}; work stops there,
 * and begins as far below it as in the published pair.
 *
 * @param looseArea area of cloth that the wind can take hold of at once, in square metres, greater
 *     than 0
 * @param people people who hold it, 1 to 100
 * @param pullPerPerson what one holds, in newtons, 1 to 1000
 */
public record RaisingWind(double looseArea, int people, double pullPerPerson) {

  /** Mean speed from which a cover is not begun, in m/s: 17 mph. */
  public static final double BEGIN_MEAN = 7.6;

  /** Gust from which a cover is not begun, in m/s: 26 mph. */
  public static final double BEGIN_GUST = 11.6;

  /** Mean speed at which the work stops and the cover is brought down, in m/s: 23 mph. */
  public static final double STOP_MEAN = 10.3;

  /** Gust at which the work stops, in m/s: 35 mph. */
  public static final double STOP_GUST = 15.6;

  /** Force coefficient of a sheet held across the wind. */
  public static final double SHEET_COEFFICIENT = 1.2;

  private static final Source ROOFING =
      Source.found(
          "National Federation of Roofing Contractors, as quoted",
          "Guidance on roof work in wind",
          "",
          "17 mph mean, 26 gust: care; 23 mean, 35 gust: stop");
  private static final Source RIVAL =
      Source.found(
          "OSHA, as quoted", "High wind", "", "over 40 mph, or 30 mph when handling material");
  private static final Source SHEET = Source.derived("flat sheet across the wind, coefficient 1.2");

  public RaisingWind {
    Args.positive("loose cloth", looseArea, "m2");
    Args.within("people who hold the cloth", people, 1, 100);
    Args.within("pull of one person", pullPerPerson, 1, 1000, "N");
  }

  /**
   * Reckons with the usual pull of one person.
   *
   * @param looseArea area of cloth that the wind can take hold of at once, in square metres
   * @param people people who hold it, 1 to 100
   * @return the limits
   * @throws IllegalArgumentException if a number is out of range
   */
  public static RaisingWind of(double looseArea, int people) {
    return new RaisingWind(looseArea, people, RopePull.ONE_PERSON);
  }

  /**
   * Computes the gust whose pull the crew can hold.
   *
   * @return in m/s
   */
  public double crewGust() {
    return Math.sqrt(
        2
            * people
            * pullPerPerson
            / (AirDensity.EUROPEAN.density() * SHEET_COEFFICIENT * looseArea));
  }

  /**
   * Computes the gust above which the cover is not raised.
   *
   * @return in m/s
   */
  public double limitGust() {
    return limitGust(Steps.none());
  }

  /**
   * Computes the gust above which the cover is not raised, with the steps.
   *
   * @param steps where the steps go
   * @return in m/s
   */
  @Calculation("assembly.handling.wind")
  public double limitGust(Steps steps) {
    double crew =
        steps
            .step("v_crew", "gust whose pull the crew can hold")
            .formula("sqrt(2 * n * F_1 / (rho * c * A))")
            .with("n", people, "")
            .with("F_1", pullPerPerson, "N")
            .with("rho", AirDensity.EUROPEAN.density(), "kg/m3")
            .with("c", SHEET_COEFFICIENT, "")
            .with("A", looseArea, "m2")
            .from(SHEET)
            .gives(crewGust(), "m/s");
    return steps
        .step("v_max", "gust above which the cover is not raised")
        .formula("min(v_b, v_crew * v_b / v_s)")
        .with("v_b", BEGIN_GUST, "m/s")
        .with("v_s", STOP_GUST, "m/s")
        .with("v_crew", crew, "m/s")
        .from(ROOFING)
        .note("the crew's gust is where work stops; it begins as far below as the published pair")
        .gives(Math.min(BEGIN_GUST, crew * BEGIN_GUST / STOP_GUST), "m/s");
  }

  /**
   * Computes the gust at which a cover that is going up is brought down.
   *
   * @return in m/s, never above what the crew can hold
   */
  public double stopGust() {
    return Math.min(STOP_GUST, crewGust());
  }

  /**
   * Computes the mean speed above which the cover is not raised: the gust over 1.5, and never above
   * {@link #BEGIN_MEAN}.
   *
   * @return in m/s
   */
  public double limitMean() {
    return Math.min(BEGIN_MEAN, limitGust() / 1.5);
  }

  /**
   * Finds the Beaufort force of that mean speed.
   *
   * @return force with its sign on land
   */
  public Beaufort beaufort() {
    return Beaufort.of(limitMean());
  }

  /**
   * Writes the limit.
   *
   * @return gust, mean, force, what is seen, and which of the two limits governs
   */
  public String text() {
    return rule(": " + beaufort().sign())
        + " "
        + (crewGust() < STOP_GUST
            ? "Wind on the loose cloth, not its weight, sets the crew."
            : "The published limit for large sheets governs.");
  }

  /** The limits as a rule to carry. */
  private String rule(String sign) {
    return "Do not raise the cover in gusts above "
        + Numbers.fixedAtMost(limitGust(), 1)
        + " m/s or a mean wind above "
        + Numbers.fixedAtMost(limitMean(), 1)
        + " m/s (Beaufort "
        + beaufort().force()
        + sign
        + "). Bring it down at "
        + Numbers.fixedAtMost(stopGust(), 1)
        + " m/s in gusts.";
  }

  /**
   * Gives the cautions that go with the limit.
   *
   * @return gusts, and the laxer rival
   */
  public List<Caution> cautions() {
    return List.of(
        Caution.of(
            Hazard.WIND,
            "A gust turns loose cloth into a sail that lifts people off their feet; one gust can"
                + " double what a sheet pulls.",
            rule("") + " Measure gusts on the spot.",
            ROOFING),
        Caution.of(
            Hazard.WIND,
            "A laxer rule is in print.",
            "30 mph (13.4 m/s) when handling material, 40 mph (17.9 m/s) otherwise; it is shown and"
                + " not used.",
            RIVAL));
  }
}
