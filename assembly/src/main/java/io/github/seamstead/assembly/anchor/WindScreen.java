package io.github.seamstead.assembly.anchor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * Wind on the whole cover, and what the worst peg gets of it. It screens: it tells when a plan is
 * plainly too weak, and never that a structure is safe.
 *
 * <p>Drag acts at the middle of the silhouette, uplift on the plan. All of it goes to the pegs,
 * which stand evenly along the sides of the base. The worst peg's uplift is the greatest of four
 * models, R being the uplift left and M the moment of the drag:
 *
 * <ul>
 *   <li>bolts on a circle about the centre: {@code R / N + 2 M / (N r)};
 *   <li>a circle tipping about its lee edge: {@code 4 / 3 (R / N + M / (N r))};
 *   <li>bolts along the sides, wind on a corner: {@code R / N + M R_c / (N i^2)} with {@code i^2 =
 *       (r^2 + a^2 / 12) / 2};
 *   <li>tipping about a lee side: {@code (r + e) (R r + M) / (N (i^2 + r^2))}, where the farthest
 *       peg stands {@code e} to windward: a corner with an odd number of sides, else a side.
 * </ul>
 *
 * <p>Half of the pegs share the sliding. Weight counts nine tenths, ground friction nothing.
 *
 * <pre>{@code
 * ShelterForm form = ShelterForm.ofFrame(12, 1.4, 2.6, 2.6, false);
 * WindScreen screen =
 *     WindScreen.of(
 *         form,
 *         WindPressure.of(20),
 *         WindCoefficients.forPyramid(form, Openings.CLOSED),
 *         120,
 *         24,
 *         WindScreen.FACTOR_OCCUPIED);
 * double drag = screen.drag(); // 1758
 * }</pre>
 *
 * @param form the shelter
 * @param pressure the velocity pressure
 * @param coefficients drag and uplift
 * @param restingMass mass of cover and frame that rests on the ground, in kilograms, 0 or more
 * @param pegs pegs round the base, 3 to 10 000
 * @param windFactor factor on the wind load, 1 to 3
 */
public record WindScreen(
    ShelterForm form,
    WindPressure pressure,
    WindCoefficients coefficients,
    double restingMass,
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

  private static final Source FAVOURABLE =
      Source.fromMemory("CEN", "EN 1990 Basis of structural design", "2002", "favourable 0.9");
  private static final Source STATICS =
      Source.derived("silhouette with even pressure; pegs evenly along the sides");

  public WindScreen {
    Args.notNegative("resting mass", restingMass, "kg");
    Args.within("pegs", pegs, 3, 10_000);
    Args.within("factor on the wind load", windFactor, 1, 3, "");
  }

  /**
   * Screens a shelter.
   *
   * @param form the shelter
   * @param pressure the velocity pressure
   * @param coefficients drag and uplift
   * @param restingMass mass of cover and frame that rests on the ground, in kilograms, 0 or more
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
      double restingMass,
      int pegs,
      double windFactor) {
    return new WindScreen(form, pressure, coefficients, restingMass, pegs, windFactor);
  }

  /**
   * Computes the horizontal force of the wind, without factor.
   *
   * @return in newtons
   */
  public double drag() {
    return coefficients.drag() * pressure.pressure() * form.elevationArea();
  }

  /**
   * Computes the upward force of the wind, without factor.
   *
   * @return in newtons
   */
  public double uplift() {
    return coefficients.uplift() * pressure.pressure() * form.planArea();
  }

  /**
   * Computes the worst peg's uplift, with factors.
   *
   * @return in newtons, 0 or more
   */
  public double pegUplift() {
    return pegUplift(Steps.none());
  }

  /**
   * Computes a peg's sliding force, with factors.
   *
   * @return in newtons
   */
  public double pegSliding() {
    return pegSliding(Steps.none());
  }

  /**
   * Computes the pull on the worst peg.
   *
   * @return in newtons
   */
  public double pegPull() {
    return pegPull(Steps.none());
  }

  /**
   * Computes the angle of that pull above the ground.
   *
   * @return in radians, 0 to a right angle
   */
  public double pullAngle() {
    return StrictMath.atan2(pegUplift(), pegSliding());
  }

  /**
   * Computes the pull on the worst peg with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.anchor.screen")
  public double pegPull(Steps steps) {
    steps.section("Pressure");
    pressure.pressure(steps);
    steps.section("Areas");
    steps
        .step("A_p", "area in plan")
        .formula("n * a^2 / (4 * tan(pi / n))")
        .with("n", form.sides(), "")
        .with("a", form.baseSide(), "m")
        .from(STATICS)
        .gives(form.planArea(), "m2");
    steps
        .step("A_e", "greatest silhouette")
        .formula("w * t * (1 - t / (2 * h)) + A_c")
        .with("w", form.greatestWidth(), "m")
        .with("t", form.top(), "m")
        .with("h", form.apexHeight(), "m")
        .with("A_c", form.capArea(), "m2")
        .from(STATICS)
        .note("t is the height that the frame stands, h its apex, A_c what a cap adds")
        .gives(form.elevationArea(), "m2");
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
    double drag = designDrag(steps);
    double lift =
        steps
            .step("U", "uplift, with factor")
            .formula("gamma * c_u * q * A_p")
            .with("gamma", windFactor, "")
            .with("c_u", coefficients.uplift(), "")
            .with("q", pressure.pressure(), "Pa")
            .with("A_p", form.planArea(), "m2")
            .from(coefficients.source())
            .note(coefficients.limits())
            .gives(windFactor * uplift(), "N");
    double rest =
        steps
            .step("R", "uplift less the weight that rests")
            .formula("U - c_w * m * g")
            .with("U", lift, "N")
            .with("c_w", WEIGHT_FACTOR, "")
            .with("m", restingMass, "kg")
            .with("g", STANDARD_GRAVITY, "m/s2")
            .from(FAVOURABLE)
            .gives(lift - WEIGHT_FACTOR * restingMass * STANDARD_GRAVITY, "N");
    double moment =
        steps
            .step("M", "moment of the drag at the ground")
            .formula("D * z")
            .with("D", drag, "N")
            .with("z", form.dragHeight(), "m")
            .from(STATICS)
            .note("z is the height of the middle of the silhouette")
            .gives(drag * form.dragHeight(), "N m");
    return worst(rest, moment, steps);
  }

  private double worst(double rest, double moment, Steps steps) {
    double r = form.inradius();
    double a = form.baseSide();
    double corner = form.circumradius();
    double far = form.sides() % 2 == 0 ? r : corner;
    double spread =
        steps
            .step("i2", "mean square distance of the pegs from a line through the centre")
            .formula("(r^2 + a^2 / 12) / 2")
            .with("r", r, "m")
            .with("a", a, "m")
            .from(STATICS)
            .gives((r * r + a * a / 12) / 2, "m2");
    double circle =
        steps
            .step("T_circle", "worst peg of two circles of pegs: bolted, or tipping about the lee")
            .formula("max(R + 2 * M / r, 4 / 3 * (R + M / r)) / N")
            .with("R", rest, "N")
            .with("M", moment, "N m")
            .with("r", r, "m")
            .with("N", pegs, "")
            .from(STATICS)
            .gives(Math.max(rest + 2 * moment / r, 4.0 / 3 * (rest + moment / r)) / pegs, "N");
    double bolts =
        steps
            .step("T_bolts", "worst peg of bolts along the sides, wind on a corner")
            .formula("(R + M * R_c / i2) / N")
            .with("R", rest, "N")
            .with("M", moment, "N m")
            .with("R_c", corner, "m")
            .with("i2", spread, "m2")
            .with("N", pegs, "")
            .from(STATICS)
            .gives((rest + moment * corner / spread) / pegs, "N");
    double tip =
        steps
            .step("T_tip", "worst peg when the cover tips about a lee side")
            .formula("(r + e) * (R * r + M) / (i2 + r^2) / N")
            .with("r", r, "m")
            .with("e", far, "m")
            .with("R", rest, "N")
            .with("M", moment, "N m")
            .with("i2", spread, "m2")
            .with("N", pegs, "")
            .from(STATICS)
            .note("e is the distance of the farthest peg to windward")
            .gives((r + far) * (rest * r + moment) / (spread + r * r) / pegs, "N");
    return steps
        .step("T", "uplift of the worst peg")
        .formula("max(0, max(T_circle, max(T_bolts, T_tip)))")
        .with("T_circle", circle, "N")
        .with("T_bolts", bolts, "N")
        .with("T_tip", tip, "N")
        .from(STATICS)
        .note("the greatest of the models")
        .gives(Math.max(0, Math.max(circle, Math.max(bolts, tip))), "N");
  }

  private double designDrag(Steps steps) {
    return steps
        .step("D", "drag, with factor")
        .formula("gamma * c_d * q * A_e")
        .with("gamma", windFactor, "")
        .with("c_d", coefficients.drag(), "")
        .with("q", pressure.pressure(), "Pa")
        .with("A_e", form.elevationArea(), "m2")
        .from(FACTORS)
        .gives(windFactor * drag(), "N");
  }

  private double pegSliding(Steps steps) {
    double drag = windFactor * drag();
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
                + " edges, corners and fluttering cloth see far more, and gusts come first. The"
                + " factor used is "
                + Numbers.plain(windFactor)
                + "; "
                + Numbers.plain(FACTOR_OCCUPIED)
                + " is printed for structures in use, "
                + Numbers.plain(FACTOR_EVACUATED)
                + " where evacuated at a set speed.",
            "Set a wind limit and say who decides before pitching. Measure gusts: act at 60 % and"
                + " clear people at 80 % of the limit.",
            FACTORS),
        new Caution(
            Hazard.STRUCTURE,
            "Frame, poles, joints, cloth, seams and the ground under the feet are not looked at.",
            "A licensed engineer and the local code decide on frame, poles and ground, above all"
                + " where people gather or sleep.",
            Optional.empty()));
  }
}
