package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.Args;

/**
 * What a piece, or a group of pieces, weighs and takes up. Loads of a group add up.
 *
 * @param mass mass, in kilograms, 0 or more
 * @param bulkVolume volume of the folded or rolled bundle, in cubic metres, 0 or more; 0 where no
 *     limit on bulk is set
 * @param bunch width that the bunched piece takes in the throat of a tool, in metres, 0 or more; 0
 *     where the tool does not reach over the cloth
 * @param laidArea floor area that the piece covers as it is laid out for joining, in square metres,
 *     0 or more; 0 where no limit on floor is set
 */
public record Load(double mass, double bulkVolume, double bunch, double laidArea) {

  /** No load. */
  public static final Load NONE = new Load(0, 0, 0, 0);

  public Load {
    Args.notNegative("mass", mass, "kg");
    Args.notNegative("bulk", bulkVolume, "m3");
    Args.notNegative("bunch", bunch, "m");
    Args.notNegative("laid area", laidArea, "m2");
  }

  /**
   * Makes a load of which only the mass matters.
   *
   * @param mass in kilograms, 0 or more
   * @return the load
   * @throws IllegalArgumentException if the mass is negative or not finite
   */
  public static Load ofMass(double mass) {
    return new Load(mass, 0, 0, 0);
  }

  /**
   * Adds another load.
   *
   * @param other what comes on top
   * @return the sum, member by member
   */
  public Load plus(Load other) {
    return new Load(
        mass + other.mass,
        bulkVolume + other.bulkVolume,
        bunch + other.bunch,
        laidArea + other.laidArea);
  }
}
