package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * The three phases of a soil: how much of a volume is grains, water and air.
 *
 * <p>Invariants: e = n / (1 − n), S e = w G, ρ_d = G ρ_w / (1 + e), ρ = ρ_d (1 + w), A = n (1 − S).
 *
 * @param solidsShare volume of grains over whole volume, more than 0, less than 1
 * @param waterShare volume of water over whole volume, 0 to the porosity; 0 or more, above the
 *     porosity only by rounding, 0.5 % of it
 * @param specificGravity density of the grains over that of water; 1 to 6
 * @param waterDensity in kg/m³; 950 to 1050 kg/m³
 */
public record PhaseState(
    double solidsShare, double waterShare, double specificGravity, double waterDensity) {

  public PhaseState {
    Args.between("share of grains by volume", solidsShare, 0, 1, "");
    Args.notNegative("share of water by volume", waterShare, "");
    Args.within("specific gravity of the grains", specificGravity, 1, 6, "");
    Args.within("density of water", waterDensity, 950, 1050, "kg/m3");
    double saturation = waterShare / (1 - solidsShare);
    Args.agree(
        saturation <= 1.005,
        "degree of saturation: the given values make it " + Numbers.plain(saturation),
        "must be 1 or less, since voids cannot hold more water than their volume; check specific"
            + " gravity, moisture and density");
  }

  /**
   * Gives the volume of voids over the whole volume.
   *
   * @return n, 0 to 1
   */
  public double porosity() {
    return 1 - solidsShare;
  }

  /**
   * Gives the volume of voids over the volume of grains.
   *
   * @return e
   */
  public double voidRatio() {
    return (1 - solidsShare) / solidsShare;
  }

  /**
   * Gives water over dry mass.
   *
   * @return w
   */
  public double moisture() {
    return waterShare / (specificGravity * solidsShare);
  }

  /**
   * Gives water over wet mass.
   *
   * @return w / (1 + w)
   */
  public double moistureWetBasis() {
    return Moisture.toWetBasis(moisture());
  }

  /**
   * Gives the volume of water over the volume of voids.
   *
   * @return S, 0 to 1
   */
  public double saturation() {
    return waterShare / (1 - solidsShare);
  }

  /**
   * Gives the volume of air over the whole volume.
   *
   * @return A
   */
  public double airContent() {
    return 1 - solidsShare - waterShare;
  }

  /**
   * Gives the dry density.
   *
   * @return in kg/m³
   */
  public double dryDensity() {
    return specificGravity * solidsShare * waterDensity;
  }

  /**
   * Gives the bulk density, water included.
   *
   * @return in kg/m³
   */
  public double bulkDensity() {
    return (specificGravity * solidsShare + waterShare) * waterDensity;
  }

  /**
   * Gives the water that would fill all voids.
   *
   * @return in kg for each cubic metre
   */
  public double waterToSaturate() {
    return Math.max(0, airContent()) * waterDensity;
  }
}
