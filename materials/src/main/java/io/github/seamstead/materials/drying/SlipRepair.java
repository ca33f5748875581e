package io.github.seamstead.materials.drying;

import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * Slip for cracks and skim: the coat's own soil and sand through a fine sieve, so that colour and
 * strength match (common practice); no fibre, no gravel.
 *
 * @param volume wet slip to mix, waste included, in m³
 * @param parts dry mass of each part for the likely volume, in kg
 * @param water for the likely volume, in kg
 * @param sieve mesh that the parts must pass, in metres
 */
public record SlipRepair(Range volume, List<Part> parts, double water, double sieve) {

  /** Water over dry mass of a slip like thick cream (common practice). */
  public static final double SLIP_MOISTURE = 0.40;

  private static final double WASTE = 1.15;
  private static final double SIEVE = 0.001;
  private static final double GRAIN_DENSITY = 2650;
  private static final double WATER_DENSITY = 1000;

  /** Lighter than this is fibre, which stays out. */
  private static final double FIBRE_DENSITY = 400;

  /**
   * A part of the slip.
   *
   * @param name the material, sieved
   * @param dryMass in kg
   */
  public record Part(String name, double dryMass) {}

  /**
   * Copies the list.
   *
   * @param volume in m³
   * @param parts dry masses
   * @param water in kg
   * @param sieve in metres
   */
  public SlipRepair {
    parts = List.copyOf(parts);
  }

  static SlipRepair of(
      Range crackShare, double area, double thickness, double skim, FloorMix coat) {
    Args.positive("floor area", area, "m2");
    Args.positive("coat thickness", thickness, "m");
    Args.within("skim thickness", skim, 0, 0.01, "m");
    double covered = area * skim;
    Range volume = crackShare.times(area * thickness).plus(Range.exactly(covered)).times(WASTE);
    double wetPerDry = 1 / GRAIN_DENSITY + SLIP_MOISTURE / WATER_DENSITY;
    double dry = volume.likely() / wetPerDry;
    List<MixPart> fine =
        coat.parts().stream().filter(p -> p.looseDryDensity() >= FIBRE_DENSITY).toList();
    double all = fine.stream().mapToDouble(MixPart::dryMassShare).sum();
    List<Part> parts = new ArrayList<>();
    for (MixPart part : fine) {
      parts.add(new Part(part.name(), dry * part.dryMassShare() / all));
    }
    return new SlipRepair(volume, parts, dry * SLIP_MOISTURE, Math.min(SIEVE, coat.largestGrain()));
  }
}
