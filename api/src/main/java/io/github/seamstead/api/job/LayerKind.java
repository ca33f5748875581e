package io.github.seamstead.api.job;

/** What a layer of the floor is. */
public enum LayerKind {
  /** Sand or fines that level the ground. */
  LEVELLING("levelling"),
  /** Clean gravel that stops rising water. */
  CAPILLARY_BREAK("capillaryBreak"),
  /** A sheet that stops water or keeps layers apart. */
  MEMBRANE("membrane"),
  /** Barely damp mix, compacted. */
  DRY_PACK("dryPack"),
  /** Wet mix, screeded. */
  EARTH_COAT("earthCoat"),
  /** Drying oil. */
  OIL("oil"),
  /** Wax. */
  WAX("wax");

  private final String word;

  LayerKind(String word) {
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
