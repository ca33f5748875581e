package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * Copies of a piece that found no place.
 *
 * @param pieceId the piece
 * @param count how many copies, 1 or more
 * @param reason why
 * @param spliceHelps true if the piece is larger than every stock item but the stock left over has
 *     at least its area, so that it could be joined from parts
 * @param message the same for a person to read, with sizes
 */
public record Shortfall(
    String pieceId, int count, Reason reason, boolean spliceHelps, String message) {

  /** Why copies found no place. */
  public enum Reason {
    /** No item could hold the piece even when empty, in any turn allowed. */
    LARGER_THAN_STOCK,
    /** The piece must have its hem on a reinforced edge and no item offers one that long. */
    NO_REINFORCED_EDGE,
    /** The items could hold the piece, but are full. */
    STOCK_USED_UP
  }

  /**
   * Checks the words.
   *
   * @param pieceId not blank
   * @param count 1 or more
   * @param reason why
   * @param spliceHelps whether joining from parts is possible
   * @param message not blank
   * @throws IllegalArgumentException if one is out of range
   */
  public Shortfall {
    Args.notBlank("piece id", pieceId);
    Args.within("count", count, 1, Integer.MAX_VALUE);
    Args.notBlank("message", message);
  }
}
