package io.github.seamstead.api.job;

/** How the choices of several variations make variants of a job. */
public enum Combine {
  /** Each choice of each variation with each of the others. */
  EVERY("every"),
  /** One choice at a time, all else as the job is written. */
  SINGLE("single");

  private final String word;

  Combine(String word) {
    this.word = word;
  }

  /**
   * Gives the word of the document.
   *
   * @return one word
   */
  public String word() {
    return word;
  }
}
