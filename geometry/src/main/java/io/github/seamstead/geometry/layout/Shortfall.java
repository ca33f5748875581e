package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;

/**
 * Copies of a piece that found no place.
 *
 * @param pieceId the piece; not blank
 * @param count how many copies, 1 or more
 * @param reason why
 * @param spliceHelps true if the piece is larger than every stock item, its margin counted, but the
 *     stock left over has at least its area, so that it could be joined from parts
 * @param message the same for a person to read, with sizes; not blank
 */
public record Shortfall(
    String pieceId, int count, Reason reason, boolean spliceHelps, String message) {

  /** Why copies found no place. */
  public enum Reason {
    /** No item could hold the piece even without flaws or margin, in any turn allowed. */
    LARGER_THAN_STOCK,
    /** An empty item could hold the piece, but not with the margin asked for. */
    MARGIN_TOO_LARGE,
    /** An empty item could hold the piece, but for the flaws in it. */
    FLAWS_IN_THE_WAY,
    /** The piece must have its hem on a reinforced edge and no item offers one that long. */
    NO_REINFORCED_EDGE,
    /** An empty item could hold the piece, but no room was found among the others. */
    STOCK_USED_UP,
    /** The search was stopped before it had looked for room to the end: no statement is made. */
    SEARCH_STOPPED
  }

  public Shortfall {
    Args.notBlank("piece id", pieceId);
    Args.within("count", count, 1, Integer.MAX_VALUE);
    Args.notBlank("message", message);
  }
}
