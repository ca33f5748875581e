package io.github.seamstead.geometry.pattern;

/** What becomes of an edge of a piece, and so how its allowance lies when the cover is up. */
public enum EdgeRole {
  /**
   * Joined good sides together, edge on edge, on the stitch line; both allowances stand up as one
   * fin on the inside.
   */
  FIN_SEAM("fin seam", false, true),
  /** Lies over the mating piece, on the weather side. */
  LAP_OVER("lap, over", false, true),
  /** Lies under the mating piece, on the inside. */
  LAP_UNDER("lap, under", false, true),
  /** Folded to the inside on the stitch line and fixed. */
  HEM("hem", true, false),
  /** Lies on the reinforced edge of the stock, which takes the place of a hem: no allowance. */
  REINFORCED("reinforced edge", false, false),
  /** Folded to the inside over the top ring or the edge of an opening. */
  TURN_IN("turn-in", true, false),
  /** Left as cut. */
  RAW("raw edge", false, false);

  private final String label;
  private final boolean folded;
  private final boolean joined;

  EdgeRole(String label, boolean folded, boolean joined) {
    this.label = label;
    this.folded = folded;
    this.joined = joined;
  }

  /**
   * Names the role in the trade's words.
   *
   * @return for example {@code fin seam}
   */
  public String label() {
    return label;
  }

  /**
   * Tells whether the allowance is folded back onto the piece, so that its ends must be cut as the
   * mirror image of the piece beside the fold.
   *
   * @return true for a hem and a turn-in
   */
  public boolean isFolded() {
    return folded;
  }

  /**
   * Tells whether the edge is joined to another piece.
   *
   * @return true for a fin seam and for both sides of a lap
   */
  public boolean isJoined() {
    return joined;
  }
}
