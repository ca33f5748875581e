package io.github.seamstead.materials.drying;

import static io.github.seamstead.shared.quantity.PhysicalConstants.ZERO_CELSIUS;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Optional;

/** Marches the solver through the weather. */
final class DryingRun {

  private static final double FIRST_STEP = 60;
  private static final double LEAST_STEP = 1e-2;

  /** Steps tried between two changes of the air; the wildest slabs of the tests take 213. */
  private static final int MOST_TRIED = 5000;

  private final DryingSlab slab;
  private final Weather weather;
  private final double[] potential;
  private final double[] mobility;

  DryingRun(DryingSlab slab, Weather weather, double exchangeFactor) {
    this(slab, weather, exchangeFactor, Optional.empty());
  }

  DryingRun(
      DryingSlab slab, Weather weather, double exchangeFactor, Optional<Ventilation> ventilation) {
    this.slab = slab;
    this.weather = weather;
    int count = weather.states().size();
    potential = new double[count];
    mobility = new double[count];
    for (int i = 0; i < count; i++) {
      AirState air = weather.states().get(i);
      double left = ventilation.map(v -> v.exchangeLeft(air, exchangeFactor)).orElse(1.0);
      potential[i] = exchangeFactor * left * Evaporation.potential(air, Steps.none());
      mobility[i] = mobility(air.temperature());
    }
  }

  /**
   * Water moves as its viscosity lets it: µ(20 °C) / µ(T), with µ = 2.414e-5 × 10^(247.8 / (T_K −
   * 140)) Pa s; the formula is within 2.2 % down to 0 °C.
   */
  static double mobility(double temperature) {
    return StrictMath.pow(10, 247.8 / (293.15 - 140) - 247.8 / (temperature + ZERO_CELSIUS - 140));
  }

  DryingCurve until(double horizon, double stopAt) {
    return until(horizon, stopAt, DryingDetail.FINE);
  }

  DryingCurve until(double horizon, double stopAt, DryingDetail detail) {
    return until(horizon, stopAt, detail, detail.tolerance(), 1);
  }

  /**
   * Runs until the horizon or until the coat's mean moisture is at or below {@code stopAt}.
   *
   * @param horizon in seconds
   * @param stopAt mean moisture of the coat
   * @param detail cells and longest step
   * @param tolerance in place of {@link DryingDetail#tolerance()}
   * @param refinement of the grid
   */
  DryingCurve until(
      double horizon, double stopAt, DryingDetail detail, double tolerance, int refinement) {
    DryingGrid grid = DryingGrid.of(slab, detail, refinement);
    DryingSolver solver = new DryingSolver(slab, grid);
    DryingCurve.Builder curve = new DryingCurve.Builder(slab, grid, solver.moisture());
    double allowed = tolerance * slab.initialMoisture();
    double time = 0;
    double wish = FIRST_STEP;
    double evaporated = 0;
    int interval = 0;
    int tried = 0;
    air(solver, 0);
    while (time < horizon && curve.coatMoisture() > stopAt) {
      double boundary = (interval + 1) * weather.interval();
      double day = (Math.floor(time / Weather.DAY + 1e-9) + 1) * Weather.DAY;
      double event = Math.min(Math.min(boundary, day), horizon);
      double dt = Math.min(Math.min(wish, detail.longestStep()), event - time);
      // Two even steps rather than a full one and a scrap.
      boolean toEvent = dt >= (event - time) * (1 - 1e-9);
      if (!toEvent && dt > (event - time) / 2) {
        dt = (event - time) / 2;
      }
      DryingSolver.Outcome outcome = solver.attempt(dt);
      requireStep(tried++ < MOST_TRIED, time);
      double ratio = outcome.error() / allowed;
      if (!outcome.solved() || ratio > 1) {
        wish = outcome.solved() ? dt * Math.max(0.2, 0.9 / Math.sqrt(ratio)) : dt / 4;
        requireStep(wish > LEAST_STEP, time);
        continue;
      }
      solver.accept();
      evaporated += outcome.evaporated();
      time = toEvent ? event : time + dt;
      tried = toEvent ? 0 : tried;
      curve.add(time, evaporated, solver.moisture(), time >= day);
      double grown = dt * Math.min(4, 0.9 / Math.sqrt(Math.max(ratio, 1e-4)));
      wish = toEvent ? Math.max(wish, grown) : grown;
      if (time >= boundary) {
        interval++;
        air(solver, interval);
      }
    }
    return curve.build();
  }

  private static void requireStep(boolean found, double time) {
    Args.require(
        found,
        () ->
            "drying: no step can be found at "
                + Numbers.plain(time)
                + " s, the slab's numbers are too extreme");
  }

  private void air(DryingSolver solver, int interval) {
    int i = weather.index(interval);
    solver.air(potential[i], weather.states().get(i).relativeHumidity(), mobility[i]);
  }
}
