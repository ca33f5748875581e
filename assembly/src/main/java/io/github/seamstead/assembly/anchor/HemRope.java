package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * A rope in the hem between two pegs under an even pull of the cloth: a flat parabola.
 *
 * @param lineLoad pull of the cloth along the hem, in N/m, greater than 0
 * @param spacing distance from peg to peg, in metres, greater than 0
 * @param dip how far the middle of the rope is drawn in, in metres, a thousandth to a quarter of
 *     the spacing
 */
public record HemRope(double lineLoad, double spacing, double dip) {

  /** Dip over distance of pegs if nothing else is stated, common practice. */
  public static final double USUAL_DIP = 0.1;

  private static final Source PARABOLA =
      Source.derived("flat parabolic cable under an even load: H = w s^2 / (8 d)");

  public HemRope {
    Args.positive("pull along the hem", lineLoad, "N/m");
    Args.positive("distance of pegs", spacing, "m");
    Args.within("dip of the hem rope", dip, spacing / 1000, spacing / 4, "m");
  }

  /**
   * Makes a hem rope.
   *
   * @param lineLoad pull of the cloth along the hem, in N/m, greater than 0
   * @param spacing distance from peg to peg, in metres, greater than 0
   * @param dip dip in the middle, in metres, a thousandth to a quarter of the spacing
   * @return the rope
   * @throws IllegalArgumentException if a number is out of range
   */
  public static HemRope of(double lineLoad, double spacing, double dip) {
    return new HemRope(lineLoad, spacing, dip);
  }

  /**
   * Reckons the rope along the hem of a screened cover, hung with a dip of {@link #USUAL_DIP} of
   * the distance of the pegs; a flatter rope pulls harder.
   *
   * @param screen the wind on the cover
   * @param spacing distance from peg to peg, in metres, greater than 0
   * @return the rope
   * @throws IllegalArgumentException if the distance is not positive
   */
  public static HemRope ofHem(WindScreen screen, double spacing) {
    return new HemRope(lineLoad(screen), spacing, USUAL_DIP * spacing);
  }

  /**
   * Spreads the pull of a screening evenly over the hem.
   *
   * @param screen the wind on the cover
   * @return the worst peg's pull over the distance from peg to peg, in N/m
   */
  public static double lineLoad(WindScreen screen) {
    return screen.pegPull() * screen.pegs() / screen.form().perimeter();
  }

  /**
   * Computes the tension at the pegs, the greatest.
   *
   * @return in newtons
   */
  public double tension() {
    return tension(Steps.none());
  }

  /**
   * Computes the tension at the pegs with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.anchor.hemrope")
  public double tension(Steps steps) {
    double along =
        steps
            .step("H", "pull along the hem")
            .formula("w * s^2 / (8 * d)")
            .with("w", lineLoad, "N/m")
            .with("s", spacing, "m")
            .with("d", dip, "m")
            .from(PARABOLA)
            .gives(lineLoad * spacing * spacing / (8 * dip), "N");
    double across = lineLoad * spacing / 2;
    return steps
        .step("F", "tension of the rope at a peg")
        .formula("sqrt(H^2 + (w * s / 2)^2)")
        .with("H", along, "N")
        .with("w", lineLoad, "N/m")
        .with("s", spacing, "m")
        .from(PARABOLA)
        .gives(Math.sqrt(along * along + across * across), "N");
  }
}
