package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Turns;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where one copy of a piece lies: mirrored first if so, then turned about the origin, then moved.
 *
 * @param pieceId the piece
 * @param copy which of its copies, counted from 1
 * @param mirrored true if it is cut turned over ({@code x} to {@code -x})
 * @param rotation counter-clockwise, in radians
 * @param shift the move after the turn, in metres
 * @param onReinforcedEdge true if its hem edge lies on a reinforced edge of the stock
 */
public record Placement(
    String pieceId,
    int copy,
    boolean mirrored,
    double rotation,
    Vector2D shift,
    boolean onReinforcedEdge) {

  /**
   * Gives the piece in its place. Turns by whole quarters are exact.
   *
   * @param outline the piece's outline as drawn, in metres
   * @return the outline in the coordinates of the stock, in metres
   */
  public Outline place(Outline outline) {
    return Turns.placed(mirrored ? outline.mirrored() : outline, rotation, shift);
  }

  /**
   * Gives a point of the piece in its place.
   *
   * @param point in the coordinates of the piece as drawn, in metres
   * @return the point in the coordinates of the stock, in metres
   */
  public Vector2D place(Vector2D point) {
    double c = StrictMath.cos(rotation);
    double s = StrictMath.sin(rotation);
    double x = mirrored ? -point.getX() : point.getX();
    return Vector2D.of(c * x - s * point.getY(), s * x + c * point.getY()).add(shift);
  }
}
