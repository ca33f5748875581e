package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/**
 * Hours for one layer.
 *
 * @param personHours work of all hands together
 * @param elapsedHours by the clock: work over people, but never less than the mixer needs
 */
public record WorkTime(Range personHours, Range elapsedHours) {

  private static final double HOUR_SECONDS = 3600;

  /**
   * Converts the likely hours by the clock to working days.
   *
   * @param secondsPerDay working time in a day, in seconds, greater than 0 to a whole day
   * @return in working days, not rounded
   * @throws IllegalArgumentException if the working time is out of range
   */
  public double workingDays(double secondsPerDay) {
    Args.within("working time in a day", secondsPerDay, 1, 24 * HOUR_SECONDS, "s");
    return elapsedHours.likely() * HOUR_SECONDS / secondsPerDay;
  }

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
    Range minutes = rates.minutesPerLoad();
    LayingRate laying = LayingRate.of(quantity.layer().role());
    double bound = rates.peopleAtMixer();
    Steps none = Steps.none();
    double low =
        mixingHours(loads.low(), minutes.low(), bound, none)
            + layingHours(
                quantity.looseVolume().low(),
                laying.perCubicMetre().low(),
                quantity.area(),
                laying.perSquareMetre().low(),
                none);
    double likely = likelyHours(quantity, plan, rates, none);
    double high =
        mixingHours(loads.high(), minutes.high(), bound, none)
            + layingHours(
                quantity.looseVolume().high(),
                laying.perCubicMetre().high(),
                quantity.area(),
                laying.perSquareMetre().high(),
                none);
    double people = rates.people();
    return new WorkTime(
        new Range(low, likely, high),
        new Range(
            Math.max(low / people, loads.low() * minutes.low() / 60),
            Math.max(likely / people, loads.likely() * minutes.likely() / 60),
            Math.max(high / people, loads.high() * minutes.high() / 60)));
  }

  /**
   * Gives the hours of a crew that works at another pace.
   *
   * @param position where in their ranges the likely hours lie: -1 the low end, 0 as they are, 1
   *     the high end
   * @return the hours
   * @throws IllegalArgumentException if the position is out of range
   */
  public WorkTime atPace(double position) {
    return new WorkTime(personHours.likelyAt(position), elapsedHours.likelyAt(position));
  }

  /**
   * Computes the likely work: mixing and laying.
   *
   * @param quantity the layer
   * @param plan its loads; empty if it is tipped as it comes
   * @param rates how fast the crew works
   * @param steps receives mixing, moving, levelling and the sum
   * @return person-hours
   */
  @Calculation("materials.floor.work")
  public static double likelyHours(
      EarthQuantity quantity, Optional<BatchPlan> plan, CrewRates rates, Steps steps) {
    LayingRate laying = LayingRate.of(quantity.layer().role());
    double mixing =
        mixingHours(
            plan.map(p -> p.count().likely()).orElse(0.0),
            rates.minutesPerLoad().likely(),
            rates.peopleAtMixer(),
            steps);
    double moving =
        layingHours(
            quantity.looseVolume().likely(),
            laying.perCubicMetre().likely(),
            quantity.area(),
            laying.perSquareMetre().likely(),
            steps);
    return steps
        .step("H", "work of all hands")
        .formula("H_mix + H_lay")
        .with("H_mix", mixing, "h")
        .with("H_lay", moving, "h")
        .gives(mixing + moving, "h");
  }

  /**
   * Adds up the doubt of the work: of thickness and density, which move loads and volume together,
   * of the time for a load and of the rates of laying. Loads are not rounded here. The range of
   * {@link #personHours} takes all at their ends at once, which is more cautious.
   *
   * @param quantity the layer
   * @param plan its loads; empty if it is tipped as it comes
   * @param rates how fast the crew works
   * @param steps receives what each number does and its share
   * @return the doubt, in person-hours
   */
  @Calculation("materials.floor.work-doubt")
  public static Propagation.Doubt hoursDoubt(
      EarthQuantity quantity, Optional<BatchPlan> plan, CrewRates rates, Steps steps) {
    LayingRate laying = LayingRate.of(quantity.layer().role());
    FloorMix mix = quantity.layer().mix();
    String mixing = plan.isPresent() ? "A * t * rho_d / m_b * t_b * k / 60 + " : "";
    Propagation hours =
        Propagation.of(
                "H", "work of all hands", mixing + "A * t * rho_d * v * q_V + A * q_A", "h")
            .exact("A", quantity.area(), "m2")
            .doubted("t", "the mean thickness", quantity.thicknessRange(), "m")
            .doubted("rho_d", "the packed density", mix.compactedDryDensity(), "kg/m3")
            .exact("v", mix.loosePartsVolumePerDryMass(), "m3/kg")
            .doubted("q_V", "the rate of moving", laying.perCubicMetre(), "h/m3")
            .doubted("q_A", "the rate of levelling", laying.perSquareMetre(), "h/m2");
    plan.ifPresent(
        p ->
            hours
                .exact("m_b", p.batch().dryMass(), "kg")
                .doubted("t_b", "the time for a load", rates.minutesPerLoad(), "min")
                .exact("k", rates.peopleAtMixer(), ""));
    return hours.write(steps);
  }

  /** Loads × minutes × people at the mixer / 60. */
  private static double mixingHours(
      double loads, double minutesPerLoad, double peopleAtMixer, Steps steps) {
    return steps
        .step("H_mix", "mixing")
        .formula("N * t_b * k / 60")
        .with("N", loads, "")
        .with("t_b", minutesPerLoad, "min")
        .with("k", peopleAtMixer, "")
        .gives(loads * minutesPerLoad * peopleAtMixer / 60, "h");
  }

  /** Loose volume × rate + area × rate. */
  private static double layingHours(
      double looseVolume, double perVolume, double area, double perArea, Steps steps) {
    return steps
        .step("H_lay", "wheeling, spreading, ramming and levelling")
        .formula("V_l * q_V + A * q_A")
        .with("V_l", looseVolume, "m3")
        .with("q_V", perVolume, "h/m3")
        .with("A", area, "m2")
        .with("q_A", perArea, "h/m2")
        .from(LayingRate.MOVING)
        .gives(looseVolume * perVolume + area * perArea, "h");
  }
}
