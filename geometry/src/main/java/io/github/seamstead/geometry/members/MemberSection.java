package io.github.seamstead.geometry.members;

import io.github.seamstead.shared.check.Args;

/**
 * The cross-section of a pole or rail.
 *
 * @param shape round or rectangular
 * @param width of a timber: of a hip, level across it; of a ring, radially (level, or in the face
 *     where the ring lies in the faces); of a pipe, its outside diameter; in metres; greater than 0
 * @param depth square to the width and to the length; of a pipe, its outside diameter; in metres;
 *     greater than 0
 */
public record MemberSection(Shape shape, double width, double depth) {

  /** Shapes of section. */
  public enum Shape {
    /** A round pipe or pole. */
    PIPE,
    /** A rectangular timber. */
    TIMBER
  }

  public MemberSection {
    Args.positive("section width", width, "m");
    Args.positive("section depth", depth, "m");
    Args.require(
        shape != Shape.PIPE || width == depth, "section: a pipe's width and depth must be equal");
  }

  /**
   * Makes a pipe or a round pole.
   *
   * @param outsideDiameter in metres, greater than 0
   * @return the section
   * @throws IllegalArgumentException if the diameter is not positive
   */
  public static MemberSection pipe(double outsideDiameter) {
    return new MemberSection(Shape.PIPE, outsideDiameter, outsideDiameter);
  }

  /**
   * Makes a rectangular timber.
   *
   * @param width in metres, greater than 0
   * @param depth in metres, greater than 0
   * @return the section
   * @throws IllegalArgumentException if a size is not positive
   */
  public static MemberSection timber(double width, double depth) {
    return new MemberSection(Shape.TIMBER, width, depth);
  }

  /**
   * Tells how a member ends: a pipe with a set-back is cut square for a fitting, a bolt plate or a
   * flattened end; a timber, or a pipe that runs up to the node, is cut to the plane of the joint.
   *
   * @param setBack from the node to the end, in metres, 0 or more
   * @return true if the end is cut square
   */
  boolean endsSquareAt(double setBack) {
    return shape == Shape.PIPE && setBack > 0;
  }
}
