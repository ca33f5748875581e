package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ground that the floor covers: a simple polygon less what stands in it (hearth, posts).
 *
 * <p>Edge {@code i} runs from corner {@code i} to corner {@code i + 1}, counter-clockwise as seen
 * from above. For a regular frame edge 0 lies under face 1 and runs from its base left to its base
 * right, so edges count as faces do.
 *
 * @param corners the corners, counter-clockwise, in metres, closed implicitly; at least three
 *     corners in either order
 * @param gaps the outlines left out, each inside the polygon and apart from the others
 */
public record Footprint(List<PlanPoint> corners, List<List<PlanPoint>> gaps) {

  private static final Source GEOMETRY = Source.derived("plane geometry of the regular polygon");
  private static final Source SHOELACE = Source.derived("shoelace formula for a plane polygon");
  private static final int ROUND_CORNERS = 48;

  /** Most sides of a regular plan, as of the frame over it. */
  public static final int MOST_SIDES = 64;

  /** Sectors of a round room, for which its corners are set so that one lies at the door. */
  private static final int ROUND_SECTORS = 16;

  public Footprint {
    corners = Polygons.checked("footprint", corners);
    List<List<PlanPoint>> checked = new ArrayList<>();
    for (List<PlanPoint> gap : gaps) {
      String name = "gap " + (checked.size() + 1);
      List<PlanPoint> outline = Polygons.checked(name, gap);
      Args.agree(
          Polygons.holds(corners, outline),
          name + ": reaches the edge of the footprint",
          "must lie inside it");
      for (List<PlanPoint> other : checked) {
        Args.agree(
            Polygons.apart(outline, other), name + ": overlaps another gap", "must stand apart");
      }
      checked.add(outline);
    }
    gaps = List.copyOf(checked);
  }

  /**
   * Makes a footprint from corners, such as the base corners of the frame as built.
   *
   * @param corners at least three, in either order, in metres
   * @return the footprint without gaps
   * @throws IllegalArgumentException as the constructor does
   */
  public static Footprint of(List<PlanPoint> corners) {
    return new Footprint(corners, List.of());
  }

  /**
   * Tells which way corners run, since a footprint turns clockwise ones round.
   *
   * @param corners at least three
   * @return true for clockwise as seen from above
   */
  public static boolean runsClockwise(List<PlanPoint> corners) {
    return Polygons.signedArea(corners) < 0;
  }

  /**
   * Makes a footprint from coordinates.
   *
   * @param x the corners' x, in metres
   * @param y the corners' y, in metres, as many
   * @return the footprint without gaps
   * @throws IllegalArgumentException if the counts differ or as the constructor does
   */
  public static Footprint of(double[] x, double[] y) {
    Args.require(
        x.length == y.length,
        "footprint",
        x.length + " x and " + y.length + " y",
        "must be as many");
    List<PlanPoint> corners = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      corners.add(new PlanPoint(x[i], y[i]));
    }
    return of(corners);
  }

  /**
   * Makes the plan of a regular frame, centred on the origin, edge 0 nearest the reader.
   *
   * @param sides the number of faces, 3 to 64
   * @param side the base side, in metres, greater than 0
   * @return the footprint without gaps
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Footprint regular(int sides, double side) {
    Args.within("sides", sides, 3, MOST_SIDES);
    Args.positive("base side", side, "m");
    double radius = side / (2 * StrictMath.sin(Math.PI / sides));
    List<PlanPoint> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = -Math.PI / 2 + (2 * i - 1) * Math.PI / sides;
      corners.add(new PlanPoint(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    return of(corners);
  }

  /**
   * Makes the plan of a round room, centred on the origin, as a regular 48-gon of the circle's
   * area. Its corners are set so that the first sixteenth of the edge lies nearest the reader, in
   * the middle.
   *
   * @param diameter in metres, greater than 0
   * @return the footprint without gaps
   * @throws IllegalArgumentException if the diameter is not positive
   */
  public static Footprint round(double diameter) {
    Args.positive("diameter of the room", diameter, "m");
    double start = -Math.PI / 2 - Math.PI / ROUND_SECTORS;
    return of(circle(new PlanPoint(0, 0), diameter, start));
  }

  /** A regular 48-gon of the circle's area. */
  private static List<PlanPoint> circle(PlanPoint centre, double diameter, double start) {
    double slice = 2 * Math.PI / ROUND_CORNERS;
    double radius = diameter / 2 * Math.sqrt(slice / StrictMath.sin(slice));
    List<PlanPoint> corners = new ArrayList<>();
    for (int i = 0; i < ROUND_CORNERS; i++) {
      double angle = start + i * slice;
      corners.add(centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    return corners;
  }

  /**
   * Computes the area of a regular polygon from the frame's numbers.
   *
   * @param sides the number of faces, 3 to 64
   * @param side the base side, in metres, greater than 0
   * @param steps receives r = a / (2 tan(π/n)) and A = n a r / 2
   * @return the area, in square metres
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("materials.floor.regular-area")
  public static double regularArea(int sides, double side, Steps steps) {
    Args.within("sides", sides, 3, MOST_SIDES);
    Args.positive("base side", side, "m");
    double inradius =
        steps
            .step("r", "inradius: centre to the middle of a side")
            .formula("a / (2 * tan(pi / n))")
            .with("a", side, "m")
            .with("n", sides, "")
            .from(GEOMETRY)
            .gives(side / (2 * StrictMath.tan(Math.PI / sides)), "m");
    return steps
        .step("A", "area of the floor's outline")
        .formula("n * a * r / 2")
        .with("n", sides, "")
        .with("a", side, "m")
        .with("r", inradius, "m")
        .from(GEOMETRY)
        .gives(sides * side * inradius / 2, "m2");
  }

  /**
   * Leaves an outline out of the floor.
   *
   * @param gap the outline of a hearth or a pad, in metres, wholly inside
   * @return a footprint with one gap more
   * @throws IllegalArgumentException as the constructor does
   */
  public Footprint without(List<PlanPoint> gap) {
    List<List<PlanPoint>> more = new ArrayList<>(gaps);
    more.add(gap);
    return new Footprint(corners, more);
  }

  /**
   * Leaves a round post or hearth out of the floor, as a regular 48-gon of the circle's area.
   *
   * @param centre the middle of the post
   * @param diameter in metres, greater than 0
   * @return a footprint with one gap more
   * @throws IllegalArgumentException if the diameter is not positive or the post is not inside
   */
  public Footprint withoutRound(PlanPoint centre, double diameter) {
    Args.positive("post diameter", diameter, "m");
    return without(circle(centre, diameter, 0));
  }

  /**
   * Moves the outline inwards on all sides, as an edge rail or a row of stones does. Gaps stay, and
   * edges keep their numbers unless a convex outline loses one.
   *
   * @param distance in metres, 0 or more
   * @return the smaller footprint
   * @throws IllegalArgumentException if nothing is left, an outline that is not convex loses an
   *     edge, or a gap no longer lies inside
   */
  public Footprint inset(double distance) {
    Args.notNegative("inset", distance, "m");
    return distance == 0
        ? this
        : new Footprint(Polygons.inset("footprint", corners, distance), gaps);
  }

  /**
   * Gives the area inside the outline, gaps included.
   *
   * @return the area, in square metres
   */
  public double grossArea() {
    return Polygons.signedArea(corners);
  }

  /**
   * Gives the area to be laid.
   *
   * @return the area without the gaps, in square metres
   */
  public double area() {
    return area(Steps.none());
  }

  /**
   * Computes the area to be laid.
   *
   * @param steps receives the outline's area by the shoelace formula, each gap, and the difference
   * @return the area without the gaps, in square metres
   */
  @Calculation("materials.floor.area")
  public double area(Steps steps) {
    double gross =
        steps
            .step("A_out", "area inside the outline")
            .from(SHOELACE)
            .note(corners.size() + " corners")
            .gives(grossArea(), "m2");
    double left = 0;
    for (List<PlanPoint> gap : gaps) {
      left += Polygons.signedArea(gap);
    }
    steps
        .step("A_gap", "hearth and posts together")
        .from(SHOELACE)
        .note(gaps.size() + " left out")
        .gives(left, "m2");
    return steps
        .step("A", "area to be laid")
        .formula("A_out - A_gap")
        .with("A_out", gross, "m2")
        .with("A_gap", left, "m2")
        .gives(gross - left, "m2");
  }

  /**
   * Gives the length of the outline, as for an edge rail.
   *
   * @return the perimeter, in metres
   */
  public double perimeter() {
    return Polygons.perimeter(corners);
  }

  /**
   * Finds a place for the centre post from which all of the edge can be seen, so that every sector
   * can be screeded from it: the middle of the area where that sees all, else the middle of the
   * part that does. Costs O(n²) for n corners.
   *
   * @return the place; empty where no point sees the whole edge, as in a horseshoe
   */
  public Optional<PlanPoint> screedCentre() {
    PlanPoint middle = centroid();
    boolean sees = true;
    for (int i = 0; i < corners.size(); i++) {
      PlanPoint next = corners.get((i + 1) % corners.size());
      sees &= Polygons.cross(middle, corners.get(i), next) > 0;
    }
    return sees ? Optional.of(middle) : Polygons.kernelCentre(corners);
  }

  /**
   * Gives the middle of the outline.
   *
   * @return the centre of area, gaps ignored
   */
  public PlanPoint centroid() {
    return Polygons.centroid(corners);
  }

  @Override
  public String toString() {
    return "footprint of " + corners.size() + " corners, " + Numbers.significant(area(), 4) + " m2";
  }
}
