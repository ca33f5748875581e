package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.Locale;

/**
 * What a bank cubic metre becomes when it is dug and when it is compacted. Printed factors differ
 * (clay swells by 24 to 43 %, sand by 5 to 13 %): take the user's own where there is one.
 *
 * @param bankToLoose loose over bank volume, more than 1: 1 + swell
 * @param bankToCompacted compacted over bank volume
 */
public record VolumeFactors(double bankToLoose, double bankToCompacted) {

  /** Source of the three materials below. */
  public static final Source FM_5_434 =
      Source.fromMemory(
          "US Army", "FM 5-434 Earthmoving Operations", "2000", "soil conversion factors");

  /** Sand. */
  public static final VolumeFactors SAND = new VolumeFactors(1.11, 0.95);

  /** Common earth, loam. */
  public static final VolumeFactors LOAM = new VolumeFactors(1.25, 0.90);

  /** Clay. */
  public static final VolumeFactors CLAY = new VolumeFactors(1.43, 0.90);

  /**
   * Checks the factors.
   *
   * @param bankToLoose more than 1, at most 2: digging always loosens
   * @param bankToCompacted 0.5 to 1.3, less than {@code bankToLoose}; rock may fill more than it
   *     did
   * @throws IllegalArgumentException if a factor is out of range
   */
  public VolumeFactors {
    Args.require(
        bankToLoose > 1 && bankToLoose <= 2,
        "bank to loose",
        Numbers.plain(bankToLoose),
        "must be more than 1 and at most 2",
        "loose earth cannot be as dense as the bank");
    Args.within("bank to compacted", bankToCompacted, 0.5, Math.min(1.3, bankToLoose), "");
  }

  /**
   * Makes factors from dry densities.
   *
   * @param bank in kg/m³, greater than 0
   * @param loose in kg/m³, less than {@code bank}
   * @param compacted in kg/m³, greater than 0
   * @return bank / loose and bank / compacted
   * @throws IllegalArgumentException if the loose density is not below the bank density, as in
   *     tables that mix their units
   */
  public static VolumeFactors ofDensities(double bank, double loose, double compacted) {
    Args.positive("bank density", bank, "kg/m3");
    Args.positive("loose density", loose, "kg/m3");
    Args.positive("compacted density", compacted, "kg/m3");
    Args.require(
        loose < bank,
        "loose density",
        Numbers.plain(loose) + " kg/m3",
        "must be less than the bank density of " + Numbers.plain(bank) + " kg/m3",
        "check that both are in the same unit");
    return new VolumeFactors(bank / loose, bank / compacted);
  }

  /**
   * Gives the swell.
   *
   * @return loose over bank volume, less 1
   */
  public double swell() {
    return bankToLoose - 1;
  }

  /**
   * Gives the load factor.
   *
   * @return bank over loose volume
   */
  public double loadFactor() {
    return 1 / bankToLoose;
  }

  /**
   * Gives the factor from compacted to loose, with which a floor's volume becomes a heap.
   *
   * @return loose over compacted volume
   */
  public double compactedToLoose() {
    return bankToLoose / bankToCompacted;
  }

  /**
   * Converts a volume.
   *
   * @param volume in m³, 0 or more
   * @param from how it lies
   * @param to how it will lie
   * @param steps receives the volume in the bank and the result
   * @return in m³
   * @throws IllegalArgumentException if the volume is negative
   */
  @Calculation("materials.water.volume")
  public double convert(double volume, EarthState from, EarthState to, Steps steps) {
    Args.notNegative("volume", volume, "m3");
    double bank =
        steps
            .step("V_bank", "volume in the bank")
            .formula("V_0 / f_0")
            .with("V_0", volume, "m3")
            .with("f_0", factor(from), "")
            .from(FM_5_434)
            .gives(volume / factor(from), "m3");
    return steps
        .step("V", "volume when " + to.name().toLowerCase(Locale.ROOT))
        .formula("V_bank * f")
        .with("V_bank", bank, "m3")
        .with("f", factor(to), "")
        .from(FM_5_434)
        .gives(bank * factor(to), "m3");
  }

  private double factor(EarthState state) {
    return switch (state) {
      case BANK -> 1;
      case LOOSE -> bankToLoose;
      case COMPACTED -> bankToCompacted;
    };
  }

  /**
   * Scales a volume with its void ratio: V (1 + e₂) / (1 + e₁), never with e itself.
   *
   * @param volume in m³, 0 or more
   * @param from void ratio as it lies, more than 0
   * @param to void ratio as it will lie, more than 0
   * @return in m³
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double byVoidRatio(double volume, double from, double to) {
    Args.notNegative("volume", volume, "m3");
    Args.positive("void ratio", from, "");
    Args.positive("void ratio", to, "");
    return volume * (1 + to) / (1 + from);
  }
}
