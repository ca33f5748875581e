package io.github.seamstead.api.job;

/** The limits between clay, silt and sand that a laboratory used. */
public enum SizeSystem {
  /** Clay below 0.002 mm, silt below 0.05 mm. */
  USDA("usda"),
  /** Clay below 0.002 mm, silt below 0.063 mm. */
  ISO("iso");

  private final String word;

  SizeSystem(String word) {
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
