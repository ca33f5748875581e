package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;

/**
 * A wet coat that dries through its upper face, over a sealed bottom or a base that draws or gives
 * water.
 *
 * @param thickness of the coat, in metres; 1 mm to 0.5 m
 * @param dryDensity of coat and base, in kg/m³; 300 to 2600 kg/m³
 * @param initialMoisture of the coat, water over dry mass; 0.01 to 0.8
 * @param baseThickness of the drawing base above the next seal, in metres; 0 if the coat's bottom
 *     is sealed; 0 to 1 m
 * @param baseMoisture of the drawing base at the start; 0.001 to 0.8 where there is a base
 * @param earth how moisture moves in both
 */
public record DryingSlab(
    double thickness,
    double dryDensity,
    double initialMoisture,
    double baseThickness,
    double baseMoisture,
    EarthMoisture earth) {

  public DryingSlab {
    Args.within("coat thickness", thickness, 0.001, 0.5, "m");
    Args.within("dry density", dryDensity, 300, 2600, "kg/m3");
    Args.within("initial moisture", initialMoisture, 0.01, 0.8, "");
    Args.within("base thickness", baseThickness, 0, 1, "m");
    if (baseThickness > 0) {
      Args.within("base thickness", baseThickness, 0.001, 1, "m");
      Args.within("base moisture", baseMoisture, 0.001, 0.8, "");
    }
  }

  /**
   * Makes a coat on a membrane, a stone or a base as wet as itself.
   *
   * @param thickness in metres
   * @param dryDensity in kg/m³
   * @param initialMoisture water over dry mass
   * @param earth how moisture moves
   * @return the slab
   * @throws IllegalArgumentException as the constructor does
   */
  public static DryingSlab sealed(
      double thickness, double dryDensity, double initialMoisture, EarthMoisture earth) {
    return new DryingSlab(thickness, dryDensity, initialMoisture, 0, 0, earth);
  }

  /**
   * Sets the coat on a base that takes up some of its water and gives it back later, or that is
   * damp itself and dries through the coat.
   *
   * @param below thickness of the base, in metres
   * @param moisture of the base at the start
   * @return the slab
   * @throws IllegalArgumentException as the constructor does
   */
  public DryingSlab drawingInto(double below, double moisture) {
    return new DryingSlab(thickness, dryDensity, initialMoisture, below, moisture, earth);
  }

  /**
   * Changes how moisture moves.
   *
   * @param other the other earth
   * @return the slab of the other earth
   */
  public DryingSlab with(EarthMoisture other) {
    return new DryingSlab(
        thickness, dryDensity, initialMoisture, baseThickness, baseMoisture, other);
  }

  /**
   * Gives the water in coat and base at the start.
   *
   * @return in kg/m²
   */
  public double initialWater() {
    return dryDensity * (thickness * initialMoisture + baseThickness * baseMoisture);
  }
}
