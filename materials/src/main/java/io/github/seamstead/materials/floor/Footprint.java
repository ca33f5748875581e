package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The ground that the floor covers: a simple polygon less what stands in it (hearth, posts).
 *
 * <p>Edge {@code i} runs from corner {@code i} to corner {@code i + 1}, counter-clockwise as seen
 * from above. For a regular frame edge 0 lies under face 1 and runs from its base left to its base
 * right, so edges count as faces do.
 *
 * @param outline the edge of the floor, in metres
 * @param gaps the outlines left out, each inside the edge and apart from the others
 */
public record Footprint(Outline outline, List<Outline> gaps) {

  private static final Source GEOMETRY = Source.derived("plane geometry of the regular polygon");
  private static final Source SHOELACE = Source.derived("shoelace formula for a plane polygon");
  private static final int ROUND_CORNERS = 48;

  /** A corner closer than this to its neighbour is the same corner: a tenth of a millimetre. */
  private static final double SAME = 1e-4;

  /** Most sides of a regular plan, as of the frame over it. */
  public static final int MOST_SIDES = 64;

  /** Sectors of a round room, for which its corners are set so that one lies at the door. */
  private static final int ROUND_SECTORS = 16;

  public Footprint {
    gaps = List.copyOf(gaps);
    for (int i = 0; i < gaps.size(); i++) {
      Outline gap = gaps.get(i);
      String name = "gap " + (i + 1);
      Args.agree(
          outline.contains(gap),
          name + ": reaches the edge of the footprint",
          "must lie inside it");
      Args.agree(
          gaps.subList(0, i).stream().noneMatch(gap::meets),
          name + ": overlaps another gap",
          "must stand apart");
    }
  }

  /**
   * Makes a footprint from corners, such as the base corners of the frame as built.
   *
   * @param corners at least three, in either order, in metres
   * @return the footprint without gaps
   * @throws IllegalArgumentException as the constructor does
   */
  public static Footprint of(List<Vector2D> corners) {
    return new Footprint(outline("footprint", corners), List.of());
  }

  /** Makes an outline of measured corners, of which two that stand closer than a hair are one. */
  private static Outline outline(String name, List<Vector2D> corners) {
    Outline outline = Outline.named(name, corners);
    for (int i = 0; i < outline.size(); i++) {
      Args.require(
          outline.edgeLength(i) > SAME,
          name + ": corners " + (i + 1) + " and " + ((i + 1) % outline.size() + 1) + " coincide");
    }
    return outline;
  }

  /**
   * Tells which way corners run, since a footprint turns clockwise ones round.
   *
   * @param corners at least three
   * @return true for clockwise as seen from above
   */
  public static boolean runsClockwise(List<Vector2D> corners) {
    return Outline.signedArea(corners) < 0;
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
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      corners.add(Vector2D.of(x[i], y[i]));
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
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = -Math.PI / 2 + (2 * i - 1) * Math.PI / sides;
      corners.add(Vector2D.of(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
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
    return of(circle(Vector2D.ZERO, diameter, start));
  }

  /** A regular 48-gon of the circle's area. */
  private static List<Vector2D> circle(Vector2D centre, double diameter, double start) {
    double slice = 2 * Math.PI / ROUND_CORNERS;
    double radius = diameter / 2 * Math.sqrt(slice / StrictMath.sin(slice));
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < ROUND_CORNERS; i++) {
      double angle = start + i * slice;
      corners.add(
          centre.add(Vector2D.of(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle))));
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
  public Footprint without(List<Vector2D> gap) {
    List<Outline> more = new ArrayList<>(gaps);
    more.add(outline("gap " + (gaps.size() + 1), gap));
    return new Footprint(outline, more);
  }

  /**
   * Leaves a round post or hearth out of the floor, as a regular 48-gon of the circle's area.
   *
   * @param centre the middle of the post
   * @param diameter in metres, greater than 0
   * @return a footprint with one gap more
   * @throws IllegalArgumentException if the diameter is not positive or the post is not inside
   */
  public Footprint withoutRound(Vector2D centre, double diameter) {
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
    return distance == 0 ? this : new Footprint(outline.inset("footprint", distance), gaps);
  }

  /**
   * Gives the area inside the outline, gaps included.
   *
   * @return the area, in square metres
   */
  public double grossArea() {
    return outline.area();
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
            .note(outline.size() + " corners")
            .gives(grossArea(), "m2");
    double left = 0;
    for (Outline gap : gaps) {
      left += gap.area();
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
    return outline.perimeter();
  }

  /**
   * Finds a place for the centre post from which all of the edge can be seen, so that every sector
   * can be screeded from it: the middle of the area where that sees all, else the middle of the
   * part that does. Costs O(n²) for n corners.
   *
   * @return the place; empty where no point sees the whole edge, as in a horseshoe
   */
  public Optional<Vector2D> screedCentre() {
    Vector2D middle = centroid();
    boolean sees = true;
    for (int i = 0; i < outline.size(); i++) {
      sees &= seesEdge(middle, outline.vertex(i), outline.vertex(i + 1));
    }
    return sees ? Optional.of(middle) : outline.kernelCentre();
  }

  /** Tells whether the inner side of an edge, run counter-clockwise, can be seen from a point. */
  static boolean seesEdge(Vector2D from, Vector2D start, Vector2D end) {
    return start.subtract(from).signedArea(end.subtract(from)) > 0;
  }

  /**
   * Gives the corners of the edge.
   *
   * @return counter-clockwise, in metres
   */
  public List<Vector2D> corners() {
    return outline.vertices();
  }

  /**
   * Gives the middle of the outline.
   *
   * @return the centre of area, gaps ignored
   */
  public Vector2D centroid() {
    return outline.centroid();
  }

  @Override
  public String toString() {
    return "footprint of " + outline.size() + " corners, " + Numbers.significant(area(), 4) + " m2";
  }
}
