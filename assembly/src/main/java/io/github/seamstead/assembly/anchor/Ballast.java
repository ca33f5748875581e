package io.github.seamstead.assembly.anchor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Ballast in place of pegs: enough that the cover neither slides nor tips.
 *
 * <p>{@code m = (U + D / mu) / (0.9 g)} against sliding, {@code (U + M / r) / (0.9 g)} against
 * tipping, with factored loads; the greater, less what rests already. No published table of
 * friction by ground was seen: the builder drags a loaded drum with a spring balance.
 *
 * @param screen the wind on the cover
 * @param friction drag over weight at which the ballast starts to slide, 0.05 to 1
 */
public record Ballast(WindScreen screen, double friction) {

  /**
   * Friction of sacks of earth or filled drums on firm, dry ground, if none was measured: 0.4,
   * common practice. Wet grass has less.
   */
  public static final double USUAL_FRICTION = 0.4;

  private static final Source STATICS = Source.derived("sliding and tipping of a rigid body");
  private static final Source STUDY =
      Source.found(
          "Clemson University study, as reported",
          "Ballast for tents",
          "2012",
          "sliding governs; water drums slide and are often too few");

  public Ballast {
    Args.within("friction of the ballast", friction, 0.05, 1, "");
  }

  /**
   * Reckons ballast.
   *
   * @param screen the wind on the cover
   * @param friction drag over weight at which the ballast starts to slide, 0.05 to 1
   * @return the ballast
   * @throws IllegalArgumentException if the friction is out of range
   */
  public static Ballast of(WindScreen screen, double friction) {
    return new Ballast(screen, friction);
  }

  /**
   * Computes the mass to add.
   *
   * @return in kilograms, 0 or more
   */
  public double mass() {
    return mass(Steps.none());
  }

  /**
   * Computes the mass to add with the steps.
   *
   * @param steps where the steps go
   * @return in kilograms, 0 or more
   */
  @Calculation("assembly.anchor.ballast")
  public double mass(Steps steps) {
    double drag = screen.windFactor() * screen.drag();
    double uplift = screen.windFactor() * screen.uplift();
    double weight = WindScreen.WEIGHT_FACTOR * STANDARD_GRAVITY;
    double z = screen.form().dragHeight();
    double r = screen.form().inradius();
    double slide =
        steps
            .step("m_slide", "mass against sliding")
            .formula("(U + D / mu) / (c_w * g)")
            .with("U", uplift, "N")
            .with("D", drag, "N")
            .with("mu", friction, "")
            .with("c_w", WindScreen.WEIGHT_FACTOR, "")
            .with("g", STANDARD_GRAVITY, "m/s2")
            .from(STATICS)
            .gives((uplift + drag / friction) / weight, "kg");
    double tip =
        steps
            .step("m_tip", "mass against tipping")
            .formula("(U + D * z / r) / (c_w * g)")
            .with("U", uplift, "N")
            .with("D", drag, "N")
            .with("z", z, "m")
            .with("r", r, "m")
            .with("c_w", WindScreen.WEIGHT_FACTOR, "")
            .with("g", STANDARD_GRAVITY, "m/s2")
            .from(STATICS)
            .gives((uplift + drag * z / r) / weight, "kg");
    return steps
        .step("m_b", "ballast to add")
        .formula("max(0, max(m_slide, m_tip) - m)")
        .with("m_slide", slide, "kg")
        .with("m_tip", tip, "kg")
        .with("m", screen.restingMass(), "kg")
        .from(STATICS)
        .gives(Math.max(0, Math.max(slide, tip) - screen.restingMass()), "kg");
  }

  /**
   * Computes how many filled containers that is.
   *
   * @param filledMass mass of one when filled, in kilograms, greater than 0
   * @return 0 or more
   * @throws IllegalArgumentException if the mass is not positive or over a million are needed
   */
  public int containers(double filledMass) {
    Args.positive("filled container", filledMass, "kg");
    double count = Math.ceil(mass() / filledMass - 0.000001);
    Args.require(
        count <= 1e6,
        "containers: given " + Numbers.plain(filledMass) + " kg each, over a million needed");
    return (int) Math.max(0, count);
  }

  /**
   * Gives the caution that goes with ballast.
   *
   * @return sliding governs
   */
  public Caution caution() {
    return Caution.of(
        Hazard.WIND,
        "Ballast slides before it lifts, above all on wet grass and smooth ground; drums leak and"
            + " roll.",
        "Measure how a loaded drum slides on this ground with a spring balance, wet and dry; tie"
            + " ballast low and to the frame.",
        STUDY);
  }
}
