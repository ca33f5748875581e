package io.github.seamstead.api.job;

/** What an aggregate is. */
public enum AggregateKind {
  /** Washed sand, free of clay. */
  SAND("sand"),
  /** Gravel between two sieve sizes. */
  GRAVEL("gravel");

  private final String word;

  AggregateKind(String word) {
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
