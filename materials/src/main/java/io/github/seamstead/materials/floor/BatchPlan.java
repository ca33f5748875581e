package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * The batches of one mixed layer.
 *
 * @param quantity what the layer takes
 * @param batch one load
 * @param count loads for the low, likely and high dry mass, each rounded up
 */
public record BatchPlan(EarthQuantity quantity, Batch batch, Range count) {

  /**
   * Plans the loads of a layer.
   *
   * @param quantity what the layer takes; a layer that goes through the mixer
   * @param mixer the mixer and the bucket
   * @return the plan
   * @throws IllegalArgumentException if the layer is not mixed or the mixer is too small
   */
  public static BatchPlan of(EarthQuantity quantity, Mixer mixer) {
    Args.agree(
        quantity.layer().mixed(),
        quantity.layer().name() + ": is tipped as it comes",
        "must be a mixed layer");
    Batch batch = Batch.of(quantity.layer().mix(), mixer);
    Range mass = quantity.dryMass();
    double one = batch.dryMass();
    return new BatchPlan(
        quantity,
        batch,
        new Range(
            count(mass.low(), one, Steps.none()),
            count(mass.likely(), one, Steps.none()),
            count(mass.high(), one, Steps.none())));
  }

  /**
   * Computes the likely number of loads: dry mass of the layer over dry mass of a load, rounded up.
   *
   * @param steps receives the quotient rounded up
   * @return the number of loads
   */
  @Calculation("materials.floor.batches")
  public int likelyCount(Steps steps) {
    return (int) count(quantity.dryMass().likely(), batch.dryMass(), steps);
  }

  /**
   * Adds up the doubt of the loads before they are rounded: of the mean thickness and of the packed
   * density. The range of {@link #count} takes both at their ends at once, which is more cautious.
   *
   * @param steps receives what each number does and its share
   * @return the doubt, in loads
   */
  @Calculation("materials.floor.batches-doubt")
  public Propagation.Doubt countDoubt(Steps steps) {
    return Propagation.of("N", "loads, not rounded", "A * t * rho_d / m_b", "")
        .exact("A", quantity.area(), "m2")
        .doubted("t", "the mean thickness", quantity.thicknessRange(), "m")
        .doubted(
            "rho_d", "the packed density", quantity.layer().mix().compactedDryDensity(), "kg/m3")
        .exact("m_b", batch.dryMass(), "kg")
        .write(steps);
  }

  /**
   * Gives the likely number of loads.
   *
   * @return the number of loads
   */
  public int likelyCount() {
    return (int) count.likely();
  }

  /**
   * Counts the barrow trips from mixer to floor by volume and by mass, for the likely loads.
   *
   * @param barrowVolume in m³, greater than 0
   * @param barrowMassLimit in kg, greater than 0
   * @return trips, rounded up load by load since a barrow does not wait for the next load
   * @throws IllegalArgumentException if a number is not positive
   */
  public int barrowTrips(double barrowVolume, double barrowMassLimit) {
    Args.positive("barrow volume", barrowVolume, "m3");
    Args.positive("barrow mass limit", barrowMassLimit, "kg");
    double byVolume = batch.looseVolume() / barrowVolume;
    double byMass = batch.mass() / barrowMassLimit;
    return likelyCount() * (int) Math.ceil(Math.max(byVolume, byMass) - 1e-9);
  }

  private static double count(double mass, double batchMass, Steps steps) {
    return steps
        .step("N", "loads, rounded up")
        .formula("ceil(m_d / m_b)")
        .with("m_d", mass, "kg")
        .with("m_b", batchMass, "kg")
        .gives(Math.ceil(mass / batchMass), "");
  }
}
