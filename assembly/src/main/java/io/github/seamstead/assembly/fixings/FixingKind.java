package io.github.seamstead.assembly.fixings;

/** What holds a seam. */
public enum FixingKind {
  /** Staples, clinched or driven. */
  STAPLES("staples", 1),
  /** Sewn stitches: a stitch is the step from hole to hole. */
  STITCHES("stitches", 0),
  /** Screws with washers. */
  SCREWS("screws", 1);

  private final String label;
  private final int atTheEnd;

  FixingKind(String label, int atTheEnd) {
    this.label = label;
    this.atTheEnd = atTheEnd;
  }

  /**
   * Names the fixings as a shopping list does.
   *
   * @return a plural, such as {@code staples}
   */
  public String label() {
    return label;
  }

  int atTheEnd() {
    return atTheEnd;
  }
}
