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
 * @param apexMetres height of the apex, in metres, greater than 0, at most 100
 * @param footMetres greatest radius of the frame's foot, in metres, 0 to 100
 * @param tailMetres rope for hands and knots, in metres, 0 to 100
 */
public record DropZone(double apexMetres, double footMetres, double tailMetres) {

  private static final Source PRACTICE =
      Source.commonPractice("as far out from the foot as the apex is high");

  public DropZone {
    Args.positive("height of the apex", apexMetres, "m");
    Args.within("height of the apex", apexMetres, 0, 100, "m");
    Args.within("foot of the frame", footMetres, 0, 100, "m");
    Args.within("tail of the rope", tailMetres, 0, 100, "m");
  }

  /**
   * Makes a zone with two metres of tail for each rope.
   *
   * @param apexMetres height of the apex, in metres, greater than 0, at most 100
   * @param footMetres greatest radius of the frame's foot, in metres, 0 to 100
   * @return the zone
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static DropZone of(double apexMetres, double footMetres) {
    return new DropZone(apexMetres, footMetres, 2);
  }

  /**
   * Computes the radius of the zone about the centre.
   *
   * @return in metres
   */
  public double radiusMetres() {
    return footMetres + apexMetres;
  }

  /**
   * Computes how steeply the hauled rope falls.
   *
   * @return in radians below the level
   */
  public double haulRadians() {
    return StrictMath.atan2(apexMetres, radiusMetres());
  }

  /**
   * Computes the least length of a rope.
   *
   * @return in metres
   */
  public double ropeMetres() {
    return ropeMetres(Steps.none());
  }

  /**
   * Computes the least length of a rope with the steps.
   *
   * @param steps where the steps go
   * @return in metres
   */
  @Calculation("assembly.handling.dropzone")
  public double ropeMetres(Steps steps) {
    double radius =
        steps
            .step("R_d", "radius of the drop zone")
            .formula("R + h")
            .with("R", footMetres, "m")
            .with("h", apexMetres, "m")
            .from(PRACTICE)
            .gives(radiusMetres(), "m");
    return steps
        .step("l", "least length of a rope")
        .formula("sqrt(R_d^2 + h^2) + sqrt(R^2 + h^2) + l_t")
        .with("R_d", radius, "m")
        .with("h", apexMetres, "m")
        .with("R", footMetres, "m")
        .with("l_t", tailMetres, "m")
        .from(Source.derived("straight from the crew over the apex to the foot"))
        .gives(
            StrictMath.hypot(radius, apexMetres)
                + StrictMath.hypot(footMetres, apexMetres)
                + tailMetres,
            "m");
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
            + Numbers.fixed(radiusMetres(), 1)
            + " m about the centre while anything is raised, helpers on ropes at its edge and out"
            + " of the rope's line.",
        Optional.empty());
  }
}
