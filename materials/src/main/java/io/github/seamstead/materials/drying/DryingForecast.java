package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The forecast of a drying coat: three runs of one model, with the doubt's slow, likely and fast
 * factors together, which is the cautious reading.
 *
 * <p>Each run is one-dimensional: constant rate while the surface is wet, then as fast as moisture
 * diffuses up. Shrinkage of the thickness, sun on the floor and water vapour from below are not in
 * it. Cost: three times the intervals of the weather until the coat is dry.
 *
 * @param fast the run that dries first
 * @param likely the likely run
 * @param slow the run that dries last
 * @param milestones firm, walkable, dry to coat
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

  /**
   * Copies the list.
   *
   * @param fast the run that dries first
   * @param likely the likely run
   * @param slow the run that dries last
   * @param milestones firm, walkable, dry to coat
   * @param balanceMoisture moisture in balance with the settled air
   */
  public DryingForecast {
    milestones = List.copyOf(milestones);
  }

  /**
   * Runs the forecast.
   *
   * @param slab the coat and what lies under it
   * @param weather the air from the moment it is laid
   * @param criteria when it counts as firm, walkable and dry to coat
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
    Args.within("horizon", horizonDays, 1, 730, "days");
    double balance = slab.earth().equilibriumMoisture(Math.min(DAMPEST, weather.settledHumidity()));
    double first = slab.initialMoisture();
    double dry = balance + criteria.coatExcess() * Math.max(0, first - balance);
    double stop = Math.min(dry, criteria.walkableMoisture());
    double horizon = horizonDays * Weather.DAY;
    DryingCurve fast =
        run(slab, weather, doubt.diffusivity().high(), doubt.exchange().high(), horizon, stop);
    DryingCurve likely =
        run(slab, weather, doubt.diffusivity().likely(), doubt.exchange().likely(), horizon, stop);
    DryingCurve slow =
        run(slab, weather, doubt.diffusivity().low(), doubt.exchange().low(), horizon, stop);
    List<DryingCurve> runs = List.of(fast, likely, slow);
    return new DryingForecast(
        fast,
        likely,
        slow,
        List.of(
            milestone("firm", criteria.firmMoisture(), runs, horizonDays),
            milestone("walkable", criteria.walkableMoisture(), runs, horizonDays),
            milestone("dry to coat", dry, runs, horizonDays)),
        balance);
  }

  private static DryingCurve run(
      DryingSlab slab,
      Weather weather,
      double diffusivity,
      double exchange,
      double horizon,
      double stop) {
    DryingSlab scaled = slab.with(slab.earth().timesDiffusivity(diffusivity));
    return new DryingRun(scaled, weather, exchange).until(horizon, stop);
  }

  private static Milestone milestone(
      String name, double moisture, List<DryingCurve> runs, double horizonDays) {
    return new Milestone(
        name,
        moisture,
        days(runs.get(0).timeTo(moisture)),
        days(runs.get(1).timeTo(moisture)),
        days(runs.get(2).timeTo(moisture)),
        horizonDays);
  }

  private static OptionalDouble days(OptionalDouble seconds) {
    return seconds.isPresent()
        ? OptionalDouble.of(seconds.getAsDouble() / Weather.DAY)
        : OptionalDouble.empty();
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

  /**
   * States what shading, heating or opening does, by running both.
   *
   * @param slab the coat and what lies under it
   * @param asIs the air as it is
   * @param changed the air with the change
   * @param criteria when it counts as firm, walkable and dry to coat
   * @param doubt factors of the slow, likely and fast run
   * @param horizonDays how far to look, 1 to 730 days
   * @return both forecasts
   * @throws IllegalArgumentException if the horizon is out of range
   */
  public static Comparison compare(
      DryingSlab slab,
      Weather asIs,
      Weather changed,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double horizonDays) {
    return new Comparison(
        of(slab, asIs, criteria, doubt, horizonDays),
        of(slab, changed, criteria, doubt, horizonDays));
  }

  /**
   * Two forecasts of the same coat.
   *
   * @param asIs with the air as it is
   * @param changed with the change
   */
  public record Comparison(DryingForecast asIs, DryingForecast changed) {

    /**
     * Gives what the change saves at each milestone.
     *
     * @return days saved by the likely run, negative where it takes longer; empty where one of the
     *     two is beyond the horizon
     */
    public List<OptionalDouble> daysSaved() {
      List<OptionalDouble> saved = new ArrayList<>();
      for (int i = 0; i < asIs.milestones.size(); i++) {
        OptionalDouble before = asIs.milestones.get(i).likely();
        OptionalDouble after = changed.milestones.get(i).likely();
        saved.add(
            before.isPresent() && after.isPresent()
                ? OptionalDouble.of(before.getAsDouble() - after.getAsDouble())
                : OptionalDouble.empty());
      }
      return List.copyOf(saved);
    }
  }
}
