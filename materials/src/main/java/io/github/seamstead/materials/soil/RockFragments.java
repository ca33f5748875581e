package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/** The word that stones add to a texture class, by their share of the volume. */
public final class RockFragments {

  /** The limits of the words. */
  public static final Source SOURCE =
      Source.found("USDA", "Soil Survey Manual", "2017", "rock fragment modifiers");

  /** Density of stones, in kg/m3 (common practice: quartz and limestone). */
  public static final double STONE = 2650;

  /** Dry density of fine earth in the ground, in kg/m3 (common practice: 1300 to 1600). */
  public static final double FINE_EARTH = 1450;

  private RockFragments() {}

  /**
   * Names the modifier.
   *
   * @param volumeRatio fragments coarser than 2 mm over the whole volume, 0 to 1
   * @return empty below 15 %, then {@code gravelly}, {@code very gravelly} from 35 %, {@code
   *     extremely gravelly} from 60 %, {@code fragments} from 90 %
   */
  public static String modifier(double volumeRatio) {
    // Rounded so that a printed 35 % is 35 % whatever its binary form.
    double percent =
        Math.rint(Args.within("volume share of stones", volumeRatio, 0, 1, "") * 1e8) / 1e6;
    if (percent < 15) {
      return "";
    }
    if (percent < 35) {
      return "gravelly";
    }
    if (percent < 60) {
      return "very gravelly";
    }
    return percent < 90 ? "extremely gravelly" : "fragments";
  }

  /**
   * Turns a share of mass into a share of volume: {@code V = (g/rho_s) / (g/rho_s + (1-g)/rho_b)}.
   *
   * @param massRatio fragments over the whole dry mass, 0 to 1
   * @param particleDensity density of the stones, 2000 to 3500 kg/m3
   * @param fineBulkDensity dry bulk density of the fine earth between them, 600 to 2200 kg/m3
   * @param steps receives the worked step
   * @return share of the volume, 0 to 1
   */
  @Calculation("materials.soil.stones_by_volume")
  public static double volumeRatio(
      double massRatio, double particleDensity, double fineBulkDensity, Steps steps) {
    Args.within("mass share of stones", massRatio, 0, 1, "");
    Args.within("density of the stones", particleDensity, 2000, 3500, "kg/m3");
    Args.within("bulk density of the fine earth", fineBulkDensity, 600, 2200, "kg/m3");
    double stones = massRatio / particleDensity;
    return steps
        .step("V", "share of the volume that is stones")
        .formula("g / rho_s / (g / rho_s + (1 - g) / rho_b)")
        .with("g", massRatio, "")
        .with("rho_s", particleDensity, "kg/m3")
        .with("rho_b", fineBulkDensity, "kg/m3")
        .from(Source.derived("volumes of stones and fine earth add"))
        .gives(stones / (stones + (1 - massRatio) / fineBulkDensity), "");
  }
}
