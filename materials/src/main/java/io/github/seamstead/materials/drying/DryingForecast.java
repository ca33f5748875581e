package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;

/**
 * The forecast of a drying coat: three runs of one model, with the doubt's slow, likely and fast
 * factors together, which is the cautious reading.
 *
 * <p>Each run is one-dimensional: constant rate while the surface is wet, then as fast as moisture
 * diffuses up. Shrinkage of the thickness, sun on the floor and water vapour from below are not in
 * it. Cost: three times the intervals of the weather until the coat is dry.
 *
 * <pre>{@code
 * DryingSlab coat = DryingSlab.sealed(0.025, 1750, 0.2, EarthMoisture.sandyMix());
 * Weather weather = Weather.constant(new AirState(18, 0.6, 0.5));
 * DryingCurve curve = DryingForecast.simulate(coat, weather, 10); // days
 * double moisture = curve.finalMoisture(); // 0.045 of the dry mass
 * }</pre>
 *
 * @param fast the run that dries first
 * @param likely the likely run
 * @param slow the run that dries last
 * @param milestones when each state is reached, such as firm, walkable, dry to coat
 * @param balanceMoisture moisture in balance with the settled air
 */
public record DryingForecast(
    DryingCurve fast,
    DryingCurve likely,
    DryingCurve slow,
    List<Milestone> milestones,
    double balanceMoisture) {

  /** Wettest air for which a balance is reckoned. */
  private static final double DAMPEST = 0.98;

  public DryingForecast {
    milestones = List.copyOf(milestones);
  }

  /**
   * Runs the forecast.
   *
   * @param slab the coat and what lies under it
   * @param weather the air over the floor from the moment it is laid
   * @param criteria the states that it reaches
   * @param doubt factors of the slow, likely and fast run
   * @param horizonDays how far to look, 1 to 730 days
   * @return the forecast
   * @throws IllegalArgumentException if the horizon is out of range
   */
  public static DryingForecast of(
      DryingSlab slab,
      Weather weather,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double horizonDays) {
    return of(slab, weather, Optional.empty(), criteria, doubt, horizonDays, Steps.none());
  }

  /**
   * Runs the forecast under a cover that holds the floor's water back. The march itself is not
   * written out; the steps are the water balance that its likely run satisfies.
   *
   * @param slab the coat and what lies under it
   * @param weather the air outside from the moment it is laid, with the speed along the floor
   * @param ventilation how the room's air is renewed; empty if it stays as outside
   * @param criteria the states that it reaches
   * @param doubt factors of the slow, likely and fast run
   * @param horizonDays how far to look, 1 to 730 days
   * @param steps receives the first evaporation, the balance and, last, the coat's moisture at the
   *     end of the likely run
   * @return the forecast
   * @throws IllegalArgumentException if the horizon is out of range
   */
  @Calculation("materials.drying.simulation")
  public static DryingForecast of(
      DryingSlab slab,
      Weather weather,
      Optional<Ventilation> ventilation,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double horizonDays,
      Steps steps) {
    Args.within("horizon", horizonDays, 1, 730, "days");
    March march = new March(horizonDays * Weather.DAY, DryingDetail.FINE);
    return of(slab, weather, ventilation, criteria, doubt, horizonDays, march, steps);
  }

  /** How far a march looks, in seconds, and how finely it steps. */
  private record March(double horizon, DryingDetail detail) {}

  /**
   * Runs a rough forecast, one of many that are compared with one another: times to a state are
   * within 3 % of those of the fine one. Where even the driest air of the weather holds the coat
   * wetter than its last state, no wait is long enough, and the march ends after a day.
   *
   * @param slab the coat and what lies under it
   * @param weather the air outside from the moment it is laid, with the speed along the floor
   * @param ventilation how the room's air is renewed; empty if it stays as outside
   * @param criteria the states that it reaches
   * @param doubt factors of the slow, likely and fast run
   * @param horizonDays how far to look, 1 to 730 days
   * @return the forecast
   * @throws IllegalArgumentException if the horizon is out of range
   */
  public static DryingForecast rough(
      DryingSlab slab,
      Weather weather,
      Optional<Ventilation> ventilation,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double horizonDays) {
    Args.within("horizon", horizonDays, 1, 730, "days");
    double driest =
        weather.states().stream().mapToDouble(AirState::relativeHumidity).min().orElse(0);
    boolean never =
        slab.earth().equilibriumMoisture(Math.min(DAMPEST, driest)) >= criteria.driest();
    return of(
        slab,
        weather,
        ventilation,
        criteria,
        doubt,
        horizonDays,
        new March((never ? 1 : horizonDays) * Weather.DAY, DryingDetail.ROUGH),
        Steps.none());
  }

  private static DryingForecast of(
      DryingSlab slab,
      Weather weather,
      Optional<Ventilation> ventilation,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double horizonDays,
      March march,
      Steps steps) {
    double balance = slab.earth().equilibriumMoisture(Math.min(DAMPEST, weather.settledHumidity()));
    Range d = doubt.diffusivity();
    Range e = doubt.exchange();
    CurveOf curve =
        (diffusivity, exchange) ->
            run(slab, weather, ventilation, diffusivity, exchange)
                .until(march.horizon(), criteria.driest(), march.detail());
    DryingCurve likely = curve.with(d.likely(), e.likely());
    boolean certain = d.low() == d.high() && e.low() == e.high();
    DryingCurve fast = certain ? likely : curve.with(d.high(), e.high());
    DryingCurve slow = certain ? likely : curve.with(d.low(), e.low());
    if (steps.isRecording()) {
      record(slab, weather, likely, steps);
    }
    List<DryingCurve> runs = List.of(fast, likely, slow);
    return new DryingForecast(
        fast,
        likely,
        slow,
        criteria.states().stream()
            .map(state -> milestone(state.name(), state.moisture(), runs, horizonDays))
            .toList(),
        balance);
  }

  /** The march with factors of how fast earth and air move water. */
  @FunctionalInterface
  private interface CurveOf {
    DryingCurve with(double diffusivity, double exchange);
  }

  private static DryingRun run(
      DryingSlab slab,
      Weather weather,
      Optional<Ventilation> ventilation,
      double diffusivity,
      double exchange) {
    DryingSlab scaled = slab.with(slab.earth().timesDiffusivity(diffusivity));
    return new DryingRun(scaled, weather, exchange, ventilation);
  }

  private static Milestone milestone(
      String name, double moisture, List<DryingCurve> runs, double horizonDays) {
    // Over a damp base or in damp air the run that moves water fastest may be the wetter one.
    double[] times =
        runs.stream()
            .mapToDouble(run -> run.timeTo(moisture).orElse(Double.POSITIVE_INFINITY))
            .sorted()
            .toArray();
    return new Milestone(
        name, moisture, days(times[0]), days(times[1]), days(times[2]), horizonDays);
  }

  private static Optional<Double> days(double seconds) {
    return seconds < Double.POSITIVE_INFINITY
        ? Optional.of(seconds / Weather.DAY)
        : Optional.empty();
  }

  /**
   * Simulates one drying without doubt.
   *
   * @param slab the coat and what lies under it
   * @param weather the air from the moment it is laid
   * @param days length, more than 0, at most 730 days
   * @return the curve
   * @throws IllegalArgumentException if the length is out of range
   */
  public static DryingCurve simulate(DryingSlab slab, Weather weather, double days) {
    Args.positive("length of the simulation", days, "days");
    Args.within("length of the simulation", days, 0, 730, "days");
    return new DryingRun(slab, weather, 1).until(days * Weather.DAY, 0);
  }

  private static void record(DryingSlab slab, Weather weather, DryingCurve curve, Steps steps) {
    steps.section("while the surface is wet");
    Evaporation.wetFloor(weather.states().get(0), steps);
    steps.section("balance of water");
    double start =
        steps
            .step("W_0", "water in coat and base at the start")
            .formula("rho_d * (t * u_0 + t_b * u_b)")
            .with("rho_d", slab.dryDensity(), "kg/m3")
            .with("t", slab.thickness(), "m")
            .with("u_0", slab.initialMoisture(), "")
            .with("t_b", slab.baseThickness(), "m")
            .with("u_b", slab.baseMoisture(), "")
            .gives(slab.initialWater(), "kg/m2");
    double given =
        steps
            .step("W_e", "water given off, by the march in time")
            .note("implicit finite volumes; D(u) and the air of each interval")
            .gives(curve.evaporated(), "kg/m2");
    double left =
        steps
            .step("W", "water left")
            .formula("W_0 - W_e")
            .with("W_0", start, "kg/m2")
            .with("W_e", given, "kg/m2")
            .gives(start - given, "kg/m2");
    double inBase =
        steps
            .step("W_b", "of it in the base below the coat")
            .gives(left - curve.finalMoisture() * slab.dryDensity() * slab.thickness(), "kg/m2");
    steps
        .step("u", "mean moisture of the coat at the end")
        .formula("(W - W_b) / (rho_d * t)")
        .with("W", left, "kg/m2")
        .with("W_b", inBase, "kg/m2")
        .with("rho_d", slab.dryDensity(), "kg/m3")
        .with("t", slab.thickness(), "m")
        .gives(curve.finalMoisture(), "");
  }

  /**
   * Tells whether the air is too damp for the last state, so that no wait is long enough.
   *
   * @return true if the moisture in balance with the settled air is above that of the last state,
   *     which no drier week before reached
   */
  public boolean neverDries() {
    Milestone last = milestones.get(milestones.size() - 1);
    return balanceMoisture >= last.moisture() && last.likely().isEmpty();
  }
}
