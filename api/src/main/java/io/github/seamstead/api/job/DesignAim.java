package io.github.seamstead.api.job;

/** What decides among the mixes within a band of clay. */
public enum DesignAim {
  /** The grading nearest a power curve. */
  GRADING("grading"),
  /** The least price. */
  CHEAPEST("cheapest"),
  /** The middle of the band. */
  MIDDLE("middle");

  private final String word;

  DesignAim(String word) {
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
