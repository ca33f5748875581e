package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * Wind on the whole cover, and what the worst peg gets of it. It screens: it tells when a plan is
 * plainly too weak, and never that a structure is safe.
 *
 * <p>Drag acts on the silhouette at a third of the height, uplift on the plan. All of it goes to
 * the pegs, which stand evenly round the base. The worst peg's uplift is the greater of two models:
 * pegs as bolts on a circle about the centre, {@code R / N + 2 M / (N r)}, and tipping about the
 * lee edge, {@code 4 / 3 (R / N + M / (N r))}. Half of the pegs share the sliding. Weight counts
 * nine tenths, ground friction nothing.
 *
 * @param form the shelter
 * @param pressure the velocity pressure
 * @param coefficients drag and uplift
 * @param restingMassKg mass of cover and frame that rests on the ground, in kilograms, 0 or more
 * @param pegs pegs round the base, 3 to 10 000
 * @param windFactor factor on the wind load, 1 to 3
 */
public record WindScreen(
    ShelterForm form,
    WindPressure pressure,
    WindCoefficients coefficients,
    double restingMassKg,
    int pegs,
    double windFactor) {

  /** The factor on wind for a structure that stays occupied in wind. */
  public static final double FACTOR_OCCUPIED = 1.5;

  /** The rival factor, for a structure that is evacuated at a set speed. */
  public static final double FACTOR_EVACUATED = 1.2;

  static final Source FACTORS =
      Source.found(
          "Danish building regulations",
          "BR18, guidance on transportable structures",
          "2018",
          "table 6: partial factor 1.5, or 1.2 where evacuated at a set speed");
  static final double WEIGHT_FACTOR = 0.9;
  static final double SHARING_PEGS = 0.5;
  static final double GRAVITY = 9.80665;

  private static final Source FAVOURABLE =
      Source.fromMemory("CEN", "EN 1990 Basis of structural design", "2002", "favourable 0.9");
  private static final Source STATICS =
      Source.derived("silhouette triangle with even pressure; pegs evenly on a circle");

  /**
   * Checks the numbers.
   *
   * @param form the shelter
   * @param pressure the velocity pressure
   * @param coefficients drag and uplift
   * @param restingMassKg 0 or more
   * @param pegs 3 to 10 000
   * @param windFactor 1 to 3
   * @throws IllegalArgumentException if a number is out of range
   */
  public WindScreen {
    Args.notNegative("resting mass", restingMassKg, "kg");
    Args.within("pegs", pegs, 3, 10_000);
    Args.within("factor on the wind load", windFactor, 1, 3, "");
  }

  /**
   * Screens a shelter.
   *
   * @param form the shelter
   * @param pressure the velocity pressure
   * @param coefficients drag and uplift
   * @param restingMassKg mass of cover and frame that rests on the ground, in kilograms, 0 or more
   * @param pegs pegs round the base, 3 to 10 000
   * @param windFactor factor on the wind load, 1 to 3: {@link #FACTOR_OCCUPIED} or {@link
   *     #FACTOR_EVACUATED}
   * @return the screening
   * @throws IllegalArgumentException if a number is out of range
   */
  public static WindScreen of(
      ShelterForm form,
      WindPressure pressure,
      WindCoefficients coefficients,
      double restingMassKg,
      int pegs,
      double windFactor) {
    return new WindScreen(form, pressure, coefficients, restingMassKg, pegs, windFactor);
  }

  /**
   * Computes the horizontal force of the wind, without factor.
   *
   * @return in newtons
   */
  public double dragNewtons() {
    return coefficients.drag() * pressure.pascals() * form.elevationSquareMetres();
  }

  /**
   * Computes the upward force of the wind, without factor.
   *
   * @return in newtons
   */
  public double upliftNewtons() {
    return coefficients.uplift() * pressure.pascals() * form.planSquareMetres();
  }

  /**
   * Computes the worst peg's uplift, with factors.
   *
   * @return in newtons, 0 or more
   */
  public double pegUpliftNewtons() {
    return pegUplift(Steps.none());
  }

  /**
   * Computes a peg's sliding force, with factors.
   *
   * @return in newtons
   */
  public double pegSlidingNewtons() {
    return pegSliding(Steps.none());
  }

  /**
   * Computes the pull on the worst peg.
   *
   * @return in newtons
   */
  public double pegPullNewtons() {
    return pegPullNewtons(Steps.none());
  }

  /**
   * Computes the angle of that pull above the ground.
   *
   * @return in radians, 0 to a right angle
   */
  public double pullAngleRadians() {
    return Math.atan2(pegUpliftNewtons(), pegSlidingNewtons());
  }

  /**
   * Computes the pull on the worst peg with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.anchor.screen")
  public double pegPullNewtons(Steps steps) {
    steps.section("Pressure");
    pressure.pascals(steps);
    steps.section("Areas");
    steps
        .step("A_p", "area in plan")
        .formula("n * a^2 / (4 * tan(pi / n))")
        .with("n", form.sides(), "")
        .with("a", form.baseSideMetres(), "m")
        .from(STATICS)
        .gives(form.planSquareMetres(), "m2");
    steps
        .step("A_e", "greatest silhouette")
        .formula("w * h / 2")
        .with("w", form.greatestWidthMetres(), "m")
        .with("h", form.heightMetres(), "m")
        .from(STATICS)
        .gives(form.elevationSquareMetres(), "m2");
    steps.section("Forces on the cover");
    double up = pegUplift(steps);
    double sideways = pegSliding(steps);
    return steps
        .step("P", "pull on the worst peg")
        .formula("sqrt(T^2 + S^2)")
        .with("T", up, "N")
        .with("S", sideways, "N")
        .from(STATICS)
        .gives(Math.sqrt(up * up + sideways * sideways), "N");
  }

  private double pegUplift(Steps steps) {
    double drag = drag(steps);
    double lift =
        steps
            .step("U", "uplift, with factor")
            .formula("gamma * c_u * q * A_p")
            .with("gamma", windFactor, "")
            .with("c_u", coefficients.uplift(), "")
            .with("q", pressure.pascals(), "Pa")
            .with("A_p", form.planSquareMetres(), "m2")
            .from(coefficients.source())
            .note(coefficients.limits())
            .gives(windFactor * upliftNewtons(), "N");
    double rest =
        steps
            .step("R", "uplift less the weight that rests")
            .formula("U - c_w * m * g")
            .with("U", lift, "N")
            .with("c_w", WEIGHT_FACTOR, "")
            .with("m", restingMassKg, "kg")
            .with("g", GRAVITY, "m/s2")
            .from(FAVOURABLE)
            .gives(lift - WEIGHT_FACTOR * restingMassKg * GRAVITY, "N");
    double moment =
        steps
            .step("M", "moment of the drag at the ground")
            .formula("D * h / 3")
            .with("D", drag, "N")
            .with("h", form.heightMetres(), "m")
            .from(STATICS)
            .gives(drag * form.heightMetres() / 3, "N m");
    double r = form.inradiusMetres();
    double circle = rest / pegs + 2 * moment / (pegs * r);
    double edge = 4.0 / 3 * (rest / pegs + moment / (pegs * r));
    return steps
        .step("T", "uplift of the worst peg")
        .formula("max(0, max(R / N + 2 * M / (N * r), 4 / 3 * (R / N + M / (N * r))))")
        .with("R", rest, "N")
        .with("M", moment, "N m")
        .with("N", pegs, "")
        .with("r", r, "m")
        .from(STATICS)
        .note("pegs as bolts on a circle, or tipping about the lee edge: the greater")
        .gives(Math.max(0, Math.max(circle, edge)), "N");
  }

  private double drag(Steps steps) {
    return steps
        .step("D", "drag, with factor")
        .formula("gamma * c_d * q * A_e")
        .with("gamma", windFactor, "")
        .with("c_d", coefficients.drag(), "")
        .with("q", pressure.pascals(), "Pa")
        .with("A_e", form.elevationSquareMetres(), "m2")
        .from(FACTORS)
        .gives(windFactor * dragNewtons(), "N");
  }

  private double pegSliding(Steps steps) {
    double drag = windFactor * dragNewtons();
    return steps
        .step("S", "sliding force of a peg")
        .formula("D / (N * c_s)")
        .with("D", drag, "N")
        .with("N", pegs, "")
        .with("c_s", SHARING_PEGS, "")
        .from(Source.commonPractice("half of the pegs share the sliding"))
        .gives(drag / (pegs * SHARING_PEGS), "N");
  }

  /**
   * Gives the cautions that go with every screening.
   *
   * @return storm, coefficients and what is not looked at
   */
  public List<Caution> cautions() {
    return List.of(
        Caution.of(
            Hazard.WIND,
            "No tent is a storm shelter. This screening spreads an even wind over the whole cover;"
                + " edges, corners and fluttering cloth see far more, and gusts come first.",
            "Set the wind limit before pitching, say who decides, measure gusts, act at 60 % and"
                + " clear people at 80 % of the limit. The factor used is "
                + windFactor
                + "; "
                + FACTOR_OCCUPIED
                + " is printed for structures in use, "
                + FACTOR_EVACUATED
                + " where evacuated at a set speed.",
            FACTORS),
        new Caution(
            Hazard.STRUCTURE,
            "Frame, poles, joints, cloth, seams and the ground under the feet are not looked at.",
            "A licensed engineer and the local code decide on the structure, above all where people"
                + " gather or sleep.",
            Optional.empty()));
  }
}
