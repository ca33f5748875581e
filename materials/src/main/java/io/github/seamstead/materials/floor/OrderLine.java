package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * One material to order.
 *
 * @param supply how it is delivered
 * @param dryNeed dry mass that the layers take after screening, in kg
 * @param rawNeed damp mass to have on site before screening, without reserve, in kg
 * @param ordered damp mass to order: likely need with reserve, in whole delivery steps, in kg
 * @param looseVolume loose volume of the ordered mass, in m³
 * @param screenedOut share by mass that the screen throws out
 * @param trips trailer trips for the ordered mass; 0 if it is delivered
 * @param cost price of the ordered mass, in the user's money
 */
public record OrderLine(
    Supply supply,
    Range dryNeed,
    Range rawNeed,
    double ordered,
    double looseVolume,
    double screenedOut,
    int trips,
    double cost) {

  /**
   * Gives the name of the material.
   *
   * @return the name
   */
  public String material() {
    return supply.material();
  }

  /**
   * Orders less because some is on site already: the order less that mass, in whole delivery steps,
   * with volume, trips and price in proportion.
   *
   * @param onSite damp mass that lies ready and is not laid, in kg, 0 or more
   * @return the line with the smaller order
   * @throws IllegalArgumentException if the mass is negative
   */
  public OrderLine less(double onSite) {
    Args.notNegative("mass on site", onSite, "kg");
    double step = supply.deliveryStep();
    double left = Math.ceil(Math.max(0, ordered - onSite) / step - 1e-9) * step;
    double share = ordered > 0 ? left / ordered : 0;
    return new OrderLine(
        supply,
        dryNeed,
        rawNeed,
        left,
        looseVolume * share,
        screenedOut,
        (int) Math.ceil(trips * share - 1e-9),
        cost * share);
  }

  /**
   * Gives the mass of a loose cubic metre as it is delivered.
   *
   * @return in kg/m³
   */
  public double looseMoistDensity() {
    return ordered / looseVolume;
  }

  /**
   * Tells whether the order also covers the high end of the need.
   *
   * @return true if nothing can run out within the stated ranges
   */
  public boolean coversHigh() {
    return ordered >= rawNeed.high();
  }
}
