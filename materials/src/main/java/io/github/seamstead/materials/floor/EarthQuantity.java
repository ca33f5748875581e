package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * What one earth layer takes.
 *
 * @param layer the layer
 * @param area the area laid, in square metres
 * @param meanThickness compacted, fall included, in metres
 * @param compactedVolume in m³: thickness ± evenness / 2 over the whole area
 * @param looseVolume the parts measured loose one by one, in m³
 * @param dryMass in kg
 */
public record EarthQuantity(
    EarthLayer layer,
    double area,
    double meanThickness,
    Range compactedVolume,
    Range looseVolume,
    Range dryMass) {

  private static final Source MASS_BALANCE =
      Source.derived("dry mass is the same loose and packed");

  /**
   * Computes what a layer takes. A surface below that strays by ± evenness from point to point
   * moves the mean thickness by half of it (common practice).
   *
   * @param layer the layer
   * @param area in square metres
   * @param extraThickness mean thickness added by a fall, in metres
   * @return volumes and dry mass with ranges
   */
  static EarthQuantity of(EarthLayer layer, double area, double extraThickness) {
    double mean = layer.thickness() + extraThickness;
    double half = layer.evenness() / 2;
    Range volume =
        new Range(
            area * (mean - half), compactedVolume(area, mean, Steps.none()), area * (mean + half));
    Range density = layer.mix().compactedDryDensity();
    Range mass =
        new Range(
            volume.low() * density.low(),
            volume.likely() * density.likely(),
            volume.high() * density.high());
    return new EarthQuantity(
        layer, area, mean, volume, mass.times(layer.mix().loosePartsVolumePerDryMass()), mass);
  }

  /**
   * Gives what a part of the area takes.
   *
   * @param share the part, 0 to 1
   * @return area, volumes and dry mass of the part
   * @throws IllegalArgumentException if the share is out of range
   */
  public EarthQuantity part(double share) {
    Args.within("share of the area", share, 0, 1, "");
    return new EarthQuantity(
        layer,
        area * share,
        meanThickness,
        compactedVolume.times(share),
        looseVolume.times(share),
        dryMass.times(share));
  }

  /**
   * Computes the loose volume that a layer takes: V_loose = A t ρ_d v, with v the loose volume of
   * the parts per kilogram of dry mix.
   *
   * @param steps receives the volume, the dry mass and the loose volume
   * @return the likely loose volume, in m³
   */
  @Calculation("materials.floor.loose-volume")
  public double looseVolume(Steps steps) {
    double volume = compactedVolume(area, meanThickness, steps);
    double density = layer.mix().compactedDryDensity().likely();
    double mass =
        steps
            .step("m_d", "dry mass of the layer")
            .formula("V * rho_d")
            .with("V", volume, "m3")
            .with("rho_d", density, "kg/m3")
            .from(MASS_BALANCE)
            .gives(volume * density, "kg");
    double perMass = 0;
    for (MixPart part : layer.mix().parts()) {
      double before = perMass;
      double added = part.dryMassShare() / part.looseDryDensity();
      perMass =
          steps
              .step("v", "loose volume per dry mass, " + part.name() + " added")
              .formula("v_0 + x / rho_l")
              .with("v_0", before, "m3/kg")
              .with("x", part.dryMassShare(), "")
              .with("rho_l", part.looseDryDensity(), "kg/m3")
              .gives(before + added, "m3/kg");
    }
    return steps
        .step("V_l", "loose volume to bring")
        .formula("m_d * v")
        .with("m_d", mass, "kg")
        .with("v", perMass, "m3/kg")
        .from(MASS_BALANCE)
        .gives(mass * perMass, "m3");
  }

  /**
   * Adds up the doubt of the loose volume: of the mean thickness and of the packed density. The
   * range of {@link #looseVolume} takes both at their ends at once, which is more cautious.
   *
   * @param steps receives what each number does and its share
   * @return the doubt, in m³
   */
  @Calculation("materials.floor.loose-volume-doubt")
  public Propagation.Doubt looseVolumeDoubt(Steps steps) {
    return Propagation.of("V_l", "loose volume to bring", "A * t * rho_d * v", "m3")
        .exact("A", area, "m2")
        .doubted("t", "the mean thickness", thicknessRange(), "m")
        .doubted("rho_d", "the packed density", layer.mix().compactedDryDensity(), "kg/m3")
        .exact("v", layer.mix().loosePartsVolumePerDryMass(), "m3/kg")
        .write(steps);
  }

  /** Mean thickness with its ends: the surface below strays by half of its evenness. */
  Range thicknessRange() {
    double half = layer.evenness() / 2;
    return new Range(meanThickness - half, meanThickness, meanThickness + half);
  }

  /**
   * Gives the mass with the water it is placed with.
   *
   * @return in kg
   */
  public Range placedMass() {
    return dryMass.times(1 + layer.mix().placingMoisture());
  }

  /**
   * Counts the barrow trips of a layer that is tipped as it comes, by loose volume and by mass.
   *
   * @param barrowVolume in m³, greater than 0
   * @param barrowMassLimit in kg, greater than 0
   * @return likely trips, rounded up
   * @throws IllegalArgumentException if a number is not positive
   */
  public int barrowTrips(double barrowVolume, double barrowMassLimit) {
    Args.positive("barrow volume", barrowVolume, "m3");
    Args.positive("barrow mass limit", barrowMassLimit, "kg");
    double mass = dryMass.likely() * (1 + layer.mix().moistureOfParts());
    double trips = Math.max(looseVolume.likely() / barrowVolume, mass / barrowMassLimit);
    return (int) Math.ceil(trips - 1e-9);
  }

  private static double compactedVolume(double area, double thickness, Steps steps) {
    return steps
        .step("V", "compacted volume of the layer")
        .formula("A * t")
        .with("A", area, "m2")
        .with("t", thickness, "m")
        .gives(area * thickness, "m3");
  }
}
