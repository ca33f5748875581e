package io.github.seamstead.shared.caution;

/** What can hurt someone in this trade. */
public enum Hazard {
  /** Lifting, pulling and carrying by hand. */
  LIFTING("lifting"),
  /** Work at height and things that fall. */
  HEIGHT("work at height"),
  /** Wind on loose sheets and on the finished cover. */
  WIND("wind"),
  /** Fire near fabric, straw and oils, and rags that heat themselves. */
  FIRE("fire"),
  /** Carbon monoxide from stoves and heaters under a tight cover. */
  CARBON_MONOXIDE("carbon monoxide"),
  /** Respirable crystalline silica from dry soil and sand. */
  SILICA_DUST("silica dust"),
  /** Burns by quicklime and lime putty. */
  LIME("lime"),
  /** Overloaded or badly loaded trailers. */
  TRAILER_LOAD("trailer load"),
  /** Machines: mixers, saws and staplers. */
  MACHINERY("machinery"),
  /** Strength and stability of the frame, its joints and its ground. */
  STRUCTURE("structure");

  private final String label;

  Hazard(String label) {
    this.label = label;
  }

  /**
   * Names the hazard as the book prints it.
   *
   * @return for example {@code silica dust}
   */
  public String label() {
    return label;
  }
}
