package io.github.seamstead.api.job;

/** What a mix is for, which sets the share of clay aimed at. */
public enum MixUse {
  /** Earth floor. */
  FLOOR("floor"),
  /** Cob. */
  COB("cob"),
  /** Pressed block. */
  PRESSED_BLOCK("pressedBlock"),
  /** Rammed earth. */
  RAMMED_EARTH("rammedEarth"),
  /** Plaster coat. */
  PLASTER("plaster");

  private final String word;

  MixUse(String word) {
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
