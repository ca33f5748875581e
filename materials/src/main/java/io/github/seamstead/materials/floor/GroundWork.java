package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * What is dug out so that the finished floor lies level with the ground, and what the spoil heap
 * takes. The same floor may be raised on the ground instead; then nothing but the turf is dug.
 *
 * @param bankVolume volume of the hole, in m³
 * @param spoilVolume of the loose heap, in m³
 * @param hours person-hours to dig it and wheel it away
 */
public record GroundWork(double bankVolume, Range spoilVolume, Range hours) {

  /** Loose over bank volume of common soils: 1.2 to 1.4 (handbook tables of excavation). */
  public static final Range SWELL = new Range(1.2, 1.3, 1.4);

  /** Source of {@link #SWELL}. */
  public static final Source SWELL_SOURCE =
      Source.found("", "Excavation factors, Australian sheet", "", "swell 1.30 low plasticity");

  /** Digging by hand to 1.5 m: 0.66 loose, 0.57 firm, 0.46 clay, in m³ an hour. */
  public static final Source DIGGING =
      Source.found("Guild of Project Controls", "Excavate and reduce levels", "", "by hand");

  /** Digging 1.5 to 2.2 h/m³ and carrying 20 m 0.3 h/m³, from {@link #DIGGING}. */
  private static final Range HOURS_PER_CUBIC_METRE = new Range(1.7, 2.1, 2.9);

  /**
   * Reckons the digging.
   *
   * @param floor the layers
   * @return for a finished floor level with the ground
   */
  public static GroundWork levelWithGround(BuildUp floor) {
    double bank = bank(floor.footprint().grossArea(), floor.thickness(), Steps.none());
    return new GroundWork(bank, SWELL.times(bank), HOURS_PER_CUBIC_METRE.times(bank));
  }

  /**
   * Reckons the digging of material that is used: dug by hand to 1.5 m and carried 20 m.
   *
   * @param looseVolume volume of the loose heap that is wanted, in m³, 0 or more
   * @return person-hours, without sieving
   * @throws IllegalArgumentException if the volume is negative
   */
  public static Range hoursForLoose(double looseVolume) {
    Args.notNegative("loose volume", looseVolume, "m3");
    return HOURS_PER_CUBIC_METRE.times(looseVolume / SWELL.likely());
  }

  /**
   * Computes the volume of the hole: A t.
   *
   * @param area inside the edge, in m², greater than 0
   * @param depth all layers together, in metres, 0 or more
   * @param steps receives the formula
   * @return in m³ as it lies in the ground
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("materials.floor.dig")
  public static double bank(double area, double depth, Steps steps) {
    Args.positive("area", area, "m2");
    Args.notNegative("depth", depth, "m");
    return steps
        .step("V_dig", "volume of the hole")
        .formula("A * t")
        .with("A", area, "m2")
        .with("t", depth, "m")
        .from(Source.derived("depth of all layers over the whole outline"))
        .gives(area * depth, "m3");
  }
}
