package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.function.DoubleUnaryOperator;

/**
 * Mass and size of cloth in a bundle.
 *
 * @param area area of all cloth, seam allowances included, in square metres, greater than 0, at
 *     most 1e6
 * @param massPerArea mass of the cloth, in kg/m², greater than 0, at most 100
 * @param thickness thickness of the cloth, in metres, greater than 0, at most 0.05
 * @param extraMass fixings, adhesive, ropes and rings in it, in kilograms, 0 or more
 */
public record Bundle(double area, double massPerArea, double thickness, double extraMass) {

  private static final Source DERIVED = Source.derived("area times mass; volume over packing");

  public Bundle {
    Args.positive("area of the cloth", area, "m2");
    Args.within("area of the cloth", area, 0, 1e6, "m2");
    Args.positive("mass of the cloth", massPerArea, "kg/m2");
    Args.within("mass of the cloth", massPerArea, 0, 100, "kg/m2");
    Args.positive("thickness of the cloth", thickness, "m");
    Args.within("thickness of the cloth", thickness, 0, 0.05, "m");
    Args.notNegative("fixings and ropes", extraMass, "kg");
  }

  /**
   * Makes a bundle.
   *
   * @param area area of all cloth, in square metres, greater than 0, at most 1e6
   * @param massPerArea mass of the cloth, in kg/m², greater than 0, at most 100
   * @param thickness thickness of the cloth, in metres, greater than 0, at most 0.05
   * @param extraMass fixings, adhesive and ropes, in kilograms, 0 or more
   * @return the bundle
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Bundle of(double area, double massPerArea, double thickness, double extraMass) {
    return new Bundle(area, massPerArea, thickness, extraMass);
  }

  /**
   * Computes the mass.
   *
   * @return in kilograms
   */
  public double mass() {
    return mass(Steps.none());
  }

  /**
   * Computes the mass with the steps.
   *
   * @param steps where the steps go
   * @return in kilograms
   */
  @Calculation("assembly.handling.mass")
  public double mass(Steps steps) {
    return steps
        .step("m", "mass of the bundle")
        .formula("A * w + m_x")
        .with("A", area, "m2")
        .with("w", massPerArea, "kg/m2")
        .with("m_x", extraMass, "kg")
        .from(DERIVED)
        .gives(area * massPerArea + extraMass, "kg");
  }

  /**
   * Computes the bulk of the bundle, tight to loose.
   *
   * @param packing how it is packed
   * @return in cubic metres
   */
  public Range bulkVolume(Packing packing) {
    return over(packing, ratio -> area * thickness / ratio);
  }

  /**
   * Computes the diameter of a roll, tight to loose.
   *
   * @param length length of the roll, in metres, greater than 0
   * @param packing how it is packed
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public Range rollDiameter(double length, Packing packing) {
    Args.positive("length of the roll", length, "m");
    return over(packing, ratio -> rollDiameter(length, ratio, Steps.none()));
  }

  /**
   * Computes the diameter of a roll with the steps: {@code sqrt(4 A t / (pi l phi))}.
   *
   * @param length length of the roll, in metres, greater than 0
   * @param clothRatio cloth volume over bulk, greater than 0, at most 1
   * @param steps where the steps go
   * @return in metres
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("assembly.handling.roll")
  public double rollDiameter(double length, double clothRatio, Steps steps) {
    Args.within("length of the roll", length, 0.01, 1000, "m");
    Args.positive("cloth in the bulk", clothRatio, "");
    Args.within("cloth in the bulk", clothRatio, 0, 1, "");
    double bulk =
        steps
            .step("B", "bulk of the bundle")
            .formula("A * t / phi")
            .with("A", area, "m2")
            .with("t", thickness, "m")
            .with("phi", clothRatio, "")
            .from(DERIVED)
            .gives(area * thickness / clothRatio, "m3");
    return steps
        .step("d", "diameter of the roll")
        .formula("sqrt(4 * B / (pi * l))")
        .with("B", bulk, "m3")
        .with("l", length, "m")
        .from(DERIVED)
        .gives(Math.sqrt(4 * bulk / (Math.PI * length)), "m");
  }

  /**
   * Computes the height of a folded stack, tight to loose.
   *
   * @param length length of the stack, in metres, greater than 0
   * @param width width of the stack, in metres, greater than 0
   * @param packing how it is packed
   * @return in metres
   * @throws IllegalArgumentException if a length is not positive
   */
  public Range foldedHeight(double length, double width, Packing packing) {
    double foot =
        Args.positive("length of the stack", length, "m")
            * Args.positive("width of the stack", width, "m");
    return over(packing, ratio -> area * thickness / ratio / foot);
  }

  private static Range over(Packing packing, DoubleUnaryOperator size) {
    Range ratio = packing.clothRatio();
    return new Range(
        size.applyAsDouble(ratio.high()),
        size.applyAsDouble(ratio.likely()),
        size.applyAsDouble(ratio.low()));
  }
}
