package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;

/** What the earth is for, with the clay share that the finished mix should have. */
public enum SoilUse {
  /** Earthen floor, wet earth layer. */
  FLOOR("earth floor", 0.14, 0.20, 0.50, 0.05),
  /** Cob or adobe wall. */
  COB("cob wall", 0.15, 0.25, 0.10, 0.04),
  /** Pressed earth block, the band called good. */
  PRESSED_BLOCK("pressed earth block", 0.10, 0.20, 0.20, 0.05),
  /** Rammed earth wall. */
  RAMMED_EARTH("rammed earth wall", 0.05, 0.20, 0.30, 0.05),
  /** Clay plaster, leaner than a wall because a thin coat is held by what it sticks to. */
  PLASTER("clay plaster", 0.05, 0.15, 0.30, 0.03);

  private final String label;
  private final double leastClay;
  private final double greatestClay;
  private final double greatestSilt;
  private final double greatestShrinkage;

  SoilUse(
      String label,
      double leastClay,
      double greatestClay,
      double greatestSilt,
      double greatestShrinkage) {
    this.label = label;
    this.leastClay = leastClay;
    this.greatestClay = greatestClay;
    this.greatestSilt = greatestSilt;
    this.greatestShrinkage = greatestShrinkage;
  }

  /**
   * Names the use.
   *
   * @return for example {@code earth floor}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the least clay share of the finished mix.
   *
   * @return share of the whole dry mass, 0 to 1
   */
  public double leastClay() {
    return leastClay;
  }

  /**
   * Gives the greatest clay share of the finished mix.
   *
   * @return share of the whole dry mass, 0 to 1
   */
  public double greatestClay() {
    return greatestClay;
  }

  /**
   * Gives the greatest silt share of the finished mix: as the published composition ranges have it
   * for blocks, rammed earth and cob; for a floor a half, beyond which it dusts, for a plaster as
   * for rammed earth (both common practice).
   *
   * @return share of the whole dry mass, 0 to 1
   */
  public double greatestSilt() {
    return greatestSilt;
  }

  /**
   * Gives the greatest linear shrinkage of the finished mix: cob 4 % (builders' rule for a 500 mm
   * box), plaster 3 % (DIN 18947 for fibred mortar, from memory), else 5 %, from which shrinkage is
   * troublesome.
   *
   * @return shortening over mould length, 0 to 1
   */
  public double greatestShrinkage() {
    return greatestShrinkage;
  }

  /**
   * Tells where the band stands.
   *
   * @return the source
   */
  public Source source() {
    return switch (this) {
      case FLOOR ->
          Source.commonPractice("1 part soil of 50 to 70 % clay to 2½ parts clay-free sand");
      case COB -> Source.found("", "Test your cob mix", "2017", "15 to 25 % clay");
      case PRESSED_BLOCK -> Source.found("", "Ratio for compressed earth blocks", "", "good");
      case RAMMED_EARTH ->
          Source.fromMemory("Walker et al.", "Rammed Earth: Design Guidelines", "2005", "grading");
      case PLASTER -> Source.commonPractice("clay share of earth plaster coats");
    };
  }
}
