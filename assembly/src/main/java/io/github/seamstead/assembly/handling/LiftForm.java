package io.github.seamstead.assembly.handling;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

/**
 * The two published forms of the revised lifting equation. Their constants are not exact
 * conversions of one another; one form is kept through a task.
 */
public enum LiftForm {
  /** Kilograms and centimetres: 23 kg, 25 cm, 75 cm. */
  METRIC("metric", "cm", 0.01, "kg", 1, 23, 25, 63, 0.003, 75, 175, 4.5, 25),
  /** Pounds and inches: 51 lb, 10 in, 30 in. */
  US_CUSTOMARY("US customary", "in", INCH, "lb", 0.45359237, 51, 10, 25, 0.0075, 30, 70, 1.8, 10);

  final String lengthUnit;
  final double unitLength;
  final String massUnit;
  final double unitMass;
  final double loadConstant;
  final double leastReach;
  final double greatestReach;
  final double heightSlope;
  final double bestHeight;
  final double greatestHeight;
  final double travelSlope;
  final double leastTravel;

  private final String label;

  LiftForm(
      String label,
      String lengthUnit,
      double unitLength,
      String massUnit,
      double unitMass,
      double loadConstant,
      double leastReach,
      double greatestReach,
      double heightSlope,
      double bestHeight,
      double greatestHeight,
      double travelSlope,
      double leastTravel) {
    this.label = label;
    this.lengthUnit = lengthUnit;
    this.unitLength = unitLength;
    this.massUnit = massUnit;
    this.unitMass = unitMass;
    this.loadConstant = loadConstant;
    this.leastReach = leastReach;
    this.greatestReach = greatestReach;
    this.heightSlope = heightSlope;
    this.bestHeight = bestHeight;
    this.greatestHeight = greatestHeight;
    this.travelSlope = travelSlope;
    this.leastTravel = leastTravel;
  }

  /**
   * Names the form.
   *
   * @return for example {@code metric}
   */
  public String label() {
    return label;
  }
}
