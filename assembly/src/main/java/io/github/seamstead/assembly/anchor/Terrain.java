package io.github.seamstead.assembly.anchor;

/** Terrain categories of EN 1991-1-4, table 4.1. */
public enum Terrain {
  /** Sea, or coast open to it. */
  COAST("0: sea or open coast", 0.003, 1),
  /** Lakes, or flat country with hardly any growth. */
  FLAT("I: lakes or flat country without obstacles", 0.01, 1),
  /** Low growth, trees and buildings far apart. */
  OPEN("II: low growth, obstacles twenty of their heights apart", 0.05, 2),
  /** Villages, suburbs, standing forest. */
  SHELTERED("III: villages, suburbs, forest", 0.3, 5),
  /** Towns with buildings over 15 m. */
  TOWN("IV: towns", 1.0, 10);

  private final String label;
  private final double roughness;
  private final double leastHeight;

  Terrain(String label, double roughness, double leastHeight) {
    this.label = label;
    this.roughness = roughness;
    this.leastHeight = leastHeight;
  }

  /**
   * Names the category.
   *
   * @return its number and what it looks like
   */
  public String label() {
    return label;
  }

  /**
   * Gives the roughness length.
   *
   * @return in metres
   */
  public double roughness() {
    return roughness;
  }

  /**
   * Gives the height below which the wind is taken as at that height.
   *
   * @return in metres
   */
  public double leastHeight() {
    return leastHeight;
  }
}
