package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * A guy rope that holds a horizontal force: {@code F = H / sin(a)}, and its push down on the mast,
 * {@code H / tan(a)}.
 *
 * @param horizontal force that it holds, in newtons, greater than 0
 * @param fromMast angle between rope and upright mast, in radians, {@link #LEAST_ANGLE} or more and
 *     less than a right angle; {@link #LEAST_ANGLE} to 89 degrees
 */
public record GuyRope(double horizontal, double fromMast) {

  /** The least angle from the mast, 30 degrees. */
  public static final double LEAST_ANGLE = Math.toRadians(30);

  /** The angle from the mast that is aimed at, 45 degrees. */
  public static final double USUAL_ANGLE = Math.toRadians(45);

  private static final Source STATICS = Source.derived("rope in one line from mast to ground");
  private static final Source ANGLE =
      Source.found("", "Manual of a rigging frame", "", "not under 30, better 45 degrees or more");

  public GuyRope {
    Args.positive("force on the guy rope", horizontal, "N");
    Args.within(
        "angle of the guy rope from the mast",
        Math.toDegrees(fromMast),
        Math.toDegrees(LEAST_ANGLE) - 1e-9,
        89,
        "deg");
  }

  /**
   * Makes a guy rope.
   *
   * @param horizontal force that it holds, in newtons, greater than 0
   * @param fromMast angle from the mast, in radians, 30 to 89 degrees
   * @return the rope
   * @throws IllegalArgumentException if a number is out of range
   */
  public static GuyRope of(double horizontal, double fromMast) {
    return new GuyRope(horizontal, fromMast);
  }

  /**
   * Reckons a guy from each corner of a screened cover: half of the guys share the drag, with its
   * factor, at half a right angle from the mast.
   *
   * @param screen the wind on the cover
   * @return the guy of a corner
   */
  public static GuyRope ofCorners(WindScreen screen) {
    double drag = screen.windFactor() * screen.drag();
    return new GuyRope(drag / (screen.form().sides() * WindScreen.SHARING_PEGS), USUAL_ANGLE);
  }

  /**
   * Computes the tension.
   *
   * @return in newtons
   */
  public double tension() {
    return tension(Steps.none());
  }

  /**
   * Computes the tension with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.anchor.guy")
  public double tension(Steps steps) {
    steps
        .step("V", "push down on the mast, and pull up on the peg")
        .formula("H / tan(a)")
        .with("H", horizontal, "N")
        .with("a", fromMast, "rad")
        .from(STATICS)
        .gives(downPull(), "N");
    return steps
        .step("F", "tension of the guy rope")
        .formula("H / sin(a)")
        .with("H", horizontal, "N")
        .with("a", fromMast, "rad")
        .from(STATICS)
        .gives(horizontal / StrictMath.sin(fromMast), "N");
  }

  /**
   * Computes the push down on the mast, which pulls the peg up.
   *
   * @return in newtons
   */
  public double downPull() {
    return horizontal / StrictMath.tan(fromMast);
  }

  /**
   * Gives the caution that goes with guys.
   *
   * @return angle and trip
   */
  public Caution caution() {
    return Caution.of(
        Hazard.STRUCTURE,
        "A steep guy pulls far more than it holds, and pushes the mast down and the peg up.",
        "Set guys never under 30 degrees from the mast, better 45 or more; measure clear distances"
            + " from guys and pegs.",
        ANGLE);
  }
}
