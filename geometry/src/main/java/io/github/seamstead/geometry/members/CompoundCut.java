package io.github.seamstead.geometry.members;

import io.github.seamstead.geometry.frame.RegularPolygon;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * A saw setting: the mitre is turned from a square cut across the face that lies on the saw table,
 * the tilt (bevel) leans the blade from square to that face.
 *
 * @param mitre in radians, 0 to π/2
 * @param tilt in radians, 0 to π/2
 */
public record CompoundCut(double mitre, double tilt) {

  /** Beyond this tilt most saws stop; 45°. */
  public static final double USUAL_GREATEST_TILT = Math.PI / 4;

  private static final Source RING =
      Source.derived(
          "bisecting plane of two equal sides: tan M = tan(π/n) cos θ, sin T = sin(π/n) sin θ");

  private static final Source CHEEK =
      Source.derived("vertical plane at the plan angle π/n to a hip of slope γ");

  public CompoundCut {
    Args.within("mitre", mitre, 0, Math.PI / 2, "rad");
    Args.within("tilt", tilt, 0, Math.PI / 2, "rad");
  }

  /**
   * The cut at the corners of a ring of n equal members that lean: {@code M = atan(tan(pi/n)
   * cos(theta))}, {@code T = asin(sin(pi/n) sin(theta))}. A level ring has slope 0 and so no tilt.
   *
   * @param sides n, 3 to 64
   * @param slope θ, how far the members' wide face leans from the horizontal, in radians, 0 to π/2
   * @return the setting, the same at both ends, with the wide face on the table
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static CompoundCut ringCorner(int sides, double slope) {
    return ringCorner(sides, slope, Steps.none());
  }

  /**
   * The cut at the corners of a ring with the worked steps; the last step is the tilt.
   *
   * @param sides n, 3 to 64
   * @param slope θ, in radians, 0 to π/2
   * @param steps where the steps are written
   * @return the setting
   * @throws IllegalArgumentException if an argument is outside its range
   */
  @Calculation("geometry.members.ringcut")
  public static CompoundCut ringCorner(int sides, double slope, Steps steps) {
    Args.within(
        "number of sides", sides, RegularPolygon.LEAST_SIDES, RegularPolygon.GREATEST_SIDES);
    Args.within("slope", slope, 0, Math.PI / 2, "rad");
    double half = Math.PI / sides;
    steps.step("n", "number of sides").gives(sides, "");
    steps.step("theta", "slope of the wide face").gives(slope, "rad");
    double mitre =
        steps
            .step("M", "mitre across the wide face")
            .formula("atan(tan(pi/n) * cos(theta))")
            .with("n", sides, "")
            .with("theta", slope, "rad")
            .from(RING)
            .gives(StrictMath.atan(StrictMath.tan(half) * StrictMath.cos(slope)), "rad");
    double tilt =
        steps
            .step("T", "tilt of the blade")
            .formula("asin(sin(pi/n) * sin(theta))")
            .with("n", sides, "")
            .with("theta", slope, "rad")
            .from(RING)
            .gives(StrictMath.asin(StrictMath.sin(half) * StrictMath.sin(slope)), "rad");
    return new CompoundCut(mitre, tilt);
  }

  /**
   * One of the two cheek cuts with which n hips meet at the apex, the timber lying on its upper or
   * lower edge (the width on the table): {@code M = pi/2 - atan(tan(pi/n) cos(gamma))}, {@code T =
   * asin(sin(pi/n) sin(gamma))}. The line on the edge is the framing square's side cut.
   *
   * @param sides n, 3 to 64
   * @param hipSlope γ, in radians, more than 0 and less than π/2
   * @return the setting; the other cheek is its mirror image
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static CompoundCut cheekOnEdge(int sides, double hipSlope) {
    return cheekOnEdge(sides, hipSlope, Steps.none());
  }

  /**
   * The cheek cut on the edge with the worked steps; the last step is the tilt.
   *
   * @param sides n, 3 to 64
   * @param hipSlope γ, in radians, more than 0 and less than π/2
   * @param steps where the steps are written
   * @return the setting
   * @throws IllegalArgumentException if an argument is outside its range
   */
  @Calculation("geometry.members.cheekcut")
  public static CompoundCut cheekOnEdge(int sides, double hipSlope, Steps steps) {
    Args.within(
        "number of sides", sides, RegularPolygon.LEAST_SIDES, RegularPolygon.GREATEST_SIDES);
    Args.between("hip slope", hipSlope, 0, Math.PI / 2, "rad");
    double half = Math.PI / sides;
    steps.step("n", "number of hips").gives(sides, "");
    steps.step("gamma", "hip slope").gives(hipSlope, "rad");
    double side =
        steps
            .step("S", "side cut, from the length of the timber")
            .formula("atan(tan(pi/n) * cos(gamma))")
            .with("n", sides, "")
            .with("gamma", hipSlope, "rad")
            .from(CHEEK)
            .gives(StrictMath.atan(StrictMath.tan(half) * StrictMath.cos(hipSlope)), "rad");
    double mitre =
        steps
            .step("M", "mitre, from a square cut")
            .formula("pi/2 - S")
            .with("S", side, "rad")
            .from(CHEEK)
            .gives(Math.PI / 2 - side, "rad");
    double tilt =
        steps
            .step("T", "tilt of the blade")
            .formula("asin(sin(pi/n) * sin(gamma))")
            .with("n", sides, "")
            .with("gamma", hipSlope, "rad")
            .from(CHEEK)
            .gives(StrictMath.asin(StrictMath.sin(half) * StrictMath.sin(hipSlope)), "rad");
    return new CompoundCut(mitre, tilt);
  }

  /**
   * The same cheek cut, the timber lying on its side (the depth on the table): the mitre is the
   * plumb line γ and the tilt {@code pi/2 - pi/n}.
   *
   * @param sides n, 3 to 64
   * @param hipSlope γ, in radians, more than 0 and less than π/2
   * @return the setting; from five hips on the tilt is more than most saws lean
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static CompoundCut cheekOnSide(int sides, double hipSlope) {
    Args.within(
        "number of sides", sides, RegularPolygon.LEAST_SIDES, RegularPolygon.GREATEST_SIDES);
    Args.between("hip slope", hipSlope, 0, Math.PI / 2, "rad");
    return new CompoundCut(hipSlope, Math.PI / 2 - Math.PI / sides);
  }

  /**
   * Gives how much a member is shortened where it butts against the side of another instead of
   * reaching its centre line: {@code (t/2) / sin(phi)}, level, square to a plumb cut.
   *
   * @param thickness t of the other member, in metres, greater than 0
   * @param planAngle φ between the two in plan, in radians, more than 0 and at most π/2
   * @return the shortening in plan, in metres
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static double shortening(double thickness, double planAngle) {
    Args.positive("thickness", thickness, "m");
    Args.positive("plan angle", planAngle, "rad");
    Args.within("plan angle", planAngle, 0, Math.PI / 2, "rad");
    return thickness / 2 / StrictMath.sin(planAngle);
  }

  /**
   * Tells whether the blade must lean further than {@link #USUAL_GREATEST_TILT}.
   *
   * @return true if another way of laying the timber, or a hand saw, is needed
   */
  public boolean isBeyondMostSaws() {
    // A square frame's 45° is on every saw, whatever the last digit says.
    return tilt > USUAL_GREATEST_TILT + 1e-12;
  }
}
