package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;

/**
 * When a coat counts as firm, walkable and dry to coat, by its mean moisture.
 *
 * @param firmMoisture no longer dents under a thumb: the plastic limit of the mix
 * @param walkableMoisture carries a person on a board
 * @param coatExcess dry enough for oil or the next coat when this share of the first moisture above
 *     the balance with the air is left
 */
public record DryingCriteria(double firmMoisture, double walkableMoisture, double coatExcess) {

  /**
   * Checks the order.
   *
   * @param firmMoisture more than 0, at most 0.6
   * @param walkableMoisture more than 0, at most {@code firmMoisture}
   * @param coatExcess 0.005 to 0.5
   * @throws IllegalArgumentException if a value is out of range
   */
  public DryingCriteria {
    Args.positive("firm moisture", firmMoisture, "");
    Args.within("firm moisture", firmMoisture, 0, 0.6, "");
    Args.positive("walkable moisture", walkableMoisture, "");
    Args.within("walkable moisture", walkableMoisture, 0, firmMoisture, "");
    Args.within("excess moisture left for the next coat", coatExcess, 0.005, 0.5, "");
  }

  /**
   * Makes the usual criteria: firm at the plastic limit, walkable at half of it, dry to coat with 5
   * % of the excess left (common practice).
   *
   * @param plasticLimit of the mix, water over dry mass, such as 0.14
   * @return the criteria
   * @throws IllegalArgumentException if the limit is out of range
   */
  public static DryingCriteria ofPlasticLimit(double plasticLimit) {
    return new DryingCriteria(plasticLimit, plasticLimit / 2, 0.05);
  }
}
