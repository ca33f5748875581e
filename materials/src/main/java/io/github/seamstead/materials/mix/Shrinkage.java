package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;

/** Linear shrinkage of mixes from that of their soil: length lost over the wet length, 0 to 0.3. */
public final class Shrinkage {

  /** Greatest linear shrinkage of a soil that is taken, as a part of the wet length. */
  public static final double MOST = 0.3;

  private Shrinkage() {}

  /**
   * Estimates the shrinkage of a mix from that of its clay soil. Inert grain thins the clay soil
   * out (high end: soil shrinkage × soil share) and holds it apart (low end: × share squared);
   * likely is × share^1.5 (common practice; a bar of the mix itself is better).
   *
   * @param soilShrinkage linear shrinkage of the clay soil alone, 0 to 0.3
   * @param soilShare share of the clay soil by dry mass, 0 to 1
   * @return length lost over wet length
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Range ofMix(double soilShrinkage, double soilShare) {
    Args.within("linear shrinkage of the soil", soilShrinkage, 0, MOST, "");
    Args.within("share of the soil", soilShare, 0, 1, "");
    return new Range(
        soilShrinkage * soilShare * soilShare,
        soilShrinkage * StrictMath.pow(soilShare, 1.5),
        soilShrinkage * soilShare);
  }
}
