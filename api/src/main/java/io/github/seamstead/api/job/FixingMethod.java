package io.github.seamstead.api.job;

/** What holds a seam. */
public enum FixingMethod {
  /** Clinched staples from a plier stapler. */
  STAPLES("staples"),
  /** Sewing. */
  STITCHES("stitches"),
  /** Screws and washers. */
  SCREWS("screws");

  private final String word;

  FixingMethod(String word) {
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
