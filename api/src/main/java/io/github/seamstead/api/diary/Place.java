package io.github.seamstead.api.diary;

import io.github.seamstead.geometry.layout.LaidPiece;
import io.github.seamstead.geometry.layout.Placement;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where a piece lies on the cloth: turned over first if so, then turned about its origin, then
 * moved.
 *
 * @param stock the sheet or roll
 * @param copy which of several alike, counted from 1
 * @param mirrored whether it is cut with the plain side up
 * @param rotation counter-clockwise, in radians
 * @param shift the move after the turn, in metres
 */
public record Place(String stock, int copy, boolean mirrored, double rotation, Vector2D shift) {

  /**
   * Takes the place of a piece in a layout.
   *
   * @param laid the piece in the layout
   * @return its place
   */
  public static Place of(LaidPiece laid) {
    Placement p = laid.placement();
    return new Place(laid.stockId(), laid.copy(), p.mirrored(), p.rotation(), p.shift());
  }

  /**
   * Puts a piece there.
   *
   * @param shape the shape's name in the layout
   * @param number which copy of the shape, counted from 1
   * @return the piece in the layout
   */
  public LaidPiece laid(String shape, int number) {
    return new LaidPiece(
        stock, copy, new Placement(shape, number, mirrored, rotation, shift, false));
  }
}
