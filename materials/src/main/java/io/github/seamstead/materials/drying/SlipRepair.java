package io.github.seamstead.materials.drying;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * Slip for cracks and skim: the coat's own soil and sand through a fine sieve, so that colour and
 * strength match (common practice); no fibre, no gravel.
 *
 * @param volume wet slip to mix, waste included, in m³: cracks and skim together
 * @param cracks the part of it that fills the cracks, in m³
 * @param skim the part of it that covers the whole floor, in m³; 0 without a skim
 * @param parts dry mass of each part for the likely volume, in kg
 * @param water for the likely volume, in kg
 * @param sieve mesh that the parts must pass, in metres
 */
public record SlipRepair(
    Range volume, Range cracks, double skim, List<Part> parts, double water, double sieve) {

  /** Thickness of a skim over the mended coat, in metres (common practice). */
  public static final double USUAL_SKIM = 0.001;

  /** Water over dry mass of a slip like thick cream (common practice). */
  public static final double SLIP_MOISTURE = 0.40;

  private static final double WASTE = 1.15;
  private static final Source WASTE_SOURCE =
      Source.commonPractice("15 % of the need is added for what stays in buckets and on trowels");
  private static final double SIEVE = 0.001;
  private static final double GRAIN_DENSITY = 2650;

  /**
   * A part of the slip.
   *
   * @param name the material, sieved
   * @param dryMass in kg
   */
  public record Part(String name, double dryMass) {}

  public SlipRepair {
    parts = List.copyOf(parts);
  }

  static SlipRepair of(
      Range crackShare, double area, double thickness, double skim, FloorMix coat) {
    Args.positive("floor area", area, "m2");
    Args.positive("coat thickness", thickness, "m");
    Args.within("skim thickness", skim, 0, 0.01, "m");
    double covered = area * skim * WASTE;
    Range cracks = crackShare.times(area * thickness * WASTE);
    Range volume = cracks.plus(Range.exactly(covered));
    double wetPerDry = 1 / GRAIN_DENSITY + SLIP_MOISTURE / WATER_DENSITY;
    double dry = volume.likely() / wetPerDry;
    List<MixPart> fine = coat.parts().stream().filter(p -> !p.isFibre()).toList();
    double all = fine.stream().mapToDouble(MixPart::dryMassShare).sum();
    List<Part> parts = new ArrayList<>();
    for (MixPart part : fine) {
      parts.add(new Part(part.name(), dry * part.dryMassShare() / all));
    }
    return new SlipRepair(
        volume, cracks, covered, parts, dry * SLIP_MOISTURE, Math.min(SIEVE, coat.largestGrain()));
  }

  /**
   * Computes the volume of slip: 1.15 A (a t + s), with 15 % for waste (common practice).
   *
   * @param crackShare share of the area that is cracks, 0 to 1
   * @param area of the floor, in square metres, greater than 0
   * @param thickness of the coat, in metres, greater than 0
   * @param skim thickness of a skim over all, in metres, 0 to 0.01
   * @param steps receives cracks, skim and the sum
   * @return in m³
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.drying.slip")
  public static double volume(
      double crackShare, double area, double thickness, double skim, Steps steps) {
    Args.within("share of cracks", crackShare, 0, 1, "");
    Args.positive("floor area", area, "m2");
    Args.positive("coat thickness", thickness, "m");
    Args.within("skim thickness", skim, 0, 0.01, "m");
    double cracks =
        steps
            .step("V_c", "cracks over their whole depth")
            .formula("a * A * t")
            .with("a", crackShare, "")
            .with("A", area, "m2")
            .with("t", thickness, "m")
            .gives(crackShare * area * thickness, "m3");
    double cover =
        steps
            .step("V_s", "skim over all")
            .formula("A * s")
            .with("A", area, "m2")
            .with("s", skim, "m")
            .gives(area * skim, "m3");
    return steps
        .step("V", "slip to mix, with waste")
        .formula("1.15 * (V_c + V_s)")
        .with("V_c", cracks, "m3")
        .with("V_s", cover, "m3")
        .from(WASTE_SOURCE)
        .gives(WASTE * (cracks + cover), "m3");
  }
}
