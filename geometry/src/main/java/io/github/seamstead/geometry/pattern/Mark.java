package io.github.seamstead.geometry.pattern;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A text on a piece.
 *
 * @param kind what it says
 * @param text the text, not empty
 * @param at the middle of the text, in metres in the piece's coordinates
 * @param rotation counter-clockwise from the x axis, in radians, −π/2 to π/2 so that it reads
 *     upright
 * @param height of its capitals, in metres
 */
public record Mark(Kind kind, String text, Vector2D at, double rotation, double height) {

  /** What a mark says. */
  public enum Kind {
    /** The panel's number or the piece's name. */
    PIECE,
    /** Which side of the cloth is seen. */
    SIDE,
    /** An edge's letter. */
    EDGE,
    /** A joint's name. */
    JOINT,
    /** A role of an edge in words, such as which way a lap goes. */
    ROLE
  }
}
