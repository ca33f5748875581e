package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A cap in the shape of a right circular cone, whole or with a round hole at the top, and its
 * development into flat sectors.
 *
 * @param radius of the lower rim, in metres; greater than 0
 * @param height from the rim's plane to the tip of the whole cone, in metres; greater than 0
 * @param holeRadius of the hole at the top, level, in metres; 0 for a whole cone; 0 or more and
 *     less than the radius
 */
public record ConeCap(double radius, double height, double holeRadius) {

  private static final Source CONE =
      Source.found("The Math Forum", "Building a cone, formulas", "", "s and T");
  private static final Source OVERLAP =
      Source.commonPractice("the cap's rim rests on the hips, below the opening by the overlap");

  /** The polygon that stands for an arc keeps within this of it, in metres. */
  private static final double SAGITTA = 0.2e-3;

  public ConeCap {
    Args.positive("cone cap radius", radius, "m");
    Args.positive("cone cap height", height, "m");
    Args.require(
        holeRadius >= 0 && holeRadius < radius,
        "cone cap hole",
        Numbers.plain(holeRadius) + " m",
        "must be 0 m or more and less than the radius of " + Numbers.plain(radius) + " m");
  }

  /**
   * Makes a whole cone.
   *
   * @param radius of the rim, in metres, greater than 0
   * @param height in metres, greater than 0
   * @return the cap without a hole
   * @throws IllegalArgumentException if a measure is not positive
   */
  public static ConeCap of(double radius, double height) {
    return new ConeCap(radius, height, 0);
  }

  /**
   * Makes the cone that rests on the hips round the opening: as steep as the hips, its rim further
   * down them by the overlap. {@code R = ρ + o cos β, H = R tan β}.
   *
   * @param openingCircumradius ρ, opening centre to corner, level, in metres, greater than 0
   * @param hipSlope β of the hips from the level, in radians, more than 0 and less than π/2
   * @param overlap o, from the opening's corner down the hip, in metres, 0 or more
   * @return the cap without a hole
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static ConeCap over(double openingCircumradius, double hipSlope, double overlap) {
    return over(openingCircumradius, hipSlope, overlap, Steps.none());
  }

  /**
   * Makes the cone that rests on the hips, with worked steps; the last one is its height.
   *
   * @param openingCircumradius ρ, opening centre to corner, level, in metres, greater than 0
   * @param hipSlope β of the hips from the level, in radians, more than 0 and less than π/2
   * @param overlap o, from the opening's corner down the hip, in metres, 0 or more
   * @param steps takes the worked steps
   * @return the cap without a hole
   * @throws IllegalArgumentException if a measure is out of range
   */
  @Calculation("geometry.pattern.cap")
  public static ConeCap over(
      double openingCircumradius, double hipSlope, double overlap, Steps steps) {
    Args.positive("opening circumradius", openingCircumradius, "m");
    Args.between("hip slope", hipSlope, 0, Math.PI / 2, "rad");
    Args.notNegative("cap overlap", overlap, "m");
    double rim =
        steps
            .step("R", "radius of the cap's rim")
            .formula("rho + o * cos(beta)")
            .with("rho", openingCircumradius, "m")
            .with("o", overlap, "m")
            .with("beta", hipSlope, "rad")
            .from(OVERLAP)
            .gives(openingCircumradius + overlap * StrictMath.cos(hipSlope), "m");
    double rise =
        steps
            .step("H", "height of the cap")
            .formula("R * tan(beta)")
            .with("R", rim, "m")
            .with("beta", hipSlope, "rad")
            .gives(rim * StrictMath.tan(hipSlope), "m");
    return of(rim, rise);
  }

  /**
   * Cuts a hole for a vent or a pole.
   *
   * @param holeRadius level radius of the hole, in metres, 0 or more, less than the rim's
   * @return the cap with the hole
   * @throws IllegalArgumentException if the hole does not fit
   */
  public ConeCap withHole(double holeRadius) {
    return new ConeCap(radius, height, holeRadius);
  }

  /**
   * Gives the slant height {@code s = sqrt(R² + H²)}, the radius of the development.
   *
   * @return rim to tip, in metres
   */
  public double slant() {
    return Math.sqrt(radius * radius + height * height);
  }

  /**
   * Gives the sector angle without worked steps; see {@link #sectorAngle(Steps)}.
   *
   * @return the angle of the whole development, in radians
   */
  public double sectorAngle() {
    return sectorAngle(Steps.none());
  }

  /**
   * Gives the angle of the sector into which the cone unrolls: {@code T = 2 π R / s} with {@code s
   * = sqrt(R² + H²)}, so that the sector's arc is as long as the rim.
   *
   * @param steps takes the worked steps
   * @return the angle of the whole development, in radians, less than 2π
   */
  @Calculation("geometry.pattern.cone")
  public double sectorAngle(Steps steps) {
    double s =
        steps
            .step("s", "slant height")
            .formula("sqrt(R^2 + H^2)")
            .with("R", radius, "m")
            .with("H", height, "m")
            .from(CONE)
            .gives(slant(), "m");
    return steps
        .step("T", "sector angle")
        .formula("2 * pi * R / s")
        .with("R", radius, "m")
        .with("s", s, "m")
        .from(CONE)
        .gives(2 * Math.PI * radius / s, "rad");
  }

  /**
   * Gives the area of the cone's surface without the hole: {@code π (R² − r²) s / R}.
   *
   * @return in square metres
   */
  public double area() {
    return Math.PI * (radius * radius - holeRadius * holeRadius) * slant() / radius;
  }

  /**
   * Gives what can hurt someone here.
   *
   * @return a caution for a cap with a hole, which may be used for a flue; else empty
   */
  public List<Caution> cautions() {
    if (holeRadius == 0) {
      return List.of();
    }
    return List.of(
        Caution.of(
            Hazard.FIRE,
            "A hole in a cap is sized for a vent or a pole. Coated cloth softens and burns near a"
                + " hot flue, and a tight cover holds carbon monoxide.",
            "Lead no flue through cloth without a listed insulated collar at the maker's clearance,"
                + " and leave permanent vents high and low.",
            Source.commonPractice("clearances of a flue are those its maker lists")));
  }

  /**
   * Draws one of several equal sectors, tip up. Its right edge laps over the left edge of the next
   * one. The arcs are drawn as polygons that keep within 0.2 mm of them.
   *
   * @param id the piece's id, not blank
   * @param parts how many sectors make the cone; each may be half a circle at most
   * @param lap cloth beyond the left edge, under the next sector, in metres, 0 or more
   * @param rim allowance along the lower arc
   * @param hole allowance round the hole; without effect on a whole cone
   * @return the piece, its count equal to {@code parts}; its first edges follow the rim
   * @throws IllegalArgumentException if a sector is more than half a circle or an allowance does
   *     not fit
   */
  public PatternPiece piece(
      String id, int parts, double lap, EdgeAllowance rim, EdgeAllowance hole) {
    Args.within("cone cap parts", parts, 1, 360);
    double angle = sectorAngle() / parts;
    Args.require(
        angle <= Math.PI,
        "cone cap " + id,
        parts + " part(s) of " + Numbers.fixed(Math.toDegrees(angle), 1) + "°",
        "must be 180° or less each, so "
            + (int) Math.ceil(sectorAngle() / Math.PI)
            + " or more parts");
    double s = slant();
    List<Vector2D> corners = new ArrayList<>(arc(s, angle));
    List<EdgeAllowance> allowances = new ArrayList<>(Collections.nCopies(corners.size() - 1, rim));
    allowances.add(EdgeAllowance.lapOver(0));
    if (holeRadius == 0) {
      corners.add(Vector2D.of(0, s));
    } else {
      List<Vector2D> inner = new ArrayList<>(arc(s * holeRadius / radius, angle));
      Collections.reverse(inner);
      corners.addAll(inner);
      allowances.addAll(Collections.nCopies(inner.size() - 1, hole));
    }
    allowances.add(EdgeAllowance.lapUnder(lap));
    return PieceMaker.free(
        id, id, PieceKind.CAP, parts, new Outline(corners), allowances, List.of());
  }

  /** Points on an arc about the tip, from left to right. */
  private List<Vector2D> arc(double arcRadius, double angle) {
    double step = 2 * StrictMath.acos(Math.max(0, 1 - SAGITTA / arcRadius));
    int edges = Math.max(2, (int) Math.ceil(angle / step));
    List<Vector2D> points = new ArrayList<>(edges + 1);
    for (int i = 0; i <= edges; i++) {
      double a = -angle / 2 + angle * i / edges;
      points.add(
          Vector2D.of(arcRadius * StrictMath.sin(a), slant() - arcRadius * StrictMath.cos(a)));
    }
    return points;
  }
}
