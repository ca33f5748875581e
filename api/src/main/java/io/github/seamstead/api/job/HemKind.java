package io.github.seamstead.api.job;

/** What the lower edge of a panel is. */
public enum HemKind {
  /** An allowance is turned up. */
  TURNED("turned"),
  /** The reinforced edge of the stock is kept as it is. */
  REINFORCED("reinforced"),
  /** The edge is cut and left. */
  RAW("raw");

  private final String word;

  HemKind(String word) {
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
