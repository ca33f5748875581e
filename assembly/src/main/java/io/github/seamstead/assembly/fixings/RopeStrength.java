package io.github.seamstead.assembly.fixings;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;
import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Strength of a new rope by thumb rules, where the maker's figure is not to hand.
 *
 * <p>Two rules are in print and disagree. The one used is metric and lower: manila breaks at D² /
 * 200 tonnes (D in mm). Its rival is 900 C² pounds (C the circumference in inches), a quarter more
 * for the same rope. The maker's figure goes before both.
 *
 * @param fibre what the rope is made of
 * @param diameter diameter, in metres, 0.003 to 0.06
 * @param knotted true where a knot is in the load: half the strength is left
 * @param factor breaking load over working load, {@link #LEAST_FACTOR} or more; {@link
 *     #OVERHEAD_FACTOR} or more with people under the load; {@link #LEAST_FACTOR} to 50
 */
public record RopeStrength(Fibre fibre, double diameter, boolean knotted, double factor) {

  /** The least factor, for loads that endanger nobody. */
  public static final double LEAST_FACTOR = 5;

  /** The least factor where people may be under the load. */
  public static final double OVERHEAD_FACTOR = 12;

  private static final double POUND_FORCE = 4.4482216152605;
  private static final Source METRIC =
      Source.found("", "Safe working load of rope", "", "manila breaks at D^2 / 200 t");
  private static final Source COAST_GUARD =
      Source.found(
          "US Coast Guard examination rule",
          "Marlinespike seamanship",
          "",
          "900 C^2 lb; nylon 2.5, polyester 2.0, polypropylene 1.4; a knot takes up to 50 to 60 %");
  private static final Source CORDAGE =
      Source.found(
          "Cordage Institute, as quoted",
          "Working load of rope",
          "",
          "factor 5 to 6 for non-critical use, 12 to 15 for life lines");

  public RopeStrength {
    Args.within("diameter of the rope", diameter, 0.003, 0.06, "m");
    Args.within("breaking over working load", factor, LEAST_FACTOR, 50, "");
  }

  /**
   * Reckons a rope.
   *
   * @param fibre what the rope is made of
   * @param diameter diameter, in metres, 0.003 to 0.06
   * @param knotted true where a knot is in the load
   * @param factor breaking load over working load, {@link #LEAST_FACTOR} to 50
   * @return the rope
   * @throws IllegalArgumentException if a number is out of range
   */
  public static RopeStrength of(Fibre fibre, double diameter, boolean knotted, double factor) {
    return new RopeStrength(fibre, diameter, knotted, factor);
  }

  /**
   * Computes the breaking load of the rope without knots by the rule used.
   *
   * @return in newtons
   */
  public double breakingLoad() {
    double millimetres = diameter * 1000;
    return millimetres * millimetres / 200 * 1000 * STANDARD_GRAVITY * fibre.timesManila();
  }

  /**
   * Computes the breaking load by the rival rule and the higher printed multiple, for comparison.
   *
   * @return in newtons
   */
  public double rivalBreakingLoad() {
    double inches = Math.PI * diameter / INCH;
    return 900 * inches * inches * POUND_FORCE * fibre.rivalTimesManila();
  }

  /**
   * Computes the working load.
   *
   * @return in newtons
   */
  public double workingLoad() {
    return workingLoad(Steps.none());
  }

  /**
   * Computes the working load with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.fixings.rope")
  public double workingLoad(Steps steps) {
    steps
        .step("F_rival", "breaking load by the rival rule, for comparison")
        .formula("900 * (pi * D / i)^2 * p * k_rival")
        .with("D", diameter, "m")
        .with("i", INCH, "m")
        .with("p", POUND_FORCE, "N")
        .with("k_rival", fibre.rivalTimesManila(), "")
        .from(COAST_GUARD)
        .gives(rivalBreakingLoad(), "N");
    double breaking =
        steps
            .step("F_b", "breaking load of the rope by the rule used")
            .formula("(1000 * D)^2 / 200 * 1000 * g * k")
            .with("D", diameter, "m")
            .with("g", STANDARD_GRAVITY, "m/s2")
            .with("k", fibre.timesManila(), "")
            .from(METRIC)
            .note("the lower of the two printed rules")
            .gives(breakingLoad(), "N");
    double knot = knotted ? 0.5 : 1;
    return steps
        .step("F_w", "working load")
        .formula("F_b * c / f")
        .with("F_b", breaking, "N")
        .with("c", knot, "")
        .with("f", factor, "")
        .from(CORDAGE)
        .note(knotted ? "a knot leaves half" : "no knot in the load")
        .gives(breaking * knot / factor, "N");
  }

  /**
   * Names the rule used.
   *
   * @return in words
   */
  public String rule() {
    return "manila breaks at D^2 / 200 t (D in mm), times " + Numbers.plain(fibre.timesManila());
  }

  /**
   * Names the rival rule.
   *
   * @return in words
   */
  public String rivalRule() {
    return "manila breaks at 900 C^2 lb (C in inches round), times "
        + Numbers.plain(fibre.rivalTimesManila());
  }

  /**
   * Gives the caution that goes with a rope.
   *
   * @return age, knots, edges and people below
   */
  public Caution caution() {
    return Caution.of(
        Hazard.HEIGHT,
        "Old, wet, sun-worn or chafed rope has lost strength that cannot be seen, and a rope that"
            + " breaks whips back.",
        "Take the rope maker's figure before a thumb rule, with a factor of 12 or more where people"
            + " can be under the load.",
        CORDAGE);
  }
}
