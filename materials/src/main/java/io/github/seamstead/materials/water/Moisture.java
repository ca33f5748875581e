package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Moisture on its two bases, and the water to add.
 *
 * <p>Dry basis: water over dry mass, w. Wet basis: water over wet mass, w / (1 + w). They agree
 * only at nothing: 25 % on the dry basis is 20 % on the wet one.
 */
public final class Moisture {

  private static final Source BALANCE = Source.derived("mass balance of water and dry matter");

  private Moisture() {}

  /**
   * Converts to the wet basis.
   *
   * @param dryBasis water over dry mass, 0 or more
   * @return water over wet mass, 0 to 1
   * @throws IllegalArgumentException if the moisture is negative
   */
  public static double toWetBasis(double dryBasis) {
    Args.notNegative("moisture on the dry basis", dryBasis, "");
    return dryBasis / (1 + dryBasis);
  }

  /**
   * Converts to the dry basis.
   *
   * @param wetBasis water over wet mass, 0 or more, less than 1
   * @return water over dry mass
   * @throws IllegalArgumentException if the moisture is out of range
   */
  public static double toDryBasis(double wetBasis) {
    Args.require(
        wetBasis >= 0 && wetBasis < 1,
        "moisture on the wet basis",
        Numbers.plain(wetBasis),
        "must be 0 or more and less than 1");
    return wetBasis / (1 - wetBasis);
  }

  /**
   * Computes moisture from a tin: (wet − dry) / (dry − tin).
   *
   * @param wetWithTin in kg
   * @param dryWithTin in kg, more than {@code tin}, at most {@code wetWithTin}
   * @param tin mass of the empty tin, in kg, 0 or more
   * @param steps receives the formula
   * @return water over dry mass
   * @throws IllegalArgumentException if the masses are not in that order
   */
  @Calculation("materials.water.tin")
  public static double ofTin(double wetWithTin, double dryWithTin, double tin, Steps steps) {
    Args.notNegative("mass of the tin", tin, "kg");
    Args.require(
        dryWithTin > tin && wetWithTin >= dryWithTin && wetWithTin < Double.POSITIVE_INFINITY,
        "tin",
        "wet "
            + Numbers.plain(wetWithTin)
            + ", dry "
            + Numbers.plain(dryWithTin)
            + ", empty "
            + Numbers.plain(tin)
            + " kg",
        "must fall from wet to dry to empty");
    return steps
        .step("w", "moisture, water over dry mass")
        .formula("(m_w - m_d) / (m_d - m_t)")
        .with("m_w", wetWithTin, "kg")
        .with("m_d", dryWithTin, "kg")
        .with("m_t", tin, "kg")
        .from(BALANCE)
        .gives((wetWithTin - dryWithTin) / (dryWithTin - tin), "");
  }

  /**
   * Computes the water that brings damp earth to a moisture: M (w₂ − w₁) / (1 + w₁). The damp mass
   * is not the dry mass; leaving out the divisor is a common error in print.
   *
   * @param dampMass mass as it lies, water included, in kg, 0 or more
   * @param moisture as it lies, water over dry mass, 0 or more
   * @param target water over dry mass, 0 or more
   * @param steps receives the dry mass and the water
   * @return water to add, in kg (1 kg = 1 L); negative is water that must dry off
   * @throws IllegalArgumentException if a value is negative
   */
  @Calculation("materials.water.water-to-add")
  public static double waterToAdd(double dampMass, double moisture, double target, Steps steps) {
    Args.notNegative("damp mass", dampMass, "kg");
    Args.within("moisture", moisture, 0, 20, "");
    Args.within("target moisture", target, 0, 20, "");
    double dry =
        steps
            .step("m_d", "dry mass")
            .formula("M / (1 + w_1)")
            .with("M", dampMass, "kg")
            .with("w_1", moisture, "")
            .from(BALANCE)
            .gives(dampMass / (1 + moisture), "kg");
    return steps
        .step("W", "water to add")
        .formula("m_d * (w_2 - w_1)")
        .with("m_d", dry, "kg")
        .with("w_2", target, "")
        .with("w_1", moisture, "")
        .from(BALANCE)
        .gives(dry * (target - moisture), "kg");
  }
}
