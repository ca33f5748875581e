package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * Straw for a mix: by mass, by loose volume and in bales.
 *
 * @param mass straw, kg, as dry as it is kept
 * @param looseVolume chopped and loose, m3, low, likely and high
 * @param bales two-string bales, low, likely and high
 */
public record Fibre(double mass, Range looseVolume, Range bales) {

  /** Density of bales. */
  public static final Source BALES =
      Source.found("UK straw building guide", "Bale standard", "", "16 to 25 kg, 0.170 m3");

  /** Chopped straw poured loosely. */
  public static final Source LOOSE = Source.commonPractice("chopped straw, loose, 40 to 70 kg/m3");

  private static final Range LOOSE_DENSITY = new Range(40, 55, 70);
  private static final Range BALE_MASS = new Range(16, 20, 25);

  /**
   * Reckons the straw for a mix.
   *
   * @param dryMass dry mass of the mineral mix, kg, 0 or more
   * @param massRatio straw over that mass, 0 to 0.1; floors take about 0.005 to 0.02, cob about
   *     0.01 to 0.02 (common practice)
   * @param steps receives the worked steps; the last is the mass
   * @return the straw
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.mix.straw")
  public static Fibre straw(double dryMass, double massRatio, Steps steps) {
    Args.notNegative("dry mass of the mix", dryMass, "kg");
    Args.within("straw over dry mineral mass", massRatio, 0, 0.1, "");
    double mass = massRatio * dryMass;
    double volume =
        steps
            .step("V", "chopped straw, loose")
            .formula("f * M / rho")
            .with("f", massRatio, "")
            .with("M", dryMass, "kg")
            .with("rho", LOOSE_DENSITY.likely(), "kg/m3")
            .from(LOOSE)
            .gives(mass / LOOSE_DENSITY.likely(), "m3");
    double bales =
        steps
            .step("n", "two-string bales")
            .formula("f * M / m_b")
            .with("f", massRatio, "")
            .with("M", dryMass, "kg")
            .with("m_b", BALE_MASS.likely(), "kg")
            .from(BALES)
            .gives(mass / BALE_MASS.likely(), "");
    steps
        .step("m", "straw")
        .formula("f * M")
        .with("f", massRatio, "")
        .with("M", dryMass, "kg")
        .gives(mass, "kg");
    return new Fibre(
        mass,
        new Range(mass / LOOSE_DENSITY.high(), volume, mass / LOOSE_DENSITY.low()),
        new Range(mass / BALE_MASS.high(), bales, mass / BALE_MASS.low()));
  }
}
