package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;

/** Linear shrinkage from tests: length lost over the wet length, 0 to 0.3. */
public final class Shrinkage {

  private static final Source BAR =
      Source.found("BS 1377", "Linear shrinkage", "1990", "on the wet length of the mould");
  private static final Source CUBE =
      Source.found("", "Linear from volumetric shrinkage on the dry volume", "", "");

  private Shrinkage() {}

  /**
   * Computes linear shrinkage from a bar: (L0 − L) / L0. Push a cracked bar together before
   * measuring; of a curled bar take the mean of top and bottom.
   *
   * @param wetLength length of the mould, in metres, greater than 0
   * @param dryLength length when dry, in metres, more than 0, at most {@code wetLength}
   * @param steps receives the formula
   * @return length lost over wet length
   * @throws IllegalArgumentException if a length is out of range
   */
  @Calculation("materials.drying.linear-shrinkage")
  public static double ofBar(double wetLength, double dryLength, Steps steps) {
    Args.positive("wet length", wetLength, "m");
    Args.positive("dry length", dryLength, "m");
    Args.within("dry length", dryLength, 0.7 * wetLength, wetLength, "m");
    return steps
        .step("LS", "linear shrinkage")
        .formula("(L_0 - L) / L_0")
        .with("L_0", wetLength, "m")
        .with("L", dryLength, "m")
        .from(BAR)
        .gives((wetLength - dryLength) / wetLength, "");
  }

  /**
   * Computes linear from volumetric shrinkage: 1 − (1 / (1 + V_s))^(1/3).
   *
   * @param volumetric volume lost over dry volume, 0 to 2
   * @param steps receives the formula
   * @return length lost over wet length
   * @throws IllegalArgumentException if the shrinkage is out of range
   */
  @Calculation("materials.drying.linear-from-volumetric")
  public static double ofVolumetric(double volumetric, Steps steps) {
    Args.within("volumetric shrinkage on the dry volume", volumetric, 0, 2, "");
    return steps
        .step("LS", "linear shrinkage")
        .formula("1 - cbrt(1 / (1 + V_s))")
        .with("V_s", volumetric, "")
        .from(CUBE)
        .gives(1 - Math.cbrt(1 / (1 + volumetric)), "");
  }

  /**
   * Estimates the shrinkage of a mix from that of its clay soil. Inert grain thins the clay soil
   * out (high end: soil shrinkage × soil share) and holds it apart (low end: × share squared);
   * likely is × share^1.5 (common practice; a bar of the mix itself is better).
   *
   * @param soilShrinkage linear shrinkage of the clay soil alone, 0 to 0.3
   * @param soilShare share of the clay soil by dry mass, 0 to 1
   * @return length lost over wet length
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Range ofMix(double soilShrinkage, double soilShare) {
    Args.within("linear shrinkage of the soil", soilShrinkage, 0, 0.3, "");
    Args.within("share of the soil", soilShare, 0, 1, "");
    return new Range(
        soilShrinkage * soilShare * soilShare,
        soilShrinkage * Math.pow(soilShare, 1.5),
        soilShrinkage * soilShare);
  }
}
