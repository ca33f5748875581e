package io.github.seamstead.api.job;

/** What a layer of the floor is. */
public enum LayerKind {
  /** Sand or fines that level the ground. */
  LEVELLING("levelling", "levelling"),
  /** Clean gravel that stops rising water. */
  CAPILLARY_BREAK("capillaryBreak", "capillary break"),
  /** A sheet that stops water or keeps layers apart. */
  MEMBRANE("membrane", "membrane"),
  /** Barely damp mix, compacted. */
  DRY_PACK("dryPack", "dry pack"),
  /** Wet mix, screeded. */
  EARTH_COAT("earthCoat", "earth coat"),
  /** Drying oil. */
  OIL("oil", "oil"),
  /** Wax. */
  WAX("wax", "wax");

  private final String word;
  private final String label;

  LayerKind(String word, String label) {
    this.word = word;
    this.label = label;
  }

  /**
   * Gives the word in the document.
   *
   * @return the word
   */
  public String word() {
    return word;
  }

  /**
   * Names the kind for people.
   *
   * @return a word or two
   */
  public String label() {
    return label;
  }
}
