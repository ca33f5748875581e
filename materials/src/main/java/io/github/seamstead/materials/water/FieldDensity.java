package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/** Density of a laid base by the sand-replacement test. */
public final class FieldDensity {

  private static final Source SAND_CONE =
      Source.fromMemory("ASTM", "D1556 Density of soil in place by the sand-cone method", "", "");

  private FieldDensity() {}

  /**
   * Computes the dry density of what was dug from a hole that is refilled with dry sand of known
   * density. The hole's volume is not rounded on the way; rounding it is a common error in print.
   *
   * @param sandPoured mass of sand that left the jug, in kg, more than {@code sandInCone}
   * @param sandInCone mass of sand that fills the cone, in kg, 0 or more
   * @param sandDensity density of the poured sand, in kg/m³, greater than 0
   * @param dugMass mass of what was dug, water included, in kg, greater than 0
   * @param moisture of what was dug, water over dry mass, 0 to 1
   * @param steps receives hole, bulk and dry density
   * @return dry density, in kg/m³
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.water.sand-cone")
  public static double ofSandCone(
      double sandPoured,
      double sandInCone,
      double sandDensity,
      double dugMass,
      double moisture,
      Steps steps) {
    Args.notNegative("sand in the cone", sandInCone, "kg");
    Args.require(
        sandPoured > sandInCone && sandPoured < Double.POSITIVE_INFINITY,
        "sand poured",
        Numbers.plain(sandPoured) + " kg",
        "must be more than the " + Numbers.plain(sandInCone) + " kg in the cone");
    Args.positive("density of the sand", sandDensity, "kg/m3");
    Args.positive("mass dug", dugMass, "kg");
    Args.within("moisture", moisture, 0, 1, "");
    double hole =
        steps
            .step("V", "volume of the hole")
            .formula("(m_s - m_c) / rho_s")
            .with("m_s", sandPoured, "kg")
            .with("m_c", sandInCone, "kg")
            .with("rho_s", sandDensity, "kg/m3")
            .from(SAND_CONE)
            .gives((sandPoured - sandInCone) / sandDensity, "m3");
    double bulk =
        steps
            .step("rho", "bulk density")
            .formula("M / V")
            .with("M", dugMass, "kg")
            .with("V", hole, "m3")
            .gives(dugMass / hole, "kg/m3");
    return steps
        .step("rho_d", "dry density")
        .formula("rho / (1 + w)")
        .with("rho", bulk, "kg/m3")
        .with("w", moisture, "")
        .gives(bulk / (1 + moisture), "kg/m3");
  }
}
