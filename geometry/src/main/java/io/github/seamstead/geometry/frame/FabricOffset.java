package io.github.seamstead.geometry.frame;

import io.github.seamstead.geometry.members.MemberReach;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * The pyramid in which a cover or a lining lies, parallel to the faces of the frame's centre lines.
 *
 * <p>Each face plane moves by d along its normal; base plane and opening plane stay. The base
 * inradius grows by {@code d / sin(theta)}, the apex rises by {@code d / cos(theta)} and every
 * level side grows by {@code 2 d tan(pi/n) / sin(theta)}. Adding d to the edges instead would give
 * a cover that is too small and has other angles.
 *
 * @param frame the pyramid of the centre lines
 * @param distance how far the faces move d, in metres, outward if positive
 * @param surface the pyramid of the moved faces, in the frame's axes
 */
public record FabricOffset(RegularPyramid frame, double distance, RegularPyramid surface) {

  /**
   * Moves the faces for a cover that lies on the members: {@code d = reach + fabric thickness}, so
   * that the surface is the cover's outside.
   *
   * @param frame the pyramid of the members' centre lines
   * @param reach how far the outermost member stands out from a face of the centre lines ({@link
   *     MemberReach#outermost()}; of pipes half the outside diameter), in metres, 0 or more
   * @param fabricThickness in metres, 0 or more
   * @return the cover's surface
   * @throws IllegalArgumentException if an argument is negative or not finite
   */
  public static FabricOffset cover(RegularPyramid frame, double reach, double fabricThickness) {
    return cover(frame, reach, fabricThickness, Steps.none());
  }

  /**
   * Moves the faces for a cover with the worked steps; see {@link #cover(RegularPyramid, double,
   * double)}.
   *
   * @param frame the pyramid of the members' centre lines
   * @param reach how far the outermost member stands out, in metres, 0 or more
   * @param fabricThickness in metres, 0 or more
   * @param steps where the steps are written; the last is the base side of the surface
   * @return the cover's surface
   * @throws IllegalArgumentException if an argument is negative or not finite
   */
  public static FabricOffset cover(
      RegularPyramid frame, double reach, double fabricThickness, Steps steps) {
    Args.notNegative("reach of the members", reach, "m");
    Args.notNegative("fabric thickness", fabricThickness, "m");
    return by(frame, reach + fabricThickness, steps);
  }

  /**
   * Moves the faces for a lining hung inside the members: {@code d = reach - air gap}, so that the
   * clear distance between the cover's inside and the lining is the air gap.
   *
   * @param frame the pyramid of the members' centre lines
   * @param reach how far the outermost member stands out from a face of the centre lines, and as
   *     far in ({@link MemberReach#outermost()}; of pipes half the outside diameter), in metres, 0
   *     or more
   * @param airGap the clear distance between the cover's inside and the lining, in metres, at least
   *     twice the reach
   * @return the lining's surface
   * @throws IllegalArgumentException if an argument is outside its range, or the lining would
   *     shrink to nothing
   */
  public static FabricOffset lining(RegularPyramid frame, double reach, double airGap) {
    return lining(frame, reach, airGap, Steps.none());
  }

  /**
   * Moves the faces for a lining with the worked steps; see {@link #lining(RegularPyramid, double,
   * double)}.
   *
   * @param frame the pyramid of the members' centre lines
   * @param reach how far the outermost member stands out, and as far in, in metres, 0 or more
   * @param airGap in metres, at least twice the reach
   * @param steps where the steps are written; the last is the base side of the surface
   * @return the lining's surface
   * @throws IllegalArgumentException if an argument is outside its range, or the lining would
   *     shrink to nothing
   */
  public static FabricOffset lining(
      RegularPyramid frame, double reach, double airGap, Steps steps) {
    Args.notNegative("reach of the members", reach, "m");
    Args.positive("air gap", airGap, "m");
    Args.require(
        airGap >= 2 * reach,
        "air gap",
        Numbers.plain(airGap) + " m",
        "must be at least the thickness that the members take up square to a face, "
            + Numbers.significant(2 * reach, 6)
            + " m, or the lining would cut through them");
    return by(frame, reach - airGap, steps);
  }

  /**
   * Moves the faces by a distance.
   *
   * @param frame the pyramid of the centre lines
   * @param distance in metres, outward if positive
   * @return the moved surface
   * @throws IllegalArgumentException if the distance is not finite or the surface would shrink to
   *     nothing
   */
  public static FabricOffset by(RegularPyramid frame, double distance) {
    return by(frame, distance, Steps.none());
  }

  /**
   * Moves the faces by a distance with the worked steps; the last step is the base side of the
   * moved surface.
   *
   * @param frame the pyramid of the centre lines
   * @param distance in metres, outward if positive
   * @param steps where the steps are written
   * @return the moved surface
   * @throws IllegalArgumentException if the distance is not finite or the surface would shrink to
   *     nothing
   */
  @Calculation("geometry.frame.offset")
  public static FabricOffset by(RegularPyramid frame, double distance, Steps steps) {
    Args.finite("distance", distance, "m");
    int n = frame.sides();
    steps.section("Given");
    steps.step("n", "number of sides").gives(n, "");
    double a = steps.step("a", "base side of the centre lines").gives(frame.baseSide(), "m");
    double height = steps.step("H", "height of the centre lines").gives(frame.apexHeight(), "m");
    double d = steps.step("d", "distance of the faces").gives(distance, "m");
    steps.section("Parallel faces");
    double inradius =
        steps
            .step("r", "inradius of the base")
            .formula("a / (2 * tan(pi/n))")
            .with("a", a, "m")
            .with("n", n, "")
            .from(FrameSources.POLYGON)
            .gives(frame.base().inradius(), "m");
    double slope =
        steps
            .step("theta", "face slope, which stays")
            .formula("atan(H / r)")
            .with("H", height, "m")
            .with("r", inradius, "m")
            .from(FrameSources.PYRAMID)
            .gives(StrictMath.atan(height / inradius), "rad");
    double rise =
        steps
            .step("H_s", "height of the moved surface")
            .formula("H + d / cos(theta)")
            .with("H", height, "m")
            .with("d", d, "m")
            .with("theta", slope, "rad")
            .from(FrameSources.PYRAMID)
            .gives(height + d / StrictMath.cos(slope), "m");
    double growth =
        steps
            .step("g", "growth of every level side")
            .formula("2 * d * tan(pi/n) / sin(theta)")
            .with("d", d, "m")
            .with("n", n, "")
            .with("theta", slope, "rad")
            .from(FrameSources.PYRAMID)
            .gives(2 * d * StrictMath.tan(Math.PI / n) / StrictMath.sin(slope), "m");
    double top = top(frame, growth, steps);
    double side =
        steps
            .step("a_s", "base side of the moved surface")
            .formula("a + g")
            .with("a", a, "m")
            .with("g", growth, "m")
            .from(FrameSources.PYRAMID)
            .gives(a + growth, "m");
    Args.require(
        side >= RegularPolygon.LEAST_LENGTH && rise >= RegularPolygon.LEAST_LENGTH,
        "distance",
        Numbers.plain(distance) + " m",
        "must leave something of a pyramid whose base inradius is "
            + Numbers.significant(inradius, 6)
            + " m (more than "
            + Numbers.significant(-inradius * StrictMath.sin(slope), 6)
            + " m)");
    return new FabricOffset(frame, distance, new RegularPyramid(n, side, rise, top));
  }

  /** A small opening closes when the faces move inward past each other at its height. */
  private static double top(RegularPyramid frame, double growth, Steps steps) {
    if (!frame.isTruncated()) {
      return 0;
    }
    double b = steps.step("b", "side of the opening").gives(frame.openingSide(), "m");
    return steps
        .step("b_s", "side of the moved surface's opening")
        .formula("max(0, b + g)")
        .with("b", b, "m")
        .with("g", growth, "m")
        .from(FrameSources.PYRAMID)
        .gives(Math.max(0, b + growth), "m");
  }

  /**
   * Tells whether the frame has an opening and the moved surface closes below it.
   *
   * @return true if the surface has become a whole pyramid
   */
  public boolean closesOpening() {
    return frame.isTruncated() && !surface.isTruncated();
  }

  /**
   * Gives how far the surface's sharp corner at a hip lies from the hip's centre line: {@code |d| /
   * sin(delta/2)} with the dihedral angle delta.
   *
   * @return in metres
   */
  public double hipDistance() {
    return Math.abs(distance) / StrictMath.sin(frame.measures().hipDihedral() / 2);
  }

  /**
   * Gives how much shorter a cloth drawn round a hip pole of radius d is than one that keeps the
   * sharp corner: {@code |d| (2 tan(beta/2) - beta)} with the bend beta. It is what a cover made to
   * {@link #surface()} has to spare at each hip.
   *
   * @return the ease across each hip, in metres, 0 or more
   */
  public double roundingEase() {
    double bend = frame.measures().hipBend();
    return Math.abs(distance) * (2 * StrictMath.tan(bend / 2) - bend);
  }
}
