package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * A piece with the sheet or roll on which it lies.
 *
 * @param stockId the stock item; not blank
 * @param copy which of its copies, counted from 1; 1 or more
 * @param placement the piece and where it lies
 */
public record LaidPiece(String stockId, int copy, Placement placement) {

  public LaidPiece {
    Args.notBlank("stock id", stockId);
    Args.within("copy of the stock", copy, 1, Integer.MAX_VALUE);
  }
}
