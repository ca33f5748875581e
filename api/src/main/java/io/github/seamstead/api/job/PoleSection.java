package io.github.seamstead.api.job;

/** The section of a frame member. */
public enum PoleSection {
  /** A round pipe or pole. */
  ROUND("round"),
  /** A sawn or rolled rectangle. */
  RECTANGULAR("rectangular");

  private final String word;

  PoleSection(String word) {
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
