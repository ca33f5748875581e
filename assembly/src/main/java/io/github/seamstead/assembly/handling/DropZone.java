package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.Optional;

/**
 * Where nobody stands while the cover goes up, and the rope that this asks for.
 *
 * <p>Common practice: as far out from the foot of the frame as the apex is high. The crew hauls
 * from its edge. A rope runs from there over the apex to the ground on the other side, with a tail.
 *
 * @param apexHeight height of the apex, in metres, greater than 0, at most 100
 * @param foot greatest radius of the frame's foot, in metres, 0 to 100
 * @param tail rope for hands and knots, in metres, 0 to 100
 */
public record DropZone(double apexHeight, double foot, double tail) {

  private static final Source PRACTICE =
      Source.commonPractice("as far out from the foot as the apex is high");

  public DropZone {
    Args.positive("height of the apex", apexHeight, "m");
    Args.within("height of the apex", apexHeight, 0, 100, "m");
    Args.within("foot of the frame", foot, 0, 100, "m");
    Args.within("tail of the rope", tail, 0, 100, "m");
  }

  /**
   * Makes a zone with two metres of tail for each rope.
   *
   * @param apexHeight height of the apex, in metres, greater than 0, at most 100
   * @param foot greatest radius of the frame's foot, in metres, 0 to 100
   * @return the zone
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static DropZone of(double apexHeight, double foot) {
    return new DropZone(apexHeight, foot, 2);
  }

  /**
   * Computes the radius of the zone about the centre.
   *
   * @return in metres
   */
  public double radius() {
    return foot + apexHeight;
  }

  /**
   * Computes how steeply the hauled rope falls.
   *
   * @return in radians below the level
   */
  public double haul() {
    return StrictMath.atan2(apexHeight, radius());
  }

  /**
   * Computes the least length of a rope.
   *
   * @return in metres
   */
  public double ropeLength() {
    return ropeLength(Steps.none());
  }

  /**
   * Computes the least length of a rope with the steps.
   *
   * @param steps where the steps go
   * @return in metres
   */
  @Calculation("assembly.handling.dropzone")
  public double ropeLength(Steps steps) {
    double radius =
        steps
            .step("R_d", "radius of the drop zone")
            .formula("R + h")
            .with("R", foot, "m")
            .with("h", apexHeight, "m")
            .from(PRACTICE)
            .gives(radius(), "m");
    return steps
        .step("l", "least length of a rope")
        .formula("sqrt(R_d^2 + h^2) + sqrt(R^2 + h^2) + l_t")
        .with("R_d", radius, "m")
        .with("h", apexHeight, "m")
        .with("R", foot, "m")
        .with("l_t", tail, "m")
        .from(Source.derived("straight from the crew over the apex to the foot"))
        .gives(
            StrictMath.hypot(radius, apexHeight) + StrictMath.hypot(foot, apexHeight) + tail, "m");
  }

  /**
   * Gives the caution that goes with the zone.
   *
   * @return what falls
   */
  public Caution caution() {
    return new Caution(
        Hazard.HEIGHT,
        "Cover, ropes and poles can come down anywhere within the drop zone.",
        "Keep everybody out of a circle of "
            + Numbers.fixed(radius(), 1)
            + " m about the centre while anything is raised, helpers on ropes at its edge and out"
            + " of the rope's line.",
        Optional.empty());
  }
}
