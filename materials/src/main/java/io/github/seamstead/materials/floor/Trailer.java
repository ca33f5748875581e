package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * A trailer by its body and its legal payload.
 *
 * @param bodyVolume struck volume of the body, in m³; more than 0, at most 40 m³
 * @param payload legal payload: permitted gross mass less the trailer's own mass, in kg; more than
 *     0, at most 40 000 kg
 */
public record Trailer(double bodyVolume, double payload) {

  private static final Source BOTH_LIMITS =
      Source.commonPractice("a load is limited by volume and by mass, whichever comes first");

  public Trailer {
    Args.positive("trailer body volume", bodyVolume, "m3");
    Args.within("trailer body volume", bodyVolume, 0, 40, "m3");
    Args.positive("trailer payload", payload, "kg");
    Args.within("trailer payload", payload, 0, 40_000, "kg");
  }

  /**
   * Makes a trailer from its plate.
   *
   * @param bodyVolume in m³
   * @param grossMass permitted gross mass, in kg
   * @param ownMass mass of the empty trailer, in kg, less than the gross mass
   * @return the trailer with payload = gross − own
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Trailer fromPlate(double bodyVolume, double grossMass, double ownMass) {
    Args.require(
        ownMass < grossMass,
        "trailer",
        Numbers.plain(ownMass) + " kg empty",
        "must be less than its gross " + Numbers.plain(grossMass) + " kg");
    return new Trailer(bodyVolume, grossMass - ownMass);
  }

  /**
   * Gives the loose volume of one legal load.
   *
   * @param looseMoistDensity mass over loose volume with water, in kg/m³
   * @param bucketVolume smallest load worth driving, in m³
   * @return the lesser of body volume and payload over density, in m³
   * @throws IllegalArgumentException if the payload is below one bucket of the material
   */
  public double load(double looseMoistDensity, double bucketVolume) {
    return load(looseMoistDensity, bucketVolume, Steps.none());
  }

  /**
   * Counts the trips for a loose volume.
   *
   * @param looseVolume in m³, 0 or more
   * @param looseMoistDensity mass over loose volume with water, in kg/m³
   * @param bucketVolume smallest load worth driving, in m³
   * @param steps receives the load and the trips
   * @return trips, rounded up
   * @throws IllegalArgumentException if the payload is below one bucket of the material
   */
  @Calculation("materials.floor.trips")
  public int trips(double looseVolume, double looseMoistDensity, double bucketVolume, Steps steps) {
    Args.notNegative("loose volume", looseVolume, "m3");
    double load = load(looseMoistDensity, bucketVolume, steps);
    return (int)
        steps
            .step("T", "trips, rounded up")
            .formula("ceil(V / V_t)")
            .with("V", looseVolume, "m3")
            .with("V_t", load, "m3")
            .gives(Math.ceil(looseVolume / load), "");
  }

  private double load(double density, double bucketVolume, Steps steps) {
    Args.positive("loose density", density, "kg/m3");
    Args.positive("bucket volume", bucketVolume, "m3");
    Args.agree(
        payload >= bucketVolume * density,
        "trailer payload: given "
            + Numbers.significant(payload, 4)
            + " kg, less than one bucket of "
            + Numbers.significant(bucketVolume * density, 3)
            + " kg",
        "must carry at least one bucket");
    return steps
        .step("V_t", "loose volume of one legal load")
        .formula("min(V_b, m_p / rho)")
        .with("V_b", bodyVolume, "m3")
        .with("m_p", payload, "kg")
        .with("rho", density, "kg/m3")
        .from(BOTH_LIMITS)
        .gives(Math.min(bodyVolume, payload / density), "m3");
  }

  /**
   * Gives the caution that goes with every trip.
   *
   * @return payload, ball load and the usual limit of an unbraked trailer
   */
  public Caution caution() {
    return FloorCautions.trailer(payload);
  }
}
