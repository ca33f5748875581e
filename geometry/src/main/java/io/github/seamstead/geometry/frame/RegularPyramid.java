package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A regular right pyramid, whole or truncated parallel to its base.
 *
 * <p>Invariant: {@code 0 <= openingSide < baseSide}. The opening lies at the height {@code H (1 -
 * b/a)}. See the package page for axes and the numbering of hips and faces.
 *
 * <pre>{@code
 * RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(4, 2, 1.5);
 * frame.measures().coverArea(); // 7.211 in square metres
 * }</pre>
 *
 * @param sides the number of sides n, 3 to 64
 * @param baseSide the side of the base a, in metres, 0.000001 to 1000000
 * @param apexHeight the height of the whole pyramid H up to its (perhaps cut off) apex, in metres,
 *     0.000001 to 1000000
 * @param openingSide the side of the opening b, in metres; 0 for a whole pyramid; 0 or more and
 *     less than {@code baseSide}
 */
public record RegularPyramid(int sides, double baseSide, double apexHeight, double openingSide) {

  public RegularPyramid {
    RegularPolygon.requireSides(sides);
    Args.within(
        "base side", baseSide, RegularPolygon.LEAST_LENGTH, RegularPolygon.GREATEST_LENGTH, "m");
    Args.within(
        "apex height",
        apexHeight,
        RegularPolygon.LEAST_LENGTH,
        RegularPolygon.GREATEST_LENGTH,
        "m");
    Args.require(
        openingSide >= 0 && openingSide < baseSide,
        "opening side",
        Numbers.plain(openingSide) + " m",
        "must be 0 m for a whole pyramid or less than the base side of "
            + Numbers.plain(baseSide)
            + " m");
    Args.require(
        openingSide == 0 || openingSide >= RegularPolygon.LEAST_LENGTH,
        "opening side",
        Numbers.plain(openingSide) + " m",
        "must be 0 m or at least 0.000001 m");
  }

  /**
   * Makes a whole pyramid.
   *
   * @param sides 3 to 64
   * @param baseSide in metres, 0.000001 to 1000000
   * @param height in metres, 0.000001 to 1000000
   * @return the pyramid
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RegularPyramid ofBaseSideAndHeight(int sides, double baseSide, double height) {
    return new RegularPyramid(sides, baseSide, height, 0);
  }

  /**
   * Makes a truncated pyramid from its two rings and the height between them: {@code H = h a / (a -
   * b)}.
   *
   * @param sides 3 to 64
   * @param baseSide in metres
   * @param openingSide in metres, greater than 0 and less than {@code baseSide}
   * @param heightBetween the height of the opening above the base h, in metres, greater than 0
   * @return the pyramid
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RegularPyramid ofRings(
      int sides, double baseSide, double openingSide, double heightBetween) {
    Args.positive("height between the rings", heightBetween, "m");
    RegularPyramid.requireSmaller("opening side", openingSide, "base side", baseSide);
    return new RegularPyramid(
        sides, baseSide, heightBetween * baseSide / (baseSide - openingSide), openingSide);
  }

  /**
   * Makes a truncated pyramid from its two rings and the length of a hip between them: {@code h =
   * sqrt(L^2 - (R - Q)^2)} with the circumradii R of the base and Q of the opening.
   *
   * @param sides 3 to 64
   * @param baseSide in metres
   * @param openingSide in metres, greater than 0 and less than {@code baseSide}
   * @param hipLength the length of a hip from base corner to opening corner L, in metres, greater
   *     than the difference of the circumradii
   * @return the pyramid
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RegularPyramid ofRingsAndHip(
      int sides, double baseSide, double openingSide, double hipLength) {
    RegularPyramid.requireSmaller("opening side", openingSide, "base side", baseSide);
    double out =
        new RegularPolygon(sides, baseSide).circumradius()
            - new RegularPolygon(sides, openingSide).circumradius();
    Args.require(
        hipLength > out && Double.isFinite(hipLength),
        "hip length",
        Numbers.plain(hipLength) + " m",
        "must be more than the "
            + Numbers.significant(out, 6)
            + " m by which the base ring lies outside the opening ring");
    return ofRings(sides, baseSide, openingSide, Math.sqrt((hipLength - out) * (hipLength + out)));
  }

  private static void requireSmaller(String what, double small, String than, double large) {
    Args.positive(what, small, "m");
    Args.positive(than, large, "m");
    Args.require(
        small < large,
        what,
        Numbers.plain(small) + " m",
        "must be less than the " + than + " of " + Numbers.plain(large) + " m");
  }

  /**
   * Cuts the top off so that the opening has a given side.
   *
   * @param side in metres, greater than 0 and less than the base side
   * @return the truncated pyramid, cut anew if it was truncated before
   * @throws IllegalArgumentException if the opening would not be smaller than the base
   */
  public RegularPyramid withOpeningSide(double side) {
    requireSmaller("opening side", side, "base side", baseSide);
    return new RegularPyramid(sides, baseSide, apexHeight, side);
  }

  /**
   * Cuts the top off so that the opening's corners lie at a given radius.
   *
   * @param circumradius in metres, greater than 0 and less than the base's circumradius
   * @return the truncated pyramid, cut anew if it was truncated before
   * @throws IllegalArgumentException if the opening would not be smaller than the base
   */
  public RegularPyramid withOpeningCircumradius(double circumradius) {
    requireSmaller(
        "opening circumradius", circumradius, "base circumradius", base().circumradius());
    return withOpeningSide(RegularPolygon.ofCircumradius(sides, circumradius).side());
  }

  /**
   * Cuts the top off so that the opening's sides lie at a given radius.
   *
   * @param inradius in metres, greater than 0 and less than the base's inradius
   * @return the truncated pyramid, cut anew if it was truncated before
   * @throws IllegalArgumentException if the opening would not be smaller than the base
   */
  public RegularPyramid withOpeningInradius(double inradius) {
    requireSmaller("opening inradius", inradius, "base inradius", base().inradius());
    return withOpeningSide(RegularPolygon.ofInradius(sides, inradius).side());
  }

  /**
   * Cuts the top off at a height: {@code b = a (1 - z/H)}.
   *
   * @param height the height of the cut z above the base, in metres, greater than 0 and less than
   *     the apex height
   * @return the truncated pyramid, cut anew if it was truncated before
   * @throws IllegalArgumentException if the cut does not lie between base and apex
   */
  public RegularPyramid withOpeningAtHeight(double height) {
    requireSmaller("height of the cut", height, "apex height", apexHeight);
    return withOpeningSide(baseSide * ((apexHeight - height) / apexHeight));
  }

  /**
   * Gives the whole pyramid that this one was cut from.
   *
   * @return the pyramid up to its apex
   */
  public RegularPyramid whole() {
    return isTruncated() ? ofBaseSideAndHeight(sides, baseSide, apexHeight) : this;
  }

  /**
   * Tells whether there is an opening.
   *
   * @return true if the top is cut off
   */
  public boolean isTruncated() {
    return openingSide > 0;
  }

  /**
   * Gives the base's plan.
   *
   * @return the polygon of the base ring
   */
  public RegularPolygon base() {
    return new RegularPolygon(sides, baseSide);
  }

  /**
   * Gives the opening's plan.
   *
   * @return the polygon of the opening ring, empty for a whole pyramid
   */
  public Optional<RegularPolygon> opening() {
    return isTruncated() ? Optional.of(new RegularPolygon(sides, openingSide)) : Optional.empty();
  }

  /**
   * Gives the height of the frame as it stands: of the opening if there is one, else of the apex.
   *
   * @return the height above the base, in metres
   */
  public double frameHeight() {
    return isTruncated() ? apexHeight * ((baseSide - openingSide) / baseSide) : apexHeight;
  }

  /**
   * Gives the plan at a height: {@code a (1 - z/H)}.
   *
   * @param height above the base z, in metres, 0 or more and less than the apex height
   * @return the polygon in which the plane at that height meets the faces
   * @throws IllegalArgumentException if the height is outside its range
   */
  public RegularPolygon planAt(double height) {
    Args.require(
        height >= 0 && height < apexHeight,
        "height above the base",
        Numbers.plain(height) + " m",
        "must be from 0 m to less than the apex height of " + Numbers.plain(apexHeight) + " m");
    return new RegularPolygon(sides, baseSide * ((apexHeight - height) / apexHeight));
  }

  /**
   * Gives all measures of this pyramid.
   *
   * @return lengths, angles, areas, volume and centroids
   */
  public FrameMeasures measures() {
    return measures(Steps.none());
  }

  /**
   * Gives all measures with their worked steps; the last step is the cover area.
   *
   * @param steps where the steps are written
   * @return lengths, angles, areas, volume and centroids
   */
  @Calculation("geometry.frame.measures")
  public FrameMeasures measures(Steps steps) {
    return new MeasureCalculation(this, steps).run();
  }

  /**
   * Gives a face in its own plane as seen from outside: base left at the origin, base right on +x,
   * then top right and top left, or the apex. All faces are equal.
   *
   * @return the face, in metres
   */
  public Outline faceOutline() {
    double slant = StrictMath.hypot(base().inradius(), apexHeight);
    if (!isTruncated()) {
      return Outline.of(Vector2D.ZERO, Vector2D.of(baseSide, 0), Vector2D.of(baseSide / 2, slant));
    }
    double rise = slant * ((baseSide - openingSide) / baseSide);
    return Outline.of(
        Vector2D.ZERO,
        Vector2D.of(baseSide, 0),
        Vector2D.of((baseSide + openingSide) / 2, rise),
        Vector2D.of((baseSide - openingSide) / 2, rise));
  }

  /**
   * Gives the foot of a hip.
   *
   * @param hip the hip's number, 1 to n; other numbers count on round the ring
   * @return the base corner, in metres
   */
  public Vector3D baseCorner(int hip) {
    return onRing(base().circumradius(), hip, 0);
  }

  /**
   * Gives the top of a hip.
   *
   * @param hip the hip's number, 1 to n; other numbers count on round the ring
   * @return the opening corner, or the apex of a whole pyramid, in metres
   */
  public Vector3D topCorner(int hip) {
    return opening()
        .map(ring -> onRing(ring.circumradius(), hip, frameHeight()))
        .orElseGet(this::apex);
  }

  /**
   * Gives the apex, which is cut off if the pyramid is truncated.
   *
   * @return the apex, in metres
   */
  public Vector3D apex() {
    return Vector3D.of(0, 0, apexHeight);
  }

  /**
   * Gives a face's corners in space in the order of {@link #faceOutline()}.
   *
   * @param face the face's number, 1 to n; other numbers count on round the ring
   * @return three corners, or four of a truncated pyramid, in metres
   */
  public List<Vector3D> faceCorners(int face) {
    return isTruncated()
        ? List.of(baseCorner(face - 1), baseCorner(face), topCorner(face), topCorner(face - 1))
        : List.of(baseCorner(face - 1), baseCorner(face), apex());
  }

  /**
   * Gives a face's outward normal of length 1: {@code (cos(phi) sin(theta), sin(phi) sin(theta),
   * cos(theta))} with the azimuth {@code phi = (2 i - 1) pi/n} and the face slope theta.
   *
   * @param face the face's number, 1 to n; other numbers count on round the ring
   * @return the normal, without unit
   */
  public Vector3D.Unit faceNormal(int face) {
    double inradius = base().inradius();
    double azimuth = (2 * Math.floorMod(face, sides) - 1) * Math.PI / sides;
    return Vector3D.Unit.from(
        apexHeight * StrictMath.cos(azimuth), apexHeight * StrictMath.sin(azimuth), inradius);
  }

  private Vector3D onRing(double radius, int hip, double height) {
    double azimuth = 2 * Math.PI * Math.floorMod(hip, sides) / sides;
    return Vector3D.of(radius * StrictMath.cos(azimuth), radius * StrictMath.sin(azimuth), height);
  }
}
