package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/**
 * Hours for one layer.
 *
 * @param personHours work of all hands together
 * @param elapsedHours by the clock: work over people, but never less than the mixer needs
 */
public record WorkTime(Range personHours, Range elapsedHours) {

  /**
   * Reckons the hours for a layer.
   *
   * @param quantity the layer
   * @param plan its loads; empty if it is tipped as it comes
   * @param rates how fast the crew works
   * @return hours with their range
   */
  public static WorkTime of(EarthQuantity quantity, Optional<BatchPlan> plan, CrewRates rates) {
    Range loads = plan.map(BatchPlan::count).orElse(Range.exactly(0));
    double area = quantity.area();
    Range minutes = rates.minutesPerLoad();
    Range laying = rates.layingHoursPerSquareMetre();
    double bound = rates.peopleAtMixer();
    double low = personHours(loads.low(), minutes.low(), bound, area, laying.low(), Steps.none());
    double likely =
        personHours(loads.likely(), minutes.likely(), bound, area, laying.likely(), Steps.none());
    double high =
        personHours(loads.high(), minutes.high(), bound, area, laying.high(), Steps.none());
    double people = rates.people();
    return new WorkTime(
        new Range(low, likely, high),
        new Range(
            Math.max(low / people, loads.low() * minutes.low() / 60),
            Math.max(likely / people, loads.likely() * minutes.likely() / 60),
            Math.max(high / people, loads.high() * minutes.high() / 60)));
  }

  /**
   * Computes the work: loads × minutes × people at the mixer / 60 + area × laying rate.
   *
   * @param loads number of loads, 0 or more
   * @param minutesPerLoad from load to load
   * @param peopleAtMixer who are bound while mixing
   * @param area in square metres
   * @param layingRate person-hours for a square metre
   * @param steps receives mixing, laying and the sum
   * @return person-hours
   */
  @Calculation("materials.floor.work")
  public static double personHours(
      double loads,
      double minutesPerLoad,
      double peopleAtMixer,
      double area,
      double layingRate,
      Steps steps) {
    double mixing =
        steps
            .step("H_mix", "mixing")
            .formula("N * t_b * k / 60")
            .with("N", loads, "")
            .with("t_b", minutesPerLoad, "min")
            .with("k", peopleAtMixer, "")
            .gives(loads * minutesPerLoad * peopleAtMixer / 60, "h");
    double laying =
        steps
            .step("H_lay", "laying")
            .formula("A * q")
            .with("A", area, "m2")
            .with("q", layingRate, "h/m2")
            .gives(area * layingRate, "h");
    return steps
        .step("H", "work of all hands")
        .formula("H_mix + H_lay")
        .with("H_mix", mixing, "h")
        .with("H_lay", laying, "h")
        .gives(mixing + laying, "h");
  }
}
