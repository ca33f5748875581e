package io.github.seamstead.materials.floor;

/** What a layer of grain or earth does in the floor. */
public enum LayerRole {
  /** Sand or fine gravel that takes out the unevenness of the ground. */
  LEVELLING("levelling"),
  /** Clean coarse gravel whose voids are too wide for water to climb. */
  CAPILLARY_BREAK("capillary break"),
  /** Earth-damp mix rammed in lifts. */
  DRY_PACK("dry pack"),
  /** Wet mix screeded and trowelled. */
  EARTH_COAT("earth coat");

  private final String label;

  LayerRole(String label) {
    this.label = label;
  }

  /**
   * Names the role as the book prints it.
   *
   * @return for example {@code dry pack}
   */
  public String label() {
    return label;
  }
}
