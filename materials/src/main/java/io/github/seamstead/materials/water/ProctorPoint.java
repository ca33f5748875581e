package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;

/**
 * One cylinder of a compaction test.
 *
 * @param moisture water over dry mass; 0 to 1
 * @param dryDensity in kg/m³; 500 to 3500 kg/m³
 */
public record ProctorPoint(double moisture, double dryDensity) {

  public ProctorPoint {
    Args.within("moisture", moisture, 0, 1, "");
    Args.within("dry density", dryDensity, 500, 3500, "kg/m3");
  }

  /**
   * Makes a point from a weighed cylinder: ρ_d = M / V / (1 + w).
   *
   * @param wetMass in kg, greater than 0
   * @param volume of the mould, in m³, greater than 0
   * @param moisture water over dry mass
   * @return the point
   * @throws IllegalArgumentException if a value is out of range
   */
  public static ProctorPoint ofCylinder(double wetMass, double volume, double moisture) {
    Args.positive("wet mass", wetMass, "kg");
    Args.positive("volume of the mould", volume, "m3");
    return new ProctorPoint(moisture, wetMass / volume / (1 + moisture));
  }
}
