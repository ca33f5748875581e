package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.Optional;

/**
 * Coefficients that turn a velocity pressure into forces on a pyramid-shaped cover.
 *
 * @param drag horizontal force over pressure and greatest silhouette, greater than 0, at most 3
 * @param uplift upward force over pressure and plan area, internal pressure included, 0 to 3
 * @param source where they stand
 * @param limits what they hold for, in words; not blank
 */
public record WindCoefficients(double drag, double uplift, Source source, String limits) {

  /** Mean external suction over a hipped roof of 30 degrees, windward face lifted. */
  static final double EXTERNAL_SUCTION = 0.6;

  private static final double SQUARE_DRAG = 1.3;
  private static final double MANY_SIDED_DRAG = 1.0;
  private static final int MANY_SIDES = 6;
  private static final double LEAST_SLOPE = Math.toRadians(30);
  private static final double HAIR = 1e-9;
  private static final Source PYRAMID =
      Source.fromMemory(
          "ASCE; CEN",
          "ASCE 7 (chimneys, tanks and similar structures, height over width up to 1: square 1.3,"
              + " hexagonal or octagonal 1.0) and EN 1991-1-4 (hipped roof of 30 degrees, mean of"
              + " its zones 0.6; inside 0.2, dominant opening 0.9 times 0.8)",
          "",
          "");

  public WindCoefficients {
    Args.positive("drag coefficient", drag, "");
    Args.within("drag coefficient", drag, 0, 3, "");
    Args.within("uplift coefficient", uplift, 0, 3, "");
    Args.notBlank("limits of the coefficients", limits);
  }

  /**
   * Tells why the simple coefficients do not hold for a form.
   *
   * @param form the shelter
   * @return what was given and what they hold for, or nothing if they hold
   */
  public static Optional<String> outside(ShelterForm form) {
    double slope = form.faceSlope();
    if (slope < LEAST_SLOPE - HAIR) {
      return Optional.of(
          "face slope: given "
              + Numbers.fixed(Math.toDegrees(slope), 1)
              + " deg, these coefficients hold from 30 deg");
    }
    double slender = form.height() / form.greatestWidth();
    return slender > 1 + HAIR
        ? Optional.of(
            "height over width: given "
                + Numbers.fixed(slender, 2)
                + ", these coefficients hold up to 1")
        : Optional.empty();
  }

  /**
   * Takes coefficients that the builder states, from a code or a wind tunnel.
   *
   * @param drag horizontal force over pressure and greatest silhouette, greater than 0, at most 3
   * @param uplift upward force over pressure and plan area, internal pressure included, 0 to 3
   * @param statedBy where they stand, not blank
   * @return the coefficients
   * @throws IllegalArgumentException if a number is out of range or nobody states them
   */
  public static WindCoefficients stated(double drag, double uplift, String statedBy) {
    Args.notBlank("source of the coefficients", statedBy);
    return new WindCoefficients(
        drag,
        uplift,
        Source.commonPractice("as the builder states: " + statedBy),
        "as stated by the builder, from " + statedBy + "; not checked here");
  }

  /**
   * Gives simple coefficients for a closed pyramid on the ground.
   *
   * <p>A pyramid tapers, so the drag of an upright prism of the same width is on the cautious side.
   * They hold for faces of 30 degrees or steeper and a height up to the width; for anything else, a
   * wind-tunnel or code value with its source must be given. Neighbouring edges, corners and cloth
   * that flutters see far greater local suction.
   *
   * @param form the shelter
   * @param openings how the wind may get in
   * @return drag 1.3 up to five sides, 1.0 from six; uplift 0.8 closed, 1.32 open to the wind
   * @throws IllegalArgumentException if the form is flatter than 30 degrees or higher than wide
   */
  public static WindCoefficients forPyramid(ShelterForm form, Openings openings) {
    outside(form)
        .ifPresent(
            reason -> {
              throw ArgumentFault.finding(reason, "give your own with their source");
            });
    return new WindCoefficients(
        form.sides() < MANY_SIDES ? SQUARE_DRAG : MANY_SIDED_DRAG,
        EXTERNAL_SUCTION + openings.internal(),
        PYRAMID,
        "regular pyramid on the ground, whole or cut off at the top, faces of 30 degrees or"
            + " steeper, height up to its width, "
            + openings.label()
            + "; mean over the whole cover, not for edges, corners or fluttering cloth");
  }
}
