package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * A piece with the sheet or roll on which it lies.
 *
 * @param stockId the stock item
 * @param copy which of its copies, counted from 1
 * @param placement the piece and where it lies
 */
public record LaidPiece(String stockId, int copy, Placement placement) {

  /**
   * Checks the name and the number.
   *
   * @param stockId not blank
   * @param copy 1 or more
   * @param placement the piece and where it lies
   * @throws IllegalArgumentException if one is out of range
   */
  public LaidPiece {
    Args.notBlank("stock id", stockId);
    Args.within("copy of the stock", copy, 1, Integer.MAX_VALUE);
  }
}
