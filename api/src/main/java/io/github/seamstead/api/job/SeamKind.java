package io.github.seamstead.api.job;

/** How two panels are joined. */
public enum SeamKind {
  /** Both allowances stand up inside, good sides together. */
  FIN("fin"),
  /** One panel lies over the next. */
  LAP("lap");

  private final String word;

  SeamKind(String word) {
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
