package io.github.seamstead.api.job;

/** Accuracy class of a tape measure. */
public enum TapeClass {
  /** Class I. */
  I("I"),
  /** Class II. */
  II("II"),
  /** Class III. */
  III("III");

  private final String word;

  TapeClass(String word) {
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
