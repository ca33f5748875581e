package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;

/**
 * How a material is delivered and priced.
 *
 * @param material the name of the mix part it supplies; not blank
 * @param deliveryMoisture water over dry mass as it is weighed at delivery, 0 to 1
 * @param deliveryStep smallest step of an order, in kg, such as 500 for half tonnes or 25 for bags;
 *     more than 0, at most 40 000 kg
 * @param pricePerTonne price of a damp tonne in the user's money; 0 if dug on site; 0 or more
 * @param hauled true if the crew fetches it with a trailer
 */
public record Supply(
    String material,
    double deliveryMoisture,
    double deliveryStep,
    double pricePerTonne,
    boolean hauled) {

  /** The step in which soil dug on the site is reckoned, in kg (common practice). */
  private static final double DUG_STEP = 100;

  /** A two-string bale: 16 to 25 kg in a UK bale guide. */
  private static final double BALE = 20;

  public Supply {
    Args.notBlank("material", material);
    Args.within(material + ": delivery moisture", deliveryMoisture, 0, 1, "");
    Args.positive(material + ": delivery step", deliveryStep, "kg");
    Args.within(material + ": delivery step", deliveryStep, 0, 40_000, "kg");
    Args.notNegative(material + ": price per tonne", pricePerTonne, "");
  }

  /**
   * Makes a material of unknown price, weighed as damp as it lies in the heap and fetched by the
   * crew, ordered in steps of 100 kg, or of a bale of 20 kg where it is as light as straw.
   *
   * @param part the mix part
   * @return the supply
   */
  public static Supply of(MixPart part) {
    double step = part.isFibre() ? BALE : 100;
    return new Supply(part.name(), part.moisture(), step, 0, true);
  }

  /**
   * Makes soil dug on the site, which no trailer fetches, in steps of 100 kg.
   *
   * @param material the name of the mix part
   * @param moisture water over dry mass as it lies, 0 to 1
   * @param pricePerTonne of a damp tonne in the user's money, 0 or more
   * @return the supply
   * @throws IllegalArgumentException as the constructor does
   */
  public static Supply dug(String material, double moisture, double pricePerTonne) {
    return new Supply(material, moisture, DUG_STEP, pricePerTonne, false);
  }
}
