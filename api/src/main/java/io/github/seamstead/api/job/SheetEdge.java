package io.github.seamstead.api.job;

/** An edge of a sheet as it lies with its good side up. */
public enum SheetEdge {
  /** The edge along x at y = 0. */
  BOTTOM("bottom"),
  /** The edge at the greatest x. */
  RIGHT("right"),
  /** The edge at the greatest y. */
  TOP("top"),
  /** The edge along y at x = 0. */
  LEFT("left");

  private final String word;

  SheetEdge(String word) {
    this.word = word;
  }

  /**
   * Gives the word in the document.
   *
   * @return the word
   */
  public String word() {
    return word;
  }
}
